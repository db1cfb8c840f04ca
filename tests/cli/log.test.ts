// `halfpot log` as a painter types it: the row at the end of the log, or a clear word and nothing written.
import type { ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { fourShortSheets, writeSheets } from '../problems/problem-case.js';
import { fourSheets, makeWorkbook } from '../sheets/read/make-files.js';
import { makeFolder, runHalfpot, startHalfpot } from './run-halfpot.js';

const root = makeFolder();

function folderWith(name: string, files: Readonly<Record<string, string>> = {}): string {
  const folder = join(root, name);
  mkdirSync(folder);
  writeSheets(folder, { ...fourShortSheets, ...files });
  return folder;
}

const work = ['--unit', 'First Spears', '--step', '1', '--figures', '10'];
const weighed = [
  '--paint',
  'Brick  red',
  ...work,
  '--before',
  '31,2',
  '--after',
  '30.1',
  '--date',
  '2026-03-01',
];
const header =
  'date,paint,unit,step,figures,before g,after g,used ml,what,left,size ml,pots,price,shop,postage,written';

describe('halfpot log', () => {
  it('begins a log beside the sheets, and goes on with it', () => {
    const folder = folderWith('begins');
    expect(runHalfpot(['log', folder, ...weighed])).toEqual({
      code: 0,
      err: '',
      out: `Written to ${join(folder, 'log.csv')}:\n  date 2026-03-01, paint brick red, unit first spears, step 1, figures 10, before g 31.2, after g 30.1\nOn the shelf now, usable:\n  brick red: 15.1 ml in 1 pot\n`,
    });
    const second = runHalfpot(['log', '--paint', 'earth wash', '--used', '0.5'], { cwd: folder });
    expect([second.code, second.err]).toEqual([0, '']);
    const now = new Date();
    const day = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((one) =>
      String(one).padStart(2, '0'),
    );
    expect(logIn(folder)).toBe(
      `\ufeff${header}\n2026-03-01,brick red,first spears,1,10,31.2,30.1,,,,,,,,,now\n${day.join('-')},earth wash,,,,,,0.5,,,,,,,,now\n`,
    );
    const { code, out } = runHalfpot(['check', folder]);
    expect(code).toBe(0);
    expect(out).toMatch(/log +2 rows/);
    expect(readdirSync(folder).sort()).toEqual([...Object.keys(fourShortSheets), 'log.csv'].sort());
  });

  it('keeps to the order, delimiter, commas and line ends of the log that is there', () => {
    const log =
      'sep=;\nNote;used_ml;Before g;PAINT;date;after g;unit;step;figures\nmine;;30,0;brick red;14.2.2026;29,5;;;';
    const folder = folderWith('keeps', { 'log.csv': log });
    expect(runHalfpot(['log', folder, ...weighed]).code).toBe(0);
    expect(readFileSync(join(folder, 'log.csv'), 'utf8')).toBe(
      `${log}\n;;31,2;brick red;2026-03-01;30,1;first spears;1;10\n`,
    );
  });

  it('begins a log that looks like the sheets beside it', () => {
    const pots = 'paint;size ml;price\nbrick red;17;2,80\nearth wash;24;\n';
    const folder = folderWith('looks', { 'pots.csv': pots });
    expect(runHalfpot(['log', folder, ...weighed]).code).toBe(0);
    expect(logIn(folder)).toBe(
      `\ufeff${header.replaceAll(',', ';')}\n2026-03-01;brick red;first spears;1;10;31,2;30,1;;;;;;;;;now\n`,
    );
  });

  it('writes beside a workbook and leaves the workbook as it is', async () => {
    const folder = join(root, 'workbook');
    mkdirSync(folder);
    const book = join(folder, 'army.xlsx');
    const bytes = await makeWorkbook({
      ...fourSheets,
      log: [
        ['date', 'paint', 'used ml'],
        ['2026-02-01', 'brick red', 1],
      ],
    });
    writeFileSync(book, bytes);
    expect(runHalfpot(['log', book, ...weighed]).code).toBe(0);
    expect(readFileSync(book).equals(bytes)).toBe(true);
    expect(logIn(folder)).toContain('2026-03-01,brick red,first spears,1,10,31.2,30.1,,,,,,,,,now\r\n');
    expect(runHalfpot(['check', book]).out).toMatch(/log +2 rows/);
  });

  it('writes a name that begins like a formula so that no spreadsheet runs it', () => {
    const name = '=HYPERLINK(1)';
    const folder = folderWith('formula', {
      'pots.csv': `paint,size ml\nbrick red,17\nearth wash,24\n${name},12\n`,
    });
    expect(runHalfpot(['log', folder, '--paint', name, '--used', '1', '--date', '2026-03-01'])).toMatchObject(
      { code: 0 },
    );
    expect(readFileSync(join(folder, 'log.csv'), 'utf8')).toContain(`2026-03-01,'${name},`);
    expect(runHalfpot(['check', folder])).toMatchObject({ code: 0, err: '' });
  });

  it('takes the day as a cell may have it', () => {
    const folder = folderWith('dotted');
    const args = ['--paint', 'brick red', '--used', '1', '--date', '14.3.2026'];
    expect(runHalfpot(['log', folder, ...args])).toMatchObject({ code: 0, err: '' });
    expect(readFileSync(join(folder, 'log.csv'), 'utf8')).toContain('\n2026-03-14,brick red,');
  });

  it('says once the row is written that the settings plan as of an earlier day than today', () => {
    const settings = { 'settings.csv': 'name,value\ndate,2026-03-14\n' };
    const folder = folderWith('earlier', settings);
    const { code, out, err } = runHalfpot(['log', folder, '--paint', 'brick red', '--used', '1']);
    expect([code, out.split('\n')[0]]).toEqual([0, `Written to ${join(folder, 'log.csv')}:`]);
    expect(err).toMatch(
      /^The settings sheet has the date 2026-03-14, and this row the day of today, \d{4}-\d\d-\d\d\. It counts all the same; to plan as of today, take the date out of the settings sheet\.\n$/,
    );
    const wrong = runHalfpot(['log', folder, '--paint', 'brik red', '--used', '1']);
    expect([wrong.code, wrong.err.match(/--date|2026-03-14/)]).toEqual([1, null]);
    const typed = runHalfpot(['log', folder, '--paint', 'brick red', '--used', '2', '--date', '2026-03-15']);
    expect([typed.code, typed.err]).toEqual([
      0,
      'warning: --date: "2026-03-15" lies after 2026-03-14, the day of this plan. Check the year and the day.\n',
    ]);
  });

  it('asks about a row that may be wrong, and writes it', () => {
    const folder = folderWith('asks');
    runHalfpot(['log', folder, ...weighed]);
    const { code, out, err } = runHalfpot(['log', folder, ...weighed]);
    expect([code, out.split('\n')[0]]).toEqual([0, `Written to ${join(folder, 'log.csv')}:`]);
    expect(err).toBe(
      'warning: --date: the same stands in row 2 already. It counts twice: take one of the two out if it is the same work.\n',
    );
  });
});

/** Without when each row was written, which is another time on each run. */
const logIn = (folder: string): string =>
  readFileSync(join(folder, 'log.csv'), 'utf8').replace(/\d{4}-\d\d-\d\dT[\d:.]+Z/g, 'now');

/** Runs, and shows that nothing was written. */
function refused(folder: string, args: readonly string[], sheets = folder) {
  const before = readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), 'latin1')]);
  const run = runHalfpot(['log', sheets, ...args]);
  expect(readdirSync(folder).map((name) => [name, readFileSync(join(folder, name), 'latin1')])).toEqual(
    before,
  );
  expect(run.out).toBe('');
  expect(run.err).not.toMatch(/\n {4}at /);
  return run;
}

