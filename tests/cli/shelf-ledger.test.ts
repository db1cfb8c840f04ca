// The log of a shelf that several armies use: written by the commands of each, read by all.
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fourShortSheets, writeSheets } from '../problems/problem-case.js';
import { fourSheets, makeWorkbook } from '../sheets/read/make-files.js';
import { makeFolder, runHalfpot } from './run-halfpot.js';

const root = makeFolder();
const day = ['--date', '2026-03-01'];
const { 'pots.csv': _, ...armySheets } = fourShortSheets;
const shelfSheets = {
  'pots.csv': 'paint,size ml\nbrick red,17\nearth wash,24\n',
  'offers.csv': 'shop,offer,price,paint,size ml\nQuay,red,3,brick red,17\nQuay,wash,4,earth wash,24\n',
};
const settings = { 'settings.csv': 'name,value\nshelf,../shelf\n' };

/** North's settings name the shelf; nothing of south's does. */
function armies(name: string, southUnit = 'second spears') {
  const dir = join(root, name);
  const write = (folder: string, files: Readonly<Record<string, string>>): void => {
    mkdirSync(join(dir, folder), { recursive: true });
    writeSheets(join(dir, folder), files);
  };
  write('north', { ...armySheets, ...settings });
  write('south', { ...armySheets, 'army.csv': `unit,figure,count\n${southUnit},spearman,5\n` });
  write('shelf', shelfSheets);
  const run = (...args: readonly string[]) => runHalfpot(args, { cwd: dir });
  const log = (): string[] =>
    readFileSync(join(dir, 'shelf', 'log.csv'), 'utf8')
      .trimEnd()
      .split('\n')
      .slice(1)
      .map((line) => line.replace(/[^,]*$/, ''));
  return { dir, run, log, write };
}

const evening = (figures: string) => ['--unit', 'spears', '--steps', '1', '--figures', figures, ...day];
const shelf = ['--shelf', 'shelf'];

describe('the log of a shelf that the settings or --shelf name', () => {
  it('has the rows of each army on it, with the army that they are about, and the shelf is told', () => {
    const { dir, run, log } = armies('two');
    const north = run('log', 'north', ...evening('20'));
    expect([north.code, north.err]).toEqual([0, '']);
    expect(north.out).toContain(
      `Written to ${join(dir, 'shelf', 'log.csv')}:\n  date 2026-03-01, paint brick red, unit first spears (north), step 1, figures 20\nOn the shelf now, usable:\n  brick red: about 12`,
    );
    expect(run('log', 'south', ...evening('5'), ...shelf).code).toBe(0);
    expect(run('count', 'south', ...shelf, '--paint', 'earth', '--left', '50%', ...day).out).toContain(
      'earth wash: 11.3 ml in 1 pot\n',
    );
    expect(log()).toEqual([
      '2026-03-01,brick red,first spears (north),1,20,,,,,,,,,,,',
      '2026-03-01,brick red,second spears (south),1,5,,,,,,,,,,,',
      '2026-03-01,earth wash,,,,,,,counted,50%,,,,,,',
    ]);
    for (const army of ['north', 'south']) expect(existsSync(join(dir, army, 'log.csv'))).toBe(false);
  });

  it('says of another army that paint was used, and not how much, until the pot is counted', () => {
    const { run } = armies('other');
    expect(run('log', 'south', ...evening('5'), ...shelf).code).toBe(0);
    const check = run('check', 'north');
    expect([check.code, check.err]).toEqual([
      0,
      'warning: shelf/log.csv row 2, "used ml" (H2): this row does not say how much was used. Write both weights, or used ml; until then it lowers no pot.\n1 warning\n',
    ]);
    expect(run('count', 'north', '--paint', 'brick', '--left', '50%', ...day).code).toBe(0);
    expect(run('check', 'north')).toMatchObject({ code: 0, err: '' });
    expect(run('check', 'shelf').code).toBe(0);
  });

  it('gives each of two units with one name its own work', () => {
    const { run, log } = armies('shared', 'first spears');
    expect(run('log', 'north', ...evening('20')).code).toBe(0);
    expect(run('log', 'south', ...evening('3'), ...shelf).code).toBe(0);
    expect(log().map((row) => row.split(',')[2])).toEqual(['first spears (north)', 'first spears (south)']);
    const plan = run('plan', 'north', 'south', '--json', ...day);
    expect(plan.code).toBe(0);
    expect(plan.err).toContain(
      'warning: south/army.csv row 2, "unit" (A2): "first spears" is a unit of north too. They are kept apart: each is called by its name and, in brackets, its army.\n',
    );
    const { jobs } = JSON.parse(plan.out) as {
      jobs: { lines: { step: number; figures: number }[] }[];
    };
    // Figures that still lack a step.
    expect(jobs.map(({ lines }) => lines.map(({ step, figures }) => [step, figures]))).toEqual([
      [[2, 20]],
      [
        [1, 2],
        [2, 5],
      ],
    ]);
  });

  it('is taken back army by army, and pots by any of them', () => {
    const { run, log } = armies('undo');
    run('log', 'north', ...evening('20'));
    run('log', 'south', ...evening('5'), ...shelf);
    expect(run('log', 'north', '--undo').code).toBe(0);
    expect(run('log', 'north', '--undo').err).toContain('nothing used that could be taken back');
    expect(run('log', 'south', '--undo', ...shelf).code).toBe(0);
    expect(log().slice(2)).toEqual([
      '2026-03-01,brick red,first spears (north),1,20,,,,not used,,,,,,,',
      '2026-03-01,brick red,second spears (south),1,5,,,,not used,,,,,,,',
    ]);
    run('count', 'north', '--paint', 'brick', '--left', '40%', ...day);
    expect(run('count', 'south', '--undo', ...shelf).out).toContain('brick red: 16 ml in 1 pot\n');
    for (const check of [run('check', 'north'), run('plan', 'north', 'south', '--json')])
      expect([check.code, check.err]).toEqual([0, '']);
  });

  it('takes an order by one army and its arrival by another', () => {
    const { dir, run } = armies('order');
    writeFileSync(join(dir, 'shelf', 'shops.csv'), 'shop,postage\nQuay,5\n');
    writeFileSync(
      join(dir, 'shelf', 'pots.csv'),
      'paint,size ml,left\nbrick red,17,empty\nearth wash,24,empty\n',
    );
    expect(run('plan', 'north', 'south', '--out', 'out', ...day).code).toBe(0);
    const bought = run('bought', 'north', 'out/reorder.csv', ...day);
    expect([bought.code, bought.err]).toEqual([0, '']);
    expect(run('arrived', 'south', ...shelf, '--date', '2026-03-03').code).toBe(0);
    const { money } = JSON.parse(run('plan', 'north', 'south', '--json', '--date', '2026-03-04').out);
    // One of each pot and the postage: 3 + 4 + 5.
    expect(money).toMatchObject({
      spent: [{ month: '2026-03', shop: 'Quay', cash: '12.00' }],
      ...{ bought: '7.00', onTheWay: '0.000000', standing: '7.000000' },
    });
  });

  it('stands beside a shelf that is a workbook', async () => {
    const { dir, run } = armies('book');
    mkdirSync(join(dir, 'attic'));
    const book = join(dir, 'attic', 'shelf.xlsx');
    writeFileSync(book, await makeWorkbook({ pots: fourSheets.pots ?? [] }));
    const before = readFileSync(book);
    const count = run('count', 'south', '--shelf', book, '--paint', 'brick', '--left', '40%', ...day);
    expect([count.code, count.err]).toEqual([0, '']);
    expect(readdirSync(join(dir, 'attic')).sort()).toEqual(['log.csv', 'shelf.xlsx']);
    expect(readFileSync(book)).toEqual(before);
  });
});

