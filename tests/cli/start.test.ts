import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeFolder, runHalfpot } from './run-halfpot.js';

const csvNames = [
  'army.csv',
  'extras.csv',
  'figures.csv',
  'how-to.txt',
  'log.csv',
  'offers.csv',
  'paints.csv',
  'pots.csv',
  'schemes.csv',
  'settings.csv',
  'shops.csv',
  'swaps.csv',
  'zones.csv',
];

describe('halfpot start', () => {
  const root = makeFolder();

  it('writes CSV sheets into a folder that it makes, and says so', () => {
    const folder = join(root, 'new/sheets');
    const { code, out, err } = runHalfpot(['start', folder]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(readdirSync(folder).sort()).toEqual(csvNames);
    for (const name of csvNames) expect(out).toContain(join(folder, name));
  });

  it('writes one workbook with --workbook', () => {
    const folder = join(root, 'book');
    const { code, out } = runHalfpot(['start', folder, '--workbook']);
    expect(code).toBe(0);
    expect(readdirSync(folder)).toEqual(['sheets.xlsx']);
    expect(out).toContain(`halfpot plan ${join(folder, 'sheets.xlsx')}`);
  });

  it('gives sheets that plan without a problem, as CSV and as a workbook alike', () => {
    const [csv, book] = [join(root, 'csv'), join(root, 'xlsx')];
    runHalfpot(['start', csv]);
    runHalfpot(['start', book, '--workbook']);
    const [one, two] = [csv, join(book, 'sheets.xlsx')].map((sheets) => {
      const { code, err, out } = runHalfpot(['plan', sheets, '--json']);
      expect({ code, err }).toEqual({ code: 0, err: '' });
      return JSON.parse(out);
    });
    expect({ ...two, read: [] }).toEqual({ ...one, read: [] });
    const plan = one;
    expect(plan.problems).toEqual([]);
    expect(plan.army).toMatchObject({ figures: 26, units: 4 });
    const states = new Set(plan.paints.map((paint: { state: string }) => paint.state));
    expect(states).toEqual(new Set(['none owned', 'short', 'tight', 'enough']));
    expect(plan.order.unmet).toEqual([]);
    for (const { notPainted } of plan.jobs) expect(notPainted).toEqual([]);
  });

  it('refuses to write over anything, names the file and leaves all as it was', () => {
    const folder = join(root, 'taken');
    mkdirSync(folder);
    writeFileSync(join(folder, 'shops.csv'), 'mine');
    const { code, out, err } = runHalfpot(['start', folder]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toBe(
      `halfpot: ${join(folder, 'shops.csv')} is already there and stays as it is. Name another folder.\n`,
    );
    expect(readdirSync(folder)).toEqual(['shops.csv']);
    expect(readFileSync(join(folder, 'shops.csv'), 'utf8')).toBe('mine');
  });

  it('refuses a second workbook too, without touching the first', () => {
    const folder = join(root, 'twice');
    runHalfpot(['start', folder, '--workbook']);
    const before = statSync(join(folder, 'sheets.xlsx')).mtimeMs;
    const { code, err } = runHalfpot(['start', folder, '--workbook']);
    expect(code).toBe(2);
    expect(err).toContain('sheets.xlsx is already there');
    expect(statSync(join(folder, 'sheets.xlsx')).mtimeMs).toBe(before);
  });

  it('takes back what it wrote when a later file cannot be written', () => {
    const folder = join(root, 'dangling');
    mkdirSync(folder);
    // A link to nowhere is not seen as a file, and still must not be written through.
    symlinkSync(join(root, 'nowhere'), join(folder, 'zones.csv'));
    const { code, err } = runHalfpot(['start', folder]);
    expect(code).toBe(2);
    expect(err).toContain('zones.csv is already there');
    expect(readdirSync(folder)).toEqual(['zones.csv']);
    expect(existsSync(join(root, 'nowhere'))).toBe(false);
  });

  it('wants a name for the folder, one that the disk takes, and leaves no folder on the way', () => {
    const cwd = join(root, 'names');
    mkdirSync(cwd);
    symlinkSync(join(root, 'nowhere'), join(root, 'to nowhere'));
    const long = `a/b/${'c'.repeat(300)}`;
    const tries = [
      ['', 'A blank is no folder. Name one, such as my-army.'],
      [long, `Cannot write to ${long}: the name is too long.`],
      [
        '../to nowhere',
        'Cannot write to ../to nowhere: part of the path is not there, or a link that leads nowhere.',
      ],
    ] as const;
    for (const [folder, says] of tries)
      expect(runHalfpot(['start', folder], { cwd })).toEqual({ code: 2, out: '', err: `halfpot: ${says}\n` });
    expect(readdirSync(cwd)).toEqual([]);
  });

  it('says when the folder is a file', () => {
    writeFileSync(join(root, 'file'), '');
    const { code, err } = runHalfpot(['start', join(root, 'file')]);
    expect(code).toBe(2);
    expect(err).toMatch(
      /^halfpot: Cannot write to .*: (a file of that name is in the way|part of the path is a file, not a folder)\.\n$/,
    );
  });
});
