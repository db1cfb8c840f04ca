import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { choosePots } from '../../../src/order/choose-pots.js';
import type { Column, Row } from '../../../src/order/solver/integer-program.js';
import { leastCost, subadditiveCuts } from '../../../src/order/solver/subadditive-cuts.js';
import { atLeast } from './published-programs.js';

const pot = (cost: number, upper = 9): Column => ({ cost, lower: 0, upper, integer: true });
const sumOf = ({ terms }: Row, values: readonly number[]): number =>
  terms.reduce((sum, [column, coefficient]) => sum + coefficient * (values[column] ?? 0), 0);

describe('subadditive cuts, by hand', () => {
  it('50 ml of pots of 12 (290) and 24 (495) cost 1280 at the least', () => {
    // 24 + 24 + 12; five of 12 cost 1450, three of 24 cost 1485. A pot is worth itself, being the cheapest cover of what it holds.
    expect(subadditiveCuts({ columns: [pot(290), pot(495)], rows: [atLeast(50, [12, 24])] })).toEqual([
      {
        lower: 1280,
        upper: Number.POSITIVE_INFINITY,
        terms: [
          [0, 290],
          [1, 495],
        ],
      },
    ]);
  });

  it('what a set holds is worth what its pots would cost', () => {
    // The set of both paints, 24 ml of the first and 12 of the second, is worth one pot of 24 in the first row.
    const columns = [pot(290), pot(495), pot(300), pot(600), pot(700)];
    const rows = [atLeast(50, [12, 24, 0, 0, 24]), atLeast(20, [0, 0, 11, 30, 12])];
    const [first, second] = subadditiveCuts({ columns, rows });
    expect(first?.terms).toContainEqual([4, 495]);
    // 20 ml of pots of 11 (300) and 30 (600): two of 11, or one of 30. The set's 12 ml take as much.
    expect(second).toMatchObject({
      lower: 600,
      terms: [
        [2, 300],
        [3, 600],
        [4, 600],
      ],
    });
  });

  it('one size alone, or sizes of sets only, say nothing that rounding does not', () => {
    expect(subadditiveCuts({ columns: [pot(290), pot(310)], rows: [atLeast(50, [12, 12])] })).toEqual([]);
    const shared = [atLeast(50, [12, 24]), atLeast(20, [12, 12])];
    expect(subadditiveCuts({ columns: [pot(290), pot(495)], rows: shared })).toEqual([]);
    expect(subadditiveCuts({ columns: [pot(0), pot(495)], rows: [atLeast(50, [12, 24])] })).toEqual([]);
  });

  it('a need that is met but for rounding asks for no further pot', () => {
    const [row] = subadditiveCuts({ columns: [pot(290), pot(495)], rows: [atLeast(48 + 1e-9, [12, 24])] });
    expect(row?.lower).toBe(990);
  });
});

const sizes = fc.uniqueArray(fc.integer({ min: 5, max: 300 }), { minLength: 2, maxLength: 4 });
const costs = fc.array(fc.integer({ min: 1, max: 900 }), { minLength: 4, maxLength: 4 });

describe('subadditive cuts', () => {
  it('are kept by every whole solution of the row, whatever else it buys', () => {
    fc.assert(
      fc.property(
        sizes,
        costs,
        fc.integer({ min: 1, max: 3000 }),
        fc.array(fc.nat(9), { minLength: 6, maxLength: 6 }),
        fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 2, maxLength: 2 }),
        (tenths, prices, need, values, ofSets) => {
          // Two further columns are sets: they stand in a second row as well.
          const amounts = [...tenths, ...ofSets].map((tenth) => tenth / 10);
          const columns = amounts.map((_, at) => pot(at < tenths.length ? (prices[at] ?? 1) : 500));
          const row = atLeast(need / 10, amounts);
          const other = atLeast(
            1,
            amounts.map((_, at) => (at < tenths.length ? 0 : 5)),
          );
          const bought = amounts.map((_, at) => values[at] ?? 0);
          fc.pre(sumOf(row, bought) >= row.lower && sumOf(other, bought) >= other.lower);
          for (const one of subadditiveCuts({ columns, rows: [row, other] }))
            expect(sumOf(one, bought)).toBeGreaterThanOrEqual(one.lower);
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('know the cost of covering a need as the choice of pots does', () => {
    fc.assert(
      fc.property(sizes, costs, fc.integer({ min: 1, max: 3000 }), (tenths, prices, need) => {
        const packs = tenths.map((tenth, at) => ({
          ...{ ml: tenth / 10, priceMinor: prices[at] ?? 1, pots: 1, limit: Number.POSITIVE_INFINITY },
        }));
        const known = leastCost(
          need / 10 - 1e-9,
          packs
            .map(({ ml, priceMinor }) => ({ covers: ml, cost: priceMinor }))
            .sort((a, b) => a.cost / a.covers - b.cost / b.covers),
        );
        fc.pre(known !== undefined);
        const counts = choosePots(need / 10, packs) ?? [];
        expect(known).toBe(
          packs.reduce((sum, { priceMinor }, at) => sum + priceMinor * (counts[at] ?? 0), 0),
        );
      }),
      { numRuns: 1000 },
    );
  });

  it('are given up where sizes of nearly one price take too long', () => {
    const alike = Array.from({ length: 8 }, (_, at) => ({ covers: 11 + at / 7, cost: 110 + at * 1.4285 }));
    expect(leastCost(12_345.678, alike)).toBeUndefined();
  });
});
