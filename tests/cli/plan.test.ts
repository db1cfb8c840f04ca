import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { planSchema } from '../../src/report/plan-json/plan-document.js';
import { planVersion } from '../../src/report/plan-json/plan-version.js';
import { fourShortSheets, writeSheets } from '../problems/problem-case.js';
import { makeFolder, runHalfpot } from './run-halfpot.js';

const names = [
  'bench.html',
  'estimate.xlsx',
  'plan.json',
  'reorder.csv',
  'reorder.xlsx',
  'report.html',
  'shop.html',
];
const sample = 'sample-data/low-sluice';
const date = ['--date', '2026-11-01'];

const root = makeFolder();

function sheetsIn(folder: string, more: Readonly<Record<string, string>> = {}): string {
  const path = join(root, folder);
  mkdirSync(path, { recursive: true });
  writeSheets(path, { ...fourShortSheets, ...more });
  return path;
}

describe('halfpot plan', () => {
  it('writes its files, prints the three figures of the report and says where the files are', () => {
    const out = join(root, 'sample');
    const run = runHalfpot(['plan', sample, '--out', out, ...date]);
    expect(run.code).toBe(0);
    expect(readdirSync(out).sort()).toEqual(names);
    for (const name of names) expect(run.out).toContain(join(out, name));
    const report = readFileSync(join(out, 'report.html'), 'utf8');
    const figures = run.out
      .split('\n\n')
      .slice(0, 3)
      .map((told) => told.split('\n')[1]?.trim() ?? '');
    expect(figures).toHaveLength(3);
    for (const figure of figures) expect(report).toContain(figure);
    expect(run.out).toContain('\n\nCautions in the report: Spray can, Airbrush, Brush.\n\nWritten:\n');
    expect(report).toMatch(/<h3>Spray can<.*<h3>Airbrush<.*<h3>Brush</s);
  });

  it('names no caution where the report has none', () => {
    const army = 'unit,figure,count,done\nfirst spears,spearman,20,2\n';
    const run = runHalfpot(['plan', sheetsIn('done', { 'army.csv': army }), '--out', join(root, 'done-out')]);
    expect([run.code, run.out.includes('Cautions')]).toEqual([0, false]);
  });

  it('answers from pots alone, with its files, and refuses what asks about an army', () => {
    const pots = join(root, 'pots alone');
    mkdirSync(pots);
    writeFileSync(join(pots, 'pots.csv'), 'paint,size ml,left\nbrick red,17,full\n');
    const out = join(root, 'pots-out');
    const run = runHalfpot(['plan', pots, '--out', out, ...date]);
    expect({ ...run, out: run.out.split('\n\nWritten:')[0] }).toEqual({
      code: 0,
      err: '',
      out: [
        'What is on the shelf?\n  16\u00a0ml\n  So much can be got out of 1 pot of 1 paint.\n',
        'What is it worth?\n  No prices yet\n  Write what your pots cost into the price column of the pots sheet.\n',
        'What is low?\n  Nothing\n  Each paint reaches its keep level.\n',
        'With sheets of figures, schemes and army: whether the pots last, what the army costs, what to buy for it.',
        'With a sheet of offers: what to buy in which shop, and what it costs.',
      ].join('\n'),
    });
    expect(readdirSync(out).sort()).toEqual(names);
    for (const flag of ['--until', '--budget'])
      expect(runHalfpot(['plan', pots, flag, '1', '--json'])).toEqual({
        code: 2,
        out: '',
        err: `halfpot: ${flag} is about an army, and your sheets have none.\n`,
      });
  });

  it('writes a plan.json that its schema knows to the last key', () => {
    const document = JSON.parse(runHalfpot(['plan', sample, '--json', ...date]).out);
    expect(planSchema.parse(document)).toEqual(document);
    expect(document.army).toMatchObject({ figures: 109, units: 8, chanceAllLast: 0 });
    expect(document.units).toHaveLength(8);
  });

  it('gives the same bytes each time', () => {
    const [one, two] = [join(root, 'one'), join(root, 'two')];
    // Long enough to be proved on any machine: what is not proved in time may be another order.
    for (const out of [one, two]) runHalfpot(['plan', sample, '--seconds', '300', '--out', out, ...date]);
    for (const name of names)
      expect(readFileSync(join(two, name)).equals(readFileSync(join(one, name)))).toBe(true);
  });

  it('prints plan.json alone with --json, and writes no file', () => {
    const sheets = sheetsIn('json');
    const cwd = join(root, 'json-cwd');
    mkdirSync(cwd);
    const { code, out, err } = runHalfpot(['plan', sheets, '--json'], { cwd });
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(JSON.parse(out).version).toBe(planVersion);
    expect(readdirSync(cwd)).toEqual([]);
    const folder = join(root, 'json-out');
    const both = runHalfpot(['plan', sheets, '--json', '--out', folder], { cwd });
    expect(both.out).toBe(out);
    expect(readFileSync(join(folder, 'plan.json'), 'utf8')).toBe(out);
    expect(readdirSync(cwd)).toEqual([]);
  });

  it('reads the current folder and writes beside it unless told otherwise', () => {
    const cwd = sheetsIn('here');
    expect(runHalfpot(['plan'], { cwd }).code).toBe(0);
    expect(readdirSync(join(cwd, 'halfpot-report')).sort()).toEqual(names);
    expect(runHalfpot(['plan', '.'], { cwd }).code).toBe(0);
  });

  it('puts the new files over those of an earlier plan', () => {
    const sheets = sheetsIn('again');
    const out = join(root, 'again-out');
    runHalfpot(['plan', sheets, '--out', out]);
    writeSheets(sheets, { 'army.csv': 'unit,figure,count\nfirst spears,spearman,7\n' });
    expect(runHalfpot(['plan', sheets, '--out', out]).code).toBe(0);
    expect(JSON.parse(readFileSync(join(out, 'plan.json'), 'utf8')).army.figures).toBe(7);
    expect(readdirSync(out).sort()).toEqual(names);
  });

  it('takes the day from --date, else from the settings, else from the clock', () => {
    const dated = sheetsIn('dated', { 'settings.csv': 'name,value\ndate,2025-02-03\n' });
    const dateOf = (args: readonly string[]) => JSON.parse(runHalfpot(['plan', ...args, '--json']).out).date;
    expect(dateOf([dated, '--date', '2024-02-29'])).toBe('2024-02-29');
    expect(dateOf([dated])).toBe('2025-02-03');
    const before = new Date().toDateString();
    const today = dateOf([sheetsIn('undated')]);
    const { year, month, day } = /^(?<year>\d{4})-(?<month>\d\d)-(?<day>\d\d)$/.exec(today)?.groups ?? {};
    const told = new Date(Number(year), Number(month) - 1, Number(day)).toDateString();
    expect([before, new Date().toDateString()]).toContain(told);
  });

  it('holds every day of the sheets against that of --date', () => {
    const row = '2026-03-01,brick red,first spears,1,5,0.4';
    const log = `date,paint,unit,step,figures,used ml\n${row}\n`;
    const settings = 'name,value\ndate,2026-01-31\nlocale,english\n';
    const dated = sheetsIn('held dates', { 'settings.csv': settings, 'log.csv': log });
    // The locale stops the plan, so that nothing but the checks has to run.
    const warned = (...args: readonly string[]) =>
      runHalfpot(['plan', dated, ...args]).err.match(/lies after [-\d]+/g) ?? [];
    expect(warned()).toEqual(['lies after 2026-01-31']);
    expect(warned('--date', '2026-03-01')).toEqual([]);
    expect(warned('--date', '2026-02-28')).toEqual(['lies after 2026-02-28']);
    expect(warned('--date', '2025-12-24')).toEqual(['lies after 2025-12-24']);
  });

  it('tells in plan.json how each sheet was read, and says nothing on the console of what it leaves alone', () => {
    const army = 'Einheit,figure,count,a\nfirst spears,spearman,20,x\n';
    const { code, out, err } = runHalfpot(['plan', sheetsIn('own columns', { 'army.csv': army }), '--json']);
    expect([code, err]).toEqual([0, '']);
    const { problems, read } = JSON.parse(out);
    expect(problems).toEqual([]);
    expect(read.map(({ sheet }: { sheet: string }) => sheet)).toEqual(['pots', 'figures', 'schemes', 'army']);
    expect(read[3]).toEqual({
      ...{ sheet: 'army', file: 'army.csv', headerRow: 1 },
      columns: [
        { header: 'Einheit', isOwn: false, column: 'unit' },
        { header: 'figure', isOwn: true, column: 'figure' },
        { header: 'count', isOwn: true, column: 'count' },
        { header: 'a', isOwn: false },
      ],
    });
  });

  it('shows warnings on the error stream and in the report, and still plans', () => {
    const sheets = sheetsIn('warned', {
      'offers.csv': 'shop,offer,price,paint,size ml\nQuay,one,3,brick red,17\n',
      'shops.csv': 'shop\nMill\n',
    });
    const out = join(root, 'warned-out');
    const run = runHalfpot(['plan', sheets, '--out', out]);
    expect(run.code).toBe(0);
    expect(run.err).toMatch(/^warning: offers\.csv row 2, "shop" \(A2\): .*"Quay"/);
    expect(run.err).toContain('\n1 warning\n');
    expect(readFileSync(join(out, 'report.html'), 'utf8')).toContain('offers.csv row 2');
    expect(JSON.parse(readFileSync(join(out, 'plan.json'), 'utf8')).problems).toMatchObject([
      { found: 'Quay' },
    ]);
  });

  it('shows no colour and no control character, whatever the sheets hold', () => {
    const sheets = sheetsIn('colour', {
      'army.csv': 'unit,figure,count\nred,"spear\nman\u202e",20\n',
    });
    const { code, err } = runHalfpot(['plan', sheets], { env: { FORCE_COLOR: '1' } });
    expect(code).toBe(1);
    expect(err).toContain('spear man\\u202e');
    expect(err.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Bidi_Control}]/u);
  });
});

