// Cuts where they are of use: only of rows that cover, only what values violate, and kept by every whole solution.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Row } from '../../../src/order/solver/integer-program.js';
import { openViolatedCuts } from '../../../src/order/solver/violated-cuts.js';
import { atLeast, whole } from './published-programs.js';

const sumOf = ({ terms }: Row, values: ArrayLike<number>): number =>
  terms.reduce((sum, [column, coefficient]) => sum + coefficient * (values[column] ?? 0), 0);
const at = (...values: number[]): Float64Array => Float64Array.from(values);

describe('violated cuts', () => {
  it('by hand: 20 ml of pots of 16 take two, which one and a quarter are not, and three are', () => {
    const cutsAt = openViolatedCuts({ columns: [whole(1, 9)], rows: [atLeast(20, [16])] });
    expect(cutsAt(at(1.25))).toEqual([{ lower: 2, upper: Number.POSITIVE_INFINITY, terms: [[0, 1]] }]);
    expect(cutsAt(at(2))).toEqual([]);
    expect(cutsAt(at(3))).toEqual([]);
  });

  it('of a row the one that is missed by most', () => {
    // 16 x + 12 y >= 20 at (0, 5/3): x + y >= 2 is missed by 1/3 of sqrt 2; 1.5 x + y >= 2 by as much of sqrt 3.25.
    const [cut] = openViolatedCuts({ columns: [whole(1, 9), whole(1, 9)], rows: [atLeast(20, [16, 12])] })(
      at(0, 5 / 3),
    );
    expect([cut?.lower, ...(cut?.terms ?? []).map(([, coefficient]) => coefficient)]).toEqual([2, 1, 1]);
  });

  it('none of rows that are bounded above, take away, count parts, or cost nothing', () => {
    const columns = [whole(1, 9), { ...whole(1, 9), integer: false }, whole(0, 9)];
    const rows = [
      { ...atLeast(20, [16]), upper: 40 },
      { ...atLeast(20, []), terms: [[0, -16] as const] },
      { ...atLeast(20, []), terms: [[1, 16] as const] },
      { ...atLeast(20, []), terms: [[2, 16] as const] },
    ];
    for (const row of rows)
      expect(openViolatedCuts({ columns, rows: [row] })(at(1.25, 1.25, 1.25))).toEqual([]);
  });

  it('are missed by the values they are for, and kept by whole solutions', () => {
    const coefficients = fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 2, maxLength: 4 });
    const each = <Value>(one: fc.Arbitrary<Value>) => fc.array(one, { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(
        coefficients,
        fc.integer({ min: 1, max: 2000 }),
        each(fc.double({ min: 0, max: 6, noNaN: true })),
        each(fc.nat(6)),
        (tenths, lower, fractions, values) => {
          const row = atLeast(
            lower / 10,
            tenths.map((tenth) => tenth / 10),
          );
          const columns = tenths.map((tenth) => whole(1 + (tenth % 7), 6));
          for (const cut of openViolatedCuts({ columns, rows: [row] })(Float64Array.from(fractions))) {
            expect(sumOf(cut, fractions)).toBeLessThan(cut.lower);
            if (sumOf(row, values) >= row.lower)
              expect(sumOf(cut, values)).toBeGreaterThanOrEqual(cut.lower - 1e-6 * Math.abs(cut.lower));
          }
        },
      ),
      { numRuns: 2000 },
    );
  });
});