describe('a shelf that cannot be written to', () => {
  const count = ['--paint', 'brick red', '--left', '40%', ...day];
  const files = (dir: string): string[] => readdirSync(dir, { recursive: true }).map(String).sort();

  it.each<[string, (write: ReturnType<typeof armies>['write']) => void, readonly string[], string]>([
    [
      'has an army in it',
      (write) => write('shelf', fourShortSheets),
      ['north'],
      'error: shelf/army.csv: this stands on a shelf, which has no army of its own. Move it into a folder with its figures and schemes, and plan that folder.\n',
    ],
    [
      'is named otherwise in the settings',
      (write) => write('attic', shelfSheets),
      ['north', '--shelf', 'attic'],
      'error: north/settings.csv row 2: the shelf is "../shelf" here, and ',
    ],
    ['is not there', () => undefined, ['south', '--shelf', 'nowhere'], 'error: nowhere: '],
    [
      'has a row of a unit that its army lacks',
      (write) =>
        write('shelf', { 'log.csv': 'date,paint,unit,what,left\n2026-02-01,brick red,spaers (north),,\n' }),
      ['north'],
      'error: shelf/log.csv row 2, "unit" (C2): the army sheet does not know "spaers (north)".',
    ],
    ['has no army beside it', () => undefined, ['east', ...shelf], 'error: east: '],
  ])('%s', (name, make, args, says) => {
    const { dir, run, write } = armies(name);
    make(write);
    const before = files(dir);
    const { code, err } = run('count', ...args, ...count);
    expect([code, err]).toEqual([1, expect.stringContaining(says)]);
    expect(err).toMatch(/Nothing was written\.\n$/);
    expect(files(dir)).toEqual(before);
  });

  it('is named twice', () => {
    const { code, err } = armies('named twice').run('count', 'south', ...shelf, ...shelf, ...count);
    expect([code, err]).toEqual([2, expect.stringContaining('It is given twice, also as "shelf".')]);
  });
});