describe('halfpot check', () => {
  it('says what was found and that nothing is wrong', () => {
    const { code, out, err } = runHalfpot(['check', sample]);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(/^Found:\n/);
    for (const line of ['pots +26 pots', 'army +8 units, 109 figures', 'No problems.'])
      expect(out).toMatch(new RegExp(line));
  });

  it('writes nothing', () => {
    const cwd = sheetsIn('checked');
    const before = readdirSync(cwd);
    expect(runHalfpot(['check'], { cwd }).code).toBe(0);
    expect(readdirSync(cwd)).toEqual(before);
  });
});

describe('where files may go', () => {
  it('is not a file', () => {
    const sheets = sheetsIn('file');
    writeFileSync(join(root, 'a-file'), 'mine');
    const { code, out, err } = runHalfpot(['plan', sheets, '--out', join(root, 'a-file')]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toBe(`halfpot: ${join(root, 'a-file')} is a file. Name a folder with --out.\n`);
    expect(readFileSync(join(root, 'a-file'), 'utf8')).toBe('mine');
  });

  it.each([
    ['', '--out is blank. Name a folder, or leave it out.'],
    ['  ', '--out is blank. Name a folder, or leave it out.'],
  ])('is named: "%s"', (out, says) => {
    const cwd = sheetsIn('blank');
    const before = readdirSync(cwd);
    expect(runHalfpot(['plan', '.', '--out', out], { cwd })).toEqual({
      code: 2,
      out: '',
      err: `halfpot: ${says}\n`,
    });
    expect(readdirSync(cwd)).toEqual(before);
  });

  it('has a name that the disk takes, or no folder on the way to it is left', () => {
    const cwd = join(root, 'long');
    mkdirSync(cwd);
    const sheets = sheetsIn('long-sheets');
    for (const out of [`a/${'b'.repeat(300)}/c`, 'd/'.repeat(2100)])
      expect(runHalfpot(['plan', sheets, '--out', out], { cwd })).toEqual({
        code: 2,
        out: '',
        err: `halfpot: Cannot write to ${out}: the name is too long.\n`,
      });
    expect(readdirSync(cwd)).toEqual([]);
  });

  it('is looked at before the sheets are', () => {
    const { code, err } = runHalfpot(['plan', join(root, 'nowhere'), '--out', '']);
    expect([code, err]).toEqual([2, 'halfpot: --out is blank. Name a folder, or leave it out.\n']);
  });

  it('is no link to nowhere', () => {
    symlinkSync(join(root, 'not there'), join(root, 'dangling'));
    const { code, err } = runHalfpot(['plan', sheetsIn('linked'), '--out', join(root, 'dangling')]);
    expect([code, err]).toEqual([
      2,
      `halfpot: ${join(root, 'dangling')} is a link that leads nowhere. Name a folder with --out.\n`,
    ]);
  });

  it.each([
    ['report.html', '<!doctype html><title>Our club</title>'],
    ['shop.html', '<!doctype html><title>Our shop</title>'],
    ['bench.html', '<!doctype html><title>Our bench</title>'],
    ['reorder.csv', 'paint,pots\nOat,2\n'],
    ['plan.json', '{ "name": "my plan" }'],
    ['estimate.xlsx', 'a workbook of another program'],
    ['reorder.xlsx', ''],
  ])('holds no %s of somebody else', (name, content) => {
    const out = join(root, `foreign ${name}`);
    mkdirSync(out);
    writeFileSync(join(out, name), content);
    expect(runHalfpot(['plan', sheetsIn('foreign'), '--out', out])).toEqual({
      code: 2,
      out: '',
      err: `halfpot: ${join(out, name)} is there already and not of an earlier plan. Name another folder with --out, or move that file away.\n`,
    });
    expect(readdirSync(out)).toEqual([name]);
    expect(readFileSync(join(out, name), 'utf8')).toBe(content);
  });

  it('may hold what an earlier plan left, also where some of it is gone or was saved anew', () => {
    const [sheets, out] = [sheetsIn('earlier'), join(root, 'earlier-out')];
    const settings = { 'settings.csv': 'name,value\nlocale,de\n' };
    expect(runHalfpot(['plan', sheetsIn('german', settings), '--out', out]).code).toBe(0);
    for (const name of ['plan.json', 'reorder.xlsx']) rmSync(join(out, name));
    const saved = readFileSync(join(out, 'reorder.csv'), 'utf8').slice(1).replaceAll(';', '\t');
    writeFileSync(join(out, 'reorder.csv'), saved);
    expect(runHalfpot(['plan', sheets, '--out', out]).code).toBe(0);
    expect(readdirSync(out).sort()).toEqual(names);
  });

  it('is not under a file', () => {
    const { code, err } = runHalfpot(['plan', sheetsIn('under'), '--out', join(root, 'a-file/deep/er')]);
    expect(code).toBe(2);
    expect(err).toMatch(/^halfpot: Cannot write to .*: part of the path is a file, not a folder\.\n$/);
  });

  it('is not among the sheets', () => {
    const sheets = sheetsIn('own');
    const before = readdirSync(sheets);
    for (const out of [sheets, join(sheets, '../own'), '.']) {
      const { code, err } = runHalfpot(['plan', sheets, '--out', out], { cwd: sheets });
      expect(code).toBe(2);
      expect(err).toContain('is where your sheets are');
    }
    expect(readdirSync(sheets)).toEqual(before);
  });

  it('is not where a file of ours would replace the painter’s workbook', () => {
    const folder = join(root, 'book');
    runHalfpot(['start', folder, '--workbook']);
    const bytes = readFileSync(join(folder, 'sheets.xlsx'));
    const mine = join(folder, 'reorder.xlsx');
    writeFileSync(mine, bytes);
    const { code, err } = runHalfpot(['plan', mine, '--out', folder]);
    expect(code).toBe(2);
    expect(err).toContain('reorder.xlsx is your own workbook');
    expect(readFileSync(mine).equals(bytes)).toBe(true);
    expect(existsSync(join(folder, 'report.html'))).toBe(false);
    expect(runHalfpot(['plan', join(folder, 'sheets.xlsx'), '--out', join(folder, 'report')]).code).toBe(0);
  });

  it('has no folder where a file must go', () => {
    const out = join(root, 'blocked');
    mkdirSync(join(out, 'reorder.csv'), { recursive: true });
    const { code, err } = runHalfpot(['plan', sheetsIn('blocking'), '--out', out]);
    expect(code).toBe(2);
    expect(err).toContain('reorder.csv is a folder and stands in the way of a file');
    expect(readdirSync(out)).toEqual(['reorder.csv']);
  });
});
