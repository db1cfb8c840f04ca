// Several armies on one shelf, as a painter types it.
import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { makeArmies } from '../problems/army-cases.js';
import { writeSheets } from '../problems/problem-case.js';
import { makeFolder, runHalfpot } from './run-halfpot.js';

const root = makeFolder();
makeArmies(root, {
  north: {
    'settings.csv': 'name,value\nshelf,../shelf\n',
    'pots.csv': 'paint,size ml,left\nbrick red,17,empty\nearth wash,24,empty\n',
  },
  south: { 'pots.csv': 'paint,size ml,left\nbrick red,12,empty\n' },
});
mkdirSync(join(root, 'shelf'));
writeSheets(join(root, 'shelf'), {
  'pots.csv': 'paint,size ml,left\nearth wash,24,empty\n',
  'offers.csv': 'shop,offer,price,paint,size ml\nQuay,red,3,brick red,17\nQuay,wash,4,earth wash,24\n',
  'shops.csv': 'shop,postage\nQuay,5\n',
});
const plan = (...args: readonly string[]) =>
  runHalfpot(['plan', ...args, '--date', '2026-11-28'], { cwd: root });

describe('halfpot plan north south', () => {
  it('places one order, whose cash the armies share to the cent', () => {
    const run = plan('south', 'north', '--buy', 'likely', '--json');
    expect(run.code).toBe(0);
    const { armies, order, units } = JSON.parse(run.out);
    expect(armies.map(({ army, figures }: { army: string; figures: number }) => [army, figures])).toEqual([
      ['south', 5],
      ['north', 20],
    ]);
    const cents = armies.map(({ cash }: { cash: string }) => Math.round(Number(cash) * 100));
    expect(Math.min(...cents)).toBeGreaterThan(0);
    expect(cents[0] + cents[1]).toBe(Math.round(Number(order.total) * 100));
    expect(units.map(({ army }: { army: string }) => army)).toEqual(['south', 'north']);
  });

  it('writes nothing among the sheets of an army, nor on the shelf that a setting names', () => {
    for (const folder of ['south', 'shelf']) {
      const run = plan('north', 'south', '--out', folder);
      expect(run.code).toBe(2);
      expect(run.err).toContain('is where your sheets are. Name another folder with --out.');
      expect(existsSync(join(root, folder, 'plan.json'))).toBe(false);
    }
  });

  it('takes each army, and a shelf, once', () => {
    const army = plan('north', './north');
    expect([army.code, army.err]).toEqual([2, 'halfpot: ./north is named twice. Name each army once.\n']);
    const shelf = plan('north', '--shelf', 'shelf', '--shelf', 'shelf');
    expect([shelf.code, shelf.err.includes('It is given twice, also as "shelf".')]).toEqual([2, true]);
  });

  it('sees the order that was written down on the shelf', () => {
    expect(plan('north', 'south', '--out', 'out').code).toBe(0);
    const day = ['--date', '2026-11-28'];
    expect(runHalfpot(['bought', 'shelf', 'out/reorder.csv', ...day], { cwd: root }).code).toBe(0);
    const { money, paints } = JSON.parse(plan('north', 'south', '--json').out);
    // Both pots, 3 and 4, are on their way; their postage of 5 is spent.
    expect(money.spent).toMatchObject([{ month: '2026-11', shop: 'Quay', cash: '12.00' }]);
    expect(money.onTheWay).toBe('7.000000');
    const pots = paints.flatMap((one: { pots: { sheet: string; ordered: boolean }[] }) => one.pots);
    expect(pots.some((pot: { sheet: string; ordered: boolean }) => pot.sheet === 'log' && pot.ordered)).toBe(
      true,
    );
  });
});
