// Pots without a shop, by hand. Usable: 0.94 of a pot, 0.6 of a can.
import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import type { ShelfPot } from '../../src/model/stock.js';
import { listAlike } from '../../src/summary/list-alike.js';
import { sumOrder } from '../../src/summary/sum-order.js';
import { smallOrder, smallStock } from '../report/a-small-shelf.js';

const nettle = smallStock.find(({ paint }) => paint === 'Nettle coat');
const [own] = nettle?.pots ?? [];
if (nettle === undefined || own === undefined) throw new Error('the small shelf has no nettle coat');
const pot = (more: Partial<ShelfPot>): ShelfPot => ({ ...own, ...more });
const older = pot({ row: 3, sizeMl: 12, priceMinor: 310 });
const newer = pot({ row: 4, sizeMl: 17, priceMinor: 295 });
const gift = pot({ row: 5, sizeMl: 20 });

const shelfOf = (...pots: readonly ShelfPot[]) => ({
  stock: [{ ...nettle, pots }],
  paints: new Map([
    ['Nettle coat', { kind: 'colour' as const }],
    ['Mill primer', { kind: 'primer' as const }],
    ['Oar varnish', { kind: 'varnish' as const }],
  ]),
  assumptions: registry,
  asLikely: [],
});

describe('a paint that was ever owned', () => {
  it.each([
    // 17 x 0.94 = 15.98.
    { pots: [older, newer], ml: 15.98, sizeMl: 17, count: 1, priceMinor: 295 },
    { pots: [older, newer], ml: 15.99, sizeMl: 17, count: 2, priceMinor: 295 },
    // 12 x 0.94 = 11.28: three of it are 33.84. What came for nothing tells no price.
    { pots: [older, gift], ml: 30, sizeMl: 12, count: 3, priceMinor: 310 },
    // 20 x 0.94 = 18.8.
    { pots: [gift], ml: 30, sizeMl: 20, count: 2, priceMinor: undefined },
  ])('$ml ml take $count of $sizeMl ml', ({ pots, ml, ...expected }) => {
    const [found] = listAlike([{ paint: 'Nettle coat', ml }], shelfOf(...pots));
    const same = { paint: 'Nettle coat', ml, container: 'dropper', isOwned: true, isAsLikely: false };
    expect(found).toEqual({ ...same, ...expected });
  });
});

// The army's 3 ml take one pot of 15.98; what of it is left holds 12.98 ml for the shelf.
it.each([
  [12.98, []],
  [12.99, [1]],
  [28.97, [2]],
])('with one pot taken for 3 ml, %d ml more take %j', (ml, counts) => {
  const taken = listAlike([{ paint: 'Nettle coat', ml: 3 }], shelfOf(newer));
  const shelf = { ...shelfOf(newer), taken };
  expect(listAlike([{ paint: 'Nettle coat', ml }], shelf).map(({ count }) => count)).toEqual(counts);
});

describe('a paint never owned', () => {
  it.each([
    ['Nettle coat', 16, { sizeMl: 17, container: 'pot', count: 2 }],
    // 400 x 0.6 = 240.
    ['Mill primer', 240, { sizeMl: 400, container: 'can', count: 1 }],
    ['Oar varnish', 241, { sizeMl: 400, container: 'can', count: 2 }],
  ])('%s: %d ml', (paint, ml, expected) => {
    const [found] = listAlike([{ paint, ml }], { ...shelfOf(), stock: [] });
    const same = { paint, ml, priceMinor: undefined, isOwned: false, isAsLikely: false };
    expect(found).toEqual({ ...same, ...expected });
  });

  it('is known to be taken as likely', () => {
    const unmet = [
      { paint: 'Nettle coat', ml: 1 },
      { paint: 'Mill primer', ml: 1 },
    ];
    const alike = listAlike(unmet, { ...shelfOf(), asLikely: ['Mill primer'] });
    expect(alike.map(({ isAsLikely }) => isAsLikely)).toEqual([false, true]);
  });
});

it('costs as often what was last paid, at least so much where some have no price', () => {
  const costOf = (...unmet: readonly { paint: string; ml: number }[]) =>
    sumOrder({ ...smallOrder, unmet }, shelfOf(newer)).alikeCost;
  expect(costOf()).toEqual({ pots: 0, minor: 0, atLeast: false });
  expect(costOf({ paint: 'Nettle coat', ml: 30 })).toEqual({ pots: 2, minor: 590, atLeast: false });
  expect(costOf({ paint: 'Nettle coat', ml: 30 }, { paint: 'Mill primer', ml: 1 })).toEqual({
    pots: 3,
    minor: 590,
    atLeast: true,
  });
});
