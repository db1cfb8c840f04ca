// Two armies of the small plan, in cents: ten wardens in each, 370 of cash each; the ram, which asks for none, goes with the second.
import { describe, expect, it } from 'vitest';
import { sumArmies } from '../../src/summary/sum-armies.js';
import { smallCosts } from '../report/a-small-army.js';
import { smallStock } from '../report/a-small-shelf.js';

const armies = ['Reed', 'Lock', 'Lock'];
const units = smallCosts.units.map((one, at) => ({
  ...one,
  unit: { ...one.unit, army: armies[at] ?? '', priority: at === 0 ? 9 : at },
}));

describe('each army', () => {
  const [lock, reed] = sumArmies({ costs: { units }, stock: smallStock });

  it('stands in the order of painting, with its own units', () => {
    expect([lock?.army, lock?.units, lock?.figures]).toEqual(['Lock', 2, 11]);
    expect([reed?.army, reed?.units, reed?.figures]).toEqual(['Reed', 1, 10]);
  });

  it('has its share of cash and of cost: 435.5, and 435.5 + 39.3', () => {
    expect([lock?.cashMinor, reed?.cashMinor]).toEqual([370, 370]);
    expect(reed?.whole.exactMinor.toNumber()).toBeCloseTo(435.5, 9);
    expect(lock?.whole.exactMinor.toNumber()).toBeCloseTo(474.8, 9);
    expect(lock?.remaining.exactMinor.toNumber()).toBeCloseTo(438.8, 9);
  });

  it('names the short pots that its own work needs', () => {
    const short = smallStock.filter(({ toBuyMl }) => toBuyMl > 0).map(({ paint }) => paint);
    expect(short.length).toBeGreaterThan(0);
    expect(lock?.short).toEqual(short);
    const wardens = new Set(smallCosts.units[0]?.job.remaining.map(({ paint }) => paint));
    expect(reed?.short).toEqual(short.filter((paint) => wardens.has(paint)));
  });
});

it('of one army alone nothing is told', () => {
  expect(sumArmies({ costs: smallCosts, stock: smallStock })).toEqual([]);
});