describe('a row that is not written', () => {
  it.each([
    [
      ['--paint', 'brik red', '--used', '1'],
      'error: --paint: no sheet of yours knows the paint "brik red". Add it to the pots, paints or offers sheet, or spell it as there: brick red.\nNothing was written.\n',
    ],
    [
      ['--paint', 'brick red', '--before', '30', '--after', '31'],
      'error: --after: "31" is more than before, 30 g. Swap the two weights if they stand in the wrong columns.\nNothing was written.\n',
    ],
    [
      ['--paint', 'brick red', '--before', '60', '--after', '20'],
      "error: --after: this row used about 33.3 ml, more than there was: 17 ml. Check both weights, the pot's size and left, and the density g/ml of the paint.\nNothing was written.\n",
    ],
    [
      ['--paint', 'brick red', '--used', '1', '--unit', 'spaers', '--step', 'two', '--figures', '1.5'],
      'error: --unit: the army sheet does not know "spaers". Add it there.\nerror: --step: "two" is not a count. Write a whole number, such as 1.\nerror: --figures: "1.5" is not a whole number. Write a whole number, such as 20.\nNothing was written.\n',
    ],
  ])('%j: wrong', (args, err) => {
    expect(refused(folderWith(`wrong ${args.join('')}`), args)).toEqual({ code: 1, out: '', err });
  });

  it.each([
    [['--used', '1'], 'Of which paint? Give --paint'],
    [['--paint', 'brick red'], 'How much was used?'],
    [['--paint', 'brick red', '--before', '31'], 'Give both --before and --after'],
    [['--paint', ' ', '--used', '1'], '--paint is blank'],
    [['--paint', 'brick red', '--used', ''], '--used is blank'],
    [['--paint', 'brick red', '--used', '1', '--date', '1.13.2026'], 'Write --date as 2026-03-14'],
    [
      ['--paint', 'brick red', '--used', '1', '--date', '1-3-2026'],
      'Write --date as 2026-01-03 or 2026-03-01',
    ],
  ])('%j: half a row', (args, says) => {
    const { code, err } = refused(folderWith(`half ${args.join('')}`), args);
    expect(code).toBe(2);
    expect(err).toContain(says);
  });

  it('tells the errors of the sheets, without which nobody knows whether it is right', () => {
    const folder = folderWith('errors', { 'army.csv': 'unit,figure,count\nfirst spears,spearman,many\n' });
    const { code, err } = refused(folder, ['--paint', 'brick red', '--used', '1']);
    expect(code).toBe(1);
    expect(err).toMatch(/^error: army\.csv row 2, "count".*\n1 error\nNothing was written\.\n$/);
    expect(runHalfpot(['log', join(root, 'nowhere'), '--paint', 'x', '--used', '1']).code).toBe(1);
    expect(existsSync(join(root, 'nowhere'))).toBe(false);
  });

  it('has letters that the encoding of the log lacks', () => {
    const folder = folderWith('letters', {
      'pots.csv': 'paint,size ml\nbrick red,17\nearth wash,24\nłąka,17\n',
    });
    writeFileSync(
      join(folder, 'log.csv'),
      Buffer.from('date,paint,used ml,Gr\xf6\xdfe\n2026-03-01,brick red,1,\n', 'latin1'),
    );
    const lacking = refused(folder, ['--paint', 'łąka', '--used', '1']);
    expect([lacking.code, lacking.err]).toEqual([2, expect.stringContaining('cannot write "łą"')]);
  });

  it('would go to the log of somebody else', async () => {
    const beside = async (name: string, file: string, text: string) => {
      const folder = join(root, name);
      mkdirSync(folder);
      writeFileSync(join(folder, 'army.xlsx'), await makeWorkbook(fourSheets));
      writeFileSync(join(folder, file), text);
      return refused(folder, ['--paint', 'brick red', '--used', '1'], join(folder, 'army.xlsx'));
    };
    const sheets = await beside('csv', 'pots.csv', 'paint,size ml\n');
    expect([sheets.code, sheets.err]).toEqual([
      2,
      expect.stringContaining('belongs to the CSV sheets there (pots.csv)'),
    ]);
    const other = await beside('other', 'log.csv', 'time,message\n1,hello\n');
    expect([other.code, other.err]).toEqual([
      2,
      expect.stringContaining('has no paint column and stays as it is'),
    ]);
  });

  it('finds a log that may not be written to', ({ skip }) => {
    const nobody = process.getuid?.() === 0 ? { uid: 65_534 } : {};
    if (process.platform === 'win32' || runHalfpot(['--version'], nobody).code !== 0)
      skip('no other user here');
    const folder = folderWith('locked', { 'log.csv': `${header}\n` });
    chmodSync(root, 0o755);
    chmodSync(join(folder, 'log.csv'), 0o444);
    const { code, err } = runHalfpot(['log', folder, '--paint', 'brick red', '--used', '1'], nobody);
    expect([code, err]).toEqual([
      2,
      `halfpot: Cannot write to ${join(folder, 'log.csv')}: you may not write there.\n`,
    ]);
  });
});

