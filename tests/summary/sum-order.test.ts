// Orders counted by hand.
import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import type { Order, OrderedPot, OrderLine } from '../../src/model/order.js';
import { sumOrder } from '../../src/summary/sum-order.js';
import { smallOrder, smallPaints, smallRestock, smallStock } from '../report/a-small-shelf.js';

const shelf = {
  stock: smallStock,
  paints: new Map(smallPaints.map((one) => [one.paint, one])),
  assumptions: registry,
  asLikely: [],
};

const [smallLine] = smallOrder.lines;
const [smallPot] = smallLine?.pots ?? [];

/** `count` offers of one pot each, of 10 ml usable. */
function lineOf(count: number, ...covers: readonly number[]): OrderLine {
  if (smallLine === undefined || smallPot === undefined) throw new Error('no line');
  const pots = covers.map(
    (coversMl): OrderedPot => ({ ...smallPot, count, usableMl: 10, coversMl, overMl: count * 10 - coversMl }),
  );
  return { ...smallLine, count, pots };
}

it('counts pots, those of a box each', () => {
  expect([sumOrder(smallOrder, shelf).pots, sumOrder(smallRestock, shelf).pots]).toEqual([1, 2]);
});

describe('offers that could be left out', () => {
  it.each([
    [3, [30], 0],
    [3, [20.1], 0],
    [3, [20], 1],
    [3, [8, 20], 1],
    [3, [0], 3],
    [1, [8.02], 0],
  ])('of %d, of which the needs take %j ml: %d', (count, covers, spare) => {
    const line = lineOf(count, ...covers);
    expect(sumOrder({ ...smallOrder, lines: [line] }, shelf).spare.get(line)).toBe(spare);
  });
});

describe('other ways to buy', () => {
  const waysOf = (changes: Partial<Order>) => sumOrder({ ...smallOrder, ...changes }, shelf).ways;

  it('leave out the order’s own shop at its own price', () => {
    expect(waysOf({})).toEqual([]);
    const dearer = [{ shop: 'The Ferry Steps', totalMinor: 800 }];
    expect(waysOf({ fromOneShop: dearer })).toMatchObject([{ way: 'one shop', extraMinor: 60 }]);
  });

  it('stand with the cheapest first, shops and sets alike', () => {
    const ways = waysOf({
      fromOneShop: [
        { shop: 'The Mill Gate', totalMinor: 990 },
        { shop: 'The Ferry Steps', totalMinor: 740 },
      ],
      passedOver: [{ shop: 'The Mill Gate', offer: 'Marsh box', extraMinor: 120 }],
    });
    expect(ways).toEqual([
      {
        way: 'with set',
        set: { shop: 'The Mill Gate', offer: 'Marsh box' },
        totalMinor: 860,
        extraMinor: 120,
      },
      { way: 'one shop', shop: 'The Mill Gate', totalMinor: 990, extraMinor: 250 },
    ]);
  });
});
