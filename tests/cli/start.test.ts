import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { writeSheets } from '../problems/problem-case.js';
import { makeWorkbook } from '../sheets/read/make-files.js';
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
    expect(plan.army).toMatchObject({ figures: 31, units: 9 });
    const states = new Set(plan.paints.map((paint: { state: string }) => paint.state));
    expect(states).toEqual(new Set(['none owned', 'short', 'tight', 'enough']));
    expect(plan.order.unmet).toEqual([]);
    for (const { notPainted } of plan.jobs) expect(notPainted).toEqual([]);
  });

  it('refuses to write over anything, names the file and leaves all as it was', () => {
    const folder = join(root, 'taken');
    mkdirSync(folder);
    writeFileSync(join(folder, 'how-to.txt'), 'mine');
    const { code, out, err } = runHalfpot(['start', folder]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toBe(
      `halfpot: ${join(folder, 'how-to.txt')} is already there and stays as it is. Name another folder.\n`,
    );
    expect(readdirSync(folder)).toEqual(['how-to.txt']);
    expect(readFileSync(join(folder, 'how-to.txt'), 'utf8')).toBe('mine');
  });

  it('adds beside sheets only those that are missing, with the names that the others speak of', () => {
    const folder = join(root, 'halves');
    mkdirSync(folder);
    // Every figure of the army, every paint of the schemes, once each; a scheme is there already.
    const mine = {
      'Schemata.csv':
        'Schema,step,zone,layer,Farbe\nred line,1,whole,base coat,brick red\n,2,whole,wash,earth wash\n',
      'army.csv': 'unit,figure,count\nfirst spears,spearman,20\nsecond spears,spearman,20\nbows,archer,5\n',
    };
    writeSheets(folder, mine);
    const { code, out, err } = runHalfpot(['start', folder]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain(
      'Already there:\n' +
        '  schemes   Schemata.csv, row 1: Schema -> scheme, step, zone, layer,\n            Farbe -> paint\n' +
        '  army      army.csv, row 1: unit, figure, count\nAdded:\n' +
        `  ${join(folder, 'pots.csv')}  2 rows to fill in\n`,
    );
    expect(out).toMatch(new RegExp(`\n  halfpot check ${folder}\n$`));
    const added = csvNames.filter((name) => name !== 'schemes.csv' && name !== 'army.csv');
    expect(readdirSync(folder).sort()).toEqual([...Object.keys(mine), ...added].sort());
    for (const [name, text] of Object.entries(mine))
      expect(readFileSync(join(folder, name), 'utf8')).toBe(text);
    const firstCells = (name: string) =>
      readFileSync(join(folder, name), 'utf8')
        .slice(1)
        .trimEnd()
        .split('\r\n')
        .map((line) => line.split(',')[0]);
    expect(firstCells('pots.csv')).toEqual(['paint', 'brick red', 'earth wash']);
    expect(firstCells('paints.csv')).toEqual(['paint', 'brick red', 'earth wash']);
    expect(firstCells('figures.csv')).toEqual(['figure', 'spearman', 'archer']);
    expect(firstCells('offers.csv')).toEqual(['shop']);
    // What is blank is asked for: the size of each pot, the height of each figure.
    const asked = runHalfpot(['check', folder]).err;
    expect(asked).toContain('pots.csv row 2, "size ml" (B2)');
    expect(asked).toContain('figures.csv row 2');
    expect(runHalfpot(['start', folder]).out).toMatch(/\nEvery sheet is there: nothing was added\.\n$/);
  });

  it('leaves pots alone what they are: blank sheets beside them change no answer', () => {
    const folder = join(root, 'shelf');
    mkdirSync(folder);
    writeSheets(folder, { 'pots.csv': 'paint,size ml\nbrick red,17\n' });
    runHalfpot(['start', folder]);
    expect(readFileSync(join(folder, 'paints.csv'), 'utf8')).toContain('\r\nbrick red,');
    const { code, out, err } = runHalfpot(['check', folder]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toContain('1 pot of 1 paint');
  });

  it('writes nothing beside a workbook, which is read by itself, and names what it lacks', async () => {
    const folder = join(root, 'booked');
    runHalfpot(['start', folder, '--workbook']);
    renameSync(join(folder, 'sheets.xlsx'), join(folder, 'mine.xlsx'));
    expect(runHalfpot(['start', folder])).toMatchObject({
      code: 0,
      out: expect.stringMatching(/nothing was added\.\n$/),
    });
    const pots = join(root, 'half a book');
    mkdirSync(pots);
    const sheets = {
      pots: [
        ['paint', 'size ml'],
        ['brick red', 17],
      ],
    };
    writeFileSync(join(pots, 'mine.xlsx'), await makeWorkbook(sheets));
    const { code, err } = runHalfpot(['start', pots]);
    expect(code).toBe(2);
    expect(err).toMatch(
      /^halfpot: mine\.xlsx stays as it is, and is read by itself\. Missing in it: paints, offers, /,
    );
    expect(readdirSync(pots)).toEqual(['mine.xlsx']);
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
    symlinkSync(join(root, 'nowhere'), join(folder, 'how-to.txt'));
    const { code, err } = runHalfpot(['start', folder]);
    expect(code).toBe(2);
    expect(err).toContain('how-to.txt is already there');
    expect(readdirSync(folder)).toEqual(['how-to.txt']);
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
      ['c'.repeat(300), `Cannot write to ${'c'.repeat(300)}: the name is too long.`],
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
    for (const folder of ['file', 'file/within']) {
      const { code, err } = runHalfpot(['start', join(root, folder)]);
      expect(code).toBe(2);
      expect(err).toMatch(
        /^halfpot: Cannot write to .*: (a file of that name is in the way|part of the path is a file, not a folder)\.\n$/,
      );
    }
  });
});
