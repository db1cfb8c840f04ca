// Writers killed at any moment, and several at once: the files of a folder are whole, and of one set.
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { outputNames } from '../../src/cli/render-files.js';
import { type OutputFile, writeFiles } from '../../src/cli/write-files.js';
import { makeFolder } from '../cli/run-halfpot.js';
import { compilePart } from './compile-part.js';
import { makeChance, rounds, seed } from './soak.js';

const root = makeFolder();
const compiled = makeFolder();
const script = fileURLToPath(new URL('./write-sets.mjs', import.meta.url));
const dyingScript = new URL('./die-at.mjs', import.meta.url).href;
let module = '';
beforeAll(async () => {
  module = await compilePart('src/cli/write-files.ts', compiled);
});

interface Writing {
  readonly kilobytes: number;
  /** Sets to write; none: until it is killed. */
  readonly sets?: number;
  /** The step of the file system at which it dies. */
  readonly dieAt?: number | undefined;
  readonly noLinks?: true;
}

function start(folder: string, name: string, { kilobytes, sets, dieAt, noLinks }: Writing): ChildProcess {
  const args = [module, folder, outputNames.join(), name, String(kilobytes), String(sets ?? 'Infinity')];
  return spawn(process.execPath, ['--import', dyingScript, script, ...args], {
    stdio: ['ignore', 'pipe', 'inherit'],
    env: {
      ...process.env,
      ...(dieAt === undefined ? {} : { DIE_AT: String(dieAt) }),
      ...(noLinks === undefined ? {} : { NO_LINKS: '1' }),
    },
  });
}

/** Which set each file is of; undefined for one that is not there. Fails for a file that is not whole. */
function setsIn(folder: string): Map<string, string | undefined> {
  return new Map(
    outputNames.map((name) => {
      const path = join(folder, name);
      if (!existsSync(path)) return [name, undefined];
      const text = readFileSync(path, 'utf8');
      const set = text.slice(0, text.indexOf('\n'));
      expect(text.endsWith(`\nend of ${set}\n`), `${name} is whole`).toBe(true);
      return [name, set];
    }),
  );
}

/** Where the last file stands, the others stand and are of its set. */
function expectOneSet(folder: string): void {
  const sets = setsIn(folder);
  const last = sets.get('plan.json');
  if (last !== undefined) expect([...new Set(sets.values())]).toEqual([last]);
}

const shortSet = (set: string): readonly OutputFile[] =>
  outputNames.map((name) => ({ name, content: `${set}\nend of ${set}\n` }));

const chance = makeChance(seed);

describe(`a folder of files (seed ${seed})`, () => {
  it('is whole wherever a writer is killed, and the next one goes on', async () => {
    const folder = join(root, 'killed');
    let stood = 0;
    for (let round = 0; round < rounds(15); round += 1) {
      const child = start(folder, `round ${round}`, { kilobytes: Math.floor(chance() * 300) });
      await once(child.stdout ?? child, 'data');
      await wait(chance() * 60);
      child.kill('SIGKILL');
      await once(child, 'exit');
      expectOneSet(folder);
      if (existsSync(join(folder, 'plan.json'))) stood += 1;
    }
    // The moment without a plan.json is short: else this would show nothing of whole sets.
    expect(stood).toBeGreaterThan(rounds(15) / 2);
  });

  it('is whole wherever in putting files in place a writer is killed', async () => {
    let atStep = 0;
    for (let code: number | null = null; code === null; atStep += 1) {
      const folder = join(root, `step ${atStep}`);
      await writeFiles(folder, shortSet('old'));
      const child = start(folder, 'new', { kilobytes: 1, sets: 1, dieAt: atStep });
      [code] = await once(child, 'exit');
      expectOneSet(folder);
      for (const [name, set] of setsIn(folder)) if (name !== 'plan.json') expect(set).toBeDefined();
      await writeFiles(folder, shortSet('next'));
      expect(new Set(setsIn(folder).values())).toEqual(new Set(['next']));
    }
    // Two for each file and more for the lock: else the steps are not where they are looked for.
    expect(atStep).toBeGreaterThan(2 * 2 * outputNames.length);
  });

  it('is whole too on a disk that knows no links', async () => {
    for (const dieAt of [undefined, ...Array.from({ length: rounds(8) }, () => Math.floor(chance() * 50))]) {
      const folder = join(root, `no links ${dieAt}`);
      await writeFiles(folder, shortSet('old'));
      const child = start(folder, 'new', { kilobytes: 1, sets: 1, dieAt, noLinks: true });
      await once(child, 'exit');
      expectOneSet(folder);
      if (dieAt === undefined) expect(new Set(setsIn(folder).values())).toEqual(new Set(['new 0']));
    }
  });

  it('is of one set though several write at once and are killed at once', async () => {
    const folder = join(root, 'several');
    mkdirSync(folder);
    for (let round = 0; round < rounds(8); round += 1) {
      const writers = ['a', 'b', 'c'].map((name) =>
        start(folder, `${name} of ${round}`, { kilobytes: 20 + chance() * 80 }),
      );
      await Promise.all(writers.map((child) => once(child.stdout ?? child, 'data')));
      for (const child of writers) {
        await wait(chance() * 60);
        child.kill('SIGKILL');
      }
      await Promise.all(writers.map((child) => child.exitCode ?? child.signalCode ?? once(child, 'exit')));
      expectOneSet(folder);
    }
  });

  it('is of one set when all are done, and holds nothing else', async () => {
    const folder = join(root, 'done');
    const writers = ['a', 'b', 'c'].map((name) => start(folder, name, { kilobytes: 50, sets: rounds(15) }));
    const ended = await Promise.all(writers.map((child) => once(child, 'exit')));
    expect(ended.map(([code]) => code)).toEqual([0, 0, 0]);
    expectOneSet(folder);
    expect(readdirSync(folder).sort()).toEqual([...outputNames].sort());
  });
});
