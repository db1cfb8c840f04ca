// Several armies read as one: whose each unit is, in what order, and what they share. Real files through the real readers.
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { registry } from '../../../src/assumptions/registry.js';
import { wordProblem } from '../../../src/problems/word-problem.js';
import { readArmies, readArmyTables } from '../../../src/sheets/read-sheets.js';
import { armyCases, makeArmies } from '../../problems/army-cases.js';
import { writeSheets } from '../../problems/problem-case.js';

const known = { assumptions: registry, today: '2026-11-02' };
let dir = '';

beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'halfpot-armies-'));
});
afterEach(() => rmSync(dir, { recursive: true, force: true }));

async function read(names: readonly string[], shelf?: string) {
  const paths = names.map((name) => join(dir, name));
  const { sheets, problems } = await readArmies(paths, known, { shelf: shelf && join(dir, shelf) });
  const pots = sheets?.pots.map(({ paint, sizeMl }) => `${paint} ${sizeMl}`);
  const units = sheets?.army.map(({ unit, army, priority }) => [unit, army, priority]);
  return { sheets, pots, units, says: problems.map((one) => wordProblem(one).replaceAll(`${dir}/`, '')) };
}

describe('two armies', () => {
  it('are one: units in the order of their armies, all pots, names that both write alike once', async () => {
    makeArmies(dir, {});
    const { sheets, pots, units, says } = await read(['south', 'north']);
    expect(says).toEqual([]);
    expect(units).toEqual([
      ['second spears', 'south', 1],
      ['first spears', 'north', 2],
    ]);
    expect(pots).toEqual(['brick red 12', 'brick red 17', 'earth wash 24']);
    expect([...(sheets?.schemes.values() ?? [])].map(({ steps }) => steps.length)).toEqual([2]);
  });

  it('keep the order of their own priorities', async () => {
    makeArmies(dir, {
      north: { 'army.csv': 'unit,figure,count,priority\nlast,spearman,5,9\nfirst,spearman,5,3\n' },
      south: { 'army.csv': 'unit,figure,count,priority\nsouth,spearman,5,1\n' },
    });
    expect((await read(['north', 'south'])).units).toEqual([
      ['last', 'north', 2],
      ['first', 'north', 1],
      ['south', 'south', 3],
    ]);
  });

  it('keep a blank scheme, which is the only one of each', async () => {
    const blue = 'scheme,step,zone,layer,paint\nblue line,1,whole,base coat,brick red\n';
    makeArmies(dir, { south: { 'schemes.csv': blue } });
    const { sheets, says } = await read(['north', 'south']);
    expect(says).toEqual([]);
    expect(sheets?.army.map(({ scheme }) => scheme)).toEqual(['red line', 'blue line']);
  });

  it('with units of one name keep them apart, with their swaps and logs', async () => {
    const log = 'date,paint,unit,step,figures\n2026-10-01,brick red,first spears,1,5\n';
    makeArmies(dir, {
      south: { 'army.csv': 'unit,figure,count\nfirst spears,spearman,5\n', 'log.csv': log },
    });
    const { sheets, units } = await read(['north', 'south']);
    expect(units?.map(([unit]) => unit)).toEqual(['first spears (north)', 'first spears (south)']);
    expect(sheets?.log.map(({ unit }) => unit)).toEqual(['first spears (south)']);
  });
});

describe('model files of one name', () => {
  const facet = (wide: number): string =>
    `solid a\nfacet normal 0 0 1\nouter loop\nvertex 0 0 0\nvertex ${wide} 0 0\nvertex 0 20 30\nendloop\nendfacet\nendsolid a\n`;
  const figures = 'figure,eye mm,model\nspearman,28,spear.stl\n';
  const army = (wide: number) => ({ 'figures.csv': figures, 'spear.stl': facet(wide) });

  it('have to be alike', async () => {
    makeArmies(dir, { north: army(20), south: army(30) });
    const { says } = await read(['north', 'south']);
    expect(says.filter((one) => one.includes('as it is in'))).toEqual([
      'south/spear.stl: "spear.stl" is not as it is in north. Write the same in both, or give one of them another name.',
    ]);
  });

  it('that are alike are one', async () => {
    makeArmies(dir, { north: army(20), south: army(20) });
    const { says } = await read(['north', 'south']);
    expect(says.filter((one) => one.includes('as it is in'))).toEqual([]);
  });
});

describe('a shelf', () => {
  const attic = { 'pots.csv': 'paint,size ml\nEarth Wash,30\n' };

  it('stands in a folder of its own, which a setting names from its sheets, or a flag', async () => {
    makeArmies(dir, { north: { 'settings.csv': 'name,value\nshelf,../attic\n' }, attic });
    const pots = ['Earth Wash 30', 'brick red 17', 'Earth Wash 24', 'brick red 12'];
    expect((await read(['north', 'south'])).pots).toEqual(pots);
    expect((await read(['north', 'south'], 'attic')).pots).toEqual(pots);
    expect((await read(['north'])).pots).toEqual(pots.slice(0, 3));
    expect((await read(['south'], 'attic')).pots).toEqual(['Earth Wash 30', 'brick red 12']);
  });

  it('may be that of one of the armies, which is read once and has the log', async () => {
    const log = 'date,paint,used ml\n2026-11-01,brick red,0.5\n';
    makeArmies(dir, { south: { 'log.csv': log } });
    const { pots, units, says } = await read(['north', 'south'], 'south');
    expect(says).toEqual([]);
    expect(units).toHaveLength(2);
    expect(pots).toEqual(['brick red 17', 'earth wash 24', 'brick red 12']);
    const paths = ['north', 'south'].map((name) => join(dir, name));
    const { home, shelf } = await readArmyTables(paths, { shelf: join(dir, 'south') });
    expect([home?.name, shelf]).toEqual(['south', undefined]);
  });

  it('may have offers alone', async () => {
    makeArmies(dir, {});
    mkdirSync(join(dir, 'quay'));
    writeSheets(join(dir, 'quay'), {
      'offers.csv': 'shop,offer,price,paint,size ml\nQuay,pot,3,brick red,17\n',
    });
    const { sheets, says } = await read(['north', 'south'], 'quay');
    expect(says.filter((one) => one.includes('needed'))).toEqual([]);
    expect(sheets?.offers).toHaveLength(1);
  });
});

describe('problems', () => {
  it.each(armyCases.map((one) => [one.code, one] as const))('%s', async (code, one) => {
    one.make(dir);
    const paths = one.armies.map((name) => join(dir, name));
    const { problems } = await readArmies(paths, known, { shelf: one.shelf && join(dir, one.shelf) });
    const told = problems.filter((problem) => problem.code === code).map(wordProblem);
    expect(told.map((says) => says.replaceAll(`${dir}/`, ''))).toEqual(one.says);
  });
});