describe('several at once', () => {
  const rowOf = (at: number) => ['--paint', 'brick red', '--used', `0.${100 + at}0`, '--date', '2026-03-01'];
  const lineOf = (at: number) => `2026-03-01,brick red,,,,,,0.${100 + at}0,,,,,,,,now`;
  const linesIn = (folder: string) => logIn(folder).slice(1).split('\n');
  const pots = { 'pots.csv': 'paint,size ml\nbrick red,400\nearth wash,24\n' };

  it('begin one log with a row of each', async () => {
    const folder = folderWith('at once', pots);
    const runs = Array.from({ length: 6 }, (_, at) => startHalfpot(['log', folder, ...rowOf(at)]));
    await Promise.all(runs.map((run) => once(run, 'close')));
    expect(runs.map(({ exitCode }) => exitCode)).toEqual(runs.map(() => 0));
    const [first, ...lines] = linesIn(folder);
    expect(first).toBe(header);
    expect(lines.sort()).toEqual(['', ...runs.map((_, at) => lineOf(at))]);
    expect(statSync(join(folder, 'log.csv')).isFile()).toBe(true);
  });

  it('and killed at any moment leave whole rows, and each that was said to be written', async () => {
    const folder = folderWith('killed', pots);
    const started: { readonly at: number; readonly run: ChildProcess; said: string }[] = [];
    for (let at = 0; at < 16; at += 1) {
      const one = { at, run: startHalfpot(['log', folder, ...rowOf(at)]), said: '' };
      one.run.stdout?.on('data', (chunk: Buffer) => {
        one.said += chunk.toString();
      });
      started.push(one);
      const ended = once(one.run, 'close');
      // From before the program has begun to after it has said that it is done.
      setTimeout(() => one.run.kill('SIGKILL'), 100 + at * 40);
      if (at % 2 === 1) await ended;
      else await wait(30);
    }
    await Promise.all(
      started.map(({ run }) => (run.exitCode ?? run.signalCode) === null && once(run, 'close')),
    );
    const lines = existsSync(join(folder, 'log.csv')) ? linesIn(folder) : [header, ''];
    expect([lines.shift(), lines.pop()]).toEqual([header, '']);
    expect(lines.filter((line) => !started.some(({ at }) => line === lineOf(at)))).toEqual([]);
    for (const { at, said } of started) if (said.includes('Written')) expect(lines).toContain(lineOf(at));
    expect(new Set(lines).size).toBe(lines.length);
  });
});
