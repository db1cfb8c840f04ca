import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fourShortSheets, writeSheets } from '../problems/problem-case.js';
import { makeFolder, runHalfpot } from './run-halfpot.js';

const root = makeFolder();
const date = ['--date', '2026-11-01'];
const at = { cwd: root };

function sheetsIn(folder: string, more: Readonly<Record<string, string>> = {}): string {
  mkdirSync(join(root, folder));
  writeSheets(join(root, folder), { ...fourShortSheets, ...more });
  return folder;
}

sheetsIn('mine');
sheetsIn('swiss', { 'settings.csv': 'setting,value\ncurrency,CHF\n' });
mkdirSync(join(root, 'empty'));
runHalfpot(['plan', 'mine', '--out', 'planned', ...date], at);
writeFileSync(
  join(root, 'twice.csv'),
  'scheme,step,zone,layer,paint,coats\nred line,1,whole,base coat,brick red,3\nred line,2,whole,wash,earth wash,1\n',
);

const compare = (...args: readonly string[]) => runHalfpot(['compare', ...args, ...date], at);

describe('halfpot compare', () => {
  it('says what another sheet changes, in 80 columns, and writes a page and its numbers', () => {
    const run = compare('mine', '--with', 'schemes=twice.csv', '--out', 'twice');
    expect([run.code, run.err]).toEqual([0, '']);
    expect(run.out).toContain('A: mine\nB: mine with schemes=twice.csv\n\n');
    // One more coat on each of 20 figures.
    expect(run.out).toMatch(/^Coats to paint +60 +80 +\+20$/m);
    expect(run.out).toMatch(/^brick red +[\d.]+ +[\d.]+ +\+[\d.]+$/m);
    expect(run.out).toContain('  schemes, red line, step 1: coats\n    A: 2\n    B: 3\n');
    expect(run.out).toContain(
      `Written:\n  ${join('twice', 'compare.html')}\n  ${join('twice', 'compare.json')}\n`,
    );
    expect(run.out.split('\n').filter((line) => line.length > 80)).toEqual([]);
    expect(readdirSync(join(root, 'twice')).sort()).toEqual(['compare.html', 'compare.json']);
    const { sums } = JSON.parse(readFileSync(join(root, 'twice', 'compare.json'), 'utf8'));
    expect(sums.at(-1)).toMatchObject({ what: 'coats', a: { value: 60 }, b: { value: 80 }, difference: 20 });
  });

  it('takes a folder that plan has written as it takes its sheets: nothing differs', () => {
    const run = compare('planned', 'mine');
    expect([run.code, run.err]).toEqual([0, '']);
    expect(run.out).toContain('\nNothing differs.\n');
    expect(run.out).toContain(
      '\nNothing in settings, log, army, schemes, figures, pots.\nOffers and shops are not compared:',
    );
    expect(existsSync(join(root, 'halfpot-compare', 'compare.html'))).toBe(true);
    expect(compare('planned', 'planned').out).toContain('\nNothing differs.\n');
  });

  it('names what differs in offers and shops where both are sheets', () => {
    const offers = (price: string) => `shop,offer,price,paint,size ml\nWeir,red,${price},brick red,17\n`;
    sheetsIn('dear', { 'offers.csv': offers('2.95'), 'shops.csv': 'shop,postage\nWeir,3.90\n' });
    writeFileSync(join(root, 'sale.csv'), offers('2.50'));
    writeFileSync(join(root, 'post.csv'), 'shop,postage\nWeir,4.20\n');
    const run = compare('dear', '--with', 'offers=sale.csv', '--with', 'shops=post.csv');
    expect([run.code, run.err]).toEqual([0, '']);
    expect(run.out).toContain(
      'What differs in the sheets\n' +
        '  offers, Weir, red: price\n    A: €2.95\n    B: €2.50\n' +
        '  shops, Weir: postage\n    A: €3.90\n    B: €4.20\n\nWritten:',
    );
  });

  it('tells of two currencies', () => {
    const { code, out } = compare('mine', 'swiss');
    expect(code).toBe(0);
    expect(out).toContain('\nA is in EUR, B in CHF: no difference in money is made.\n');
    expect(out).toMatch(/^Cash now +€0.00 +CHF\s0.00$/m);
  });

  it('shows what is wrong in sheets, and writes nothing', () => {
    writeFileSync(join(root, 'bad.csv'), 'scheme,step,zone,layer,paint\nred line,1,whole,base coat,\n');
    const run = compare('mine', '--with', 'schemes=bad.csv', '--out', 'bad');
    expect([run.code, run.out]).toEqual([1, '']);
    expect(run.err).toBe(
      'error: bad.csv row 2, "paint" (E2): this cell is blank. Write a name, such as brick red.\n1 error\n',
    );
    expect(existsSync(join(root, 'bad'))).toBe(false);
  });
});

describe('what cannot be compared', () => {
  const planFile = (folder: string, text: string): string => {
    mkdirSync(join(root, folder));
    writeFileSync(join(root, folder, 'plan.json'), text);
    return folder;
  };
  planFile('old', '{"version":2}');
  planFile('new', '{"version":99}');
  planFile('torn', '{"version":');
  const remedy = (folder: string) => `Plan its sheets again, or name the sheets instead of ${folder}.`;

  it.each([
    [['mine', 'old'], `${join('old', 'plan.json')} was written by an older Halfpot. ${remedy('old')}`],
    [['new', 'mine'], `${join('new', 'plan.json')} was written by a newer Halfpot. ${remedy('new')}`],
    [['torn', 'mine'], `${join('torn', 'plan.json')} is not a plan, or is damaged. ${remedy('torn')}`],
    [['mine'], 'Compare it with what? Name two, or one and --with schemes=other.csv.'],
    [['mine', 'nowhere'], 'There is no nowhere.'],
    [
      ['mine', 'swiss', '--with', 'schemes=twice.csv'],
      '--with replaces a sheet of the one before it. Name one, not two.',
    ],
    [
      ['planned', '--with', 'schemes=twice.csv'],
      'planned holds a plan and no sheets. Name its sheets, so that --with can replace one.',
    ],
    [
      ['mine', '--with', 'twice.csv'],
      '"twice.csv" names no sheet and file. Write --with as schemes=other.csv.',
    ],
    [
      ['mine', '--with', 'dragons=twice.csv'],
      '"dragons=twice.csv" names no sheet and file. Write --with as schemes=other.csv.',
    ],
    [['mine', '--with', 'schemes=none.csv'], 'There is no none.csv.'],
    [['mine', 'swiss', '--out', 'mine'], 'mine is where your sheets are. Name another folder with --out.'],
  ])('%j is told', (args, says) => {
    expect(compare(...args)).toEqual({ code: 2, out: '', err: `halfpot: ${says}\n` });
  });

  it('a page of that name which is not ours stays', () => {
    mkdirSync(join(root, 'theirs'));
    writeFileSync(join(root, 'theirs', 'compare.html'), '<!doctype html><title>Mine</title>');
    const path = join('theirs', 'compare.html');
    expect(compare('mine', 'swiss', '--out', 'theirs')).toEqual({
      code: 2,
      out: '',
      err:
        `halfpot: ${path} is there already and not of an earlier plan. Name another folder with --out, ` +
        'or move that file away.\n',
    });
  });

  it('a folder with neither sheets nor a plan is told', () => {
    expect(compare('empty', 'mine')).toEqual({
      code: 1,
      out: '',
      err:
        'error: empty: this folder is empty. Put pots.csv, figures.csv, schemes.csv and army.csv into it, or name ' +
        'another folder.\n1 error\n',
    });
  });
});
