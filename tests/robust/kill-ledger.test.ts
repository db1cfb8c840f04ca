// Each command that writes the ledger, killed at every step of the file system and run six at once: rows whole, none lost.
import { spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { cpSync, existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { mainPath, makeFolder, runHalfpot, startHalfpot } from '../cli/run-halfpot.js';
import { fourShortSheets, writeSheets } from '../problems/problem-case.js';

const root = makeFolder();
const dyingScript = new URL('./die-at.mjs', import.meta.url).href;
const day = ['--date', '2026-03-01'];
const order = join(root, 'order.list');
const use = ['--paint', 'brick red', '--used', '1', ...day];
/** Rows that a log needs for the commands; those that arrive or are taken back are there. */
const begunWith = ['bought', 'log'] as const;

/** Flags behind the sheets, and how many rows they write. */
const commands: Readonly<Record<string, readonly [name: string, args: readonly string[], rows: number]>> = {
  log: ['log', use, 1],
  'log of an evening': ['log', ['--unit', 'first', '--steps', '1-2', ...day], 2],
  bought: ['bought', [order, '--again', ...day], 2],
  arrived: ['arrived', day, 2],
  count: ['count', ['--paint', 'earth wash', '--left', '40%', '--pots', '1', ...day], 1],
  'log --undo': ['log', ['--undo'], 1],
  'bought --undo': ['bought', ['--undo'], 2],
};

const empty = join(root, 'empty');
const begun = join(root, 'begun');
beforeAll(() => {
  mkdirSync(empty);
  writeSheets(empty, fourShortSheets);
  const pot = (paint: string): string =>
    `army,pot,Quay,${paint},${paint},17,pot,1,1,2.90,2.90,EUR,,1,1,,0.7,,`;
  const header =
    'for,entry,shop,offer,paint,size ml,container,pots in all,how many,price,cost,currency,code,covers ml,left over ml,missing ml,needed,plan of,note';
  writeFileSync(order, `${header}\n${pot('brick red')}\n${pot('earth wash')}\n`);
  cpSync(empty, begun, { recursive: true });
  for (const name of begunWith) {
    const [command, args] = commands[name] ?? ['', []];
    expect(runHalfpot([command, begun, ...args])).toMatchObject({ code: 0, err: '' });
  }
});

/** Without when they were written. */
const logOf = (folder: string): string[] | undefined =>
  existsSync(join(folder, 'log.csv'))
    ? readFileSync(join(folder, 'log.csv'), 'utf8')
        .replace(/\d{4}-\d\d-\d\dT[\d:.]+Z$/gm, 'now')
        .split('\n')
    : undefined;

function copyOf(folder: string, name: string): string {
  const copy = join(root, name);
  cpSync(folder, copy, { recursive: true });
  return copy;
}

function runDying(args: readonly string[], dieAt: number): number | null {
  const env = { ...process.env, DIE_AT: String(dieAt) };
  return spawnSync(process.execPath, ['--import', dyingScript, mainPath, ...args], { env }).status;
}

describe('a command that is killed leaves the log as it was or as it is to be', () => {
  const cases = [
    ...Object.keys(commands).map((name) => [name, 'a log', begun] as const),
    ['log of an evening', 'no log', empty] as const,
  ];
  it.each(cases)('%s, where there is %s', (name, held, from) => {
    const [command, args, rows] = commands[name] ?? ['', [], 0];
    const done = copyOf(from, `${name} of ${held} done`);
    expect(runHalfpot([command, done, ...args]).code).toBe(0);
    const [before, after] = [logOf(from), logOf(done)];
    expect(after?.length).toBe((before?.length ?? 2) + rows);
    let [old, whole, step] = [0, 0, 0];
    for (let code: number | null = null; code === null; step += 1) {
      const folder = copyOf(from, `${name} of ${held} at ${step}`);
      code = runDying([command, folder, ...args], step);
      const log = logOf(folder);
      expect([before, after]).toContainEqual(log);
      if (log?.length === after?.length) whole += 1;
      else old += 1;
      // The next one goes on, and clears away what was left.
      if (code === null && step === 3) {
        expect(runHalfpot(['log', folder, ...use]).code).toBe(0);
        expect(readdirSync(folder).filter((file) => file.startsWith('.'))).toEqual([]);
        expect(logOf(folder)?.length).toBe((log?.length ?? 2) + 1);
      }
    }
    // Before, in and after the writing: else the steps are not where they are looked for.
    expect(old).toBeGreaterThan(1);
    expect(whole).toBeGreaterThan(2);
  });
});

describe('six commands at once', () => {
  // None that writes what another has left to write: an arrival is of all that was bought by then.
  it.each(
    [
      ['bought', 'log of an evening', 'count', 'log', 'log', 'bought'],
      ['arrived', 'log of an evening', 'count', 'log', 'log', 'count'],
    ].map((names) => [names]),
  )('lose no row: %j', async (names) => {
    const argsOf = (name: string, folder: string): string[] => {
      const [command, args] = commands[name] ?? ['', []];
      return [command, folder, ...args];
    };
    const addedTo = (folder: string): string[] => {
      const rows = logOf(folder) ?? [];
      expect(rows.pop()).toBe('');
      return rows.slice((logOf(begun)?.length ?? 0) - 1);
    };
    const folder = copyOf(begun, `${names[0]} at once`);
    const runs = names.map((name) => startHalfpot(argsOf(name, folder)));
    await Promise.all(runs.map((run) => once(run, 'close')));
    expect(runs.map(({ exitCode }) => exitCode)).toEqual(runs.map(() => 0));
    const alone = names.flatMap((name, at) => {
      const one = copyOf(begun, `${names[0]} ${at} alone`);
      runHalfpot(argsOf(name, one));
      return addedTo(one);
    });
    expect(alone).toHaveLength(names.reduce((sum, name) => sum + (commands[name]?.[2] ?? 0), 0));
    expect(addedTo(folder).sort()).toEqual(alone.sort());
    expect(runHalfpot(['check', folder]).code).toBe(0);
  });
});
