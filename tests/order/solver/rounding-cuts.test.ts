import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Row } from '../../../src/order/solver/integer-program.js';
import { roundingCuts } from '../../../src/order/solver/rounding-cuts.js';
import { atLeast } from './published-programs.js';

const sumOf = ({ terms }: Row, values: readonly number[]): number =>
  terms.reduce((sum, [column, coefficient]) => sum + coefficient * (values[column] ?? 0), 0);

describe('rounding cuts', () => {
  it('say that 20 ml take two pots of 16 ml', () => {
    // 16 x >= 20, divided by 16: x >= 1.25, so x >= 2.
    const rows = roundingCuts(atLeast(20, [16]));
    expect(rows).toEqual([{ lower: 2, upper: Number.POSITIVE_INFINITY, terms: [[0, 1]] }]);
  });

  it('weigh smaller pots by their fraction', () => {
    // 16 x + 12 y >= 20. By 16: b = 1.25, f = 0.25; 12/16 = 0.75, min(1, 0.75 / 0.25) = 1: x + y >= 2.
    // By 12: b = 5/3, f = 2/3; 16/12 = 1 + 1/3, and 1/3 over 2/3 is 0.5: 1.5 x + y >= 2.
    const rows = roundingCuts(atLeast(20, [16, 12]));
    expect(rows.map(({ lower, terms }) => [lower, ...terms.map(([, coefficient]) => coefficient)])).toEqual([
      [2, 1, 1],
      [2, expect.closeTo(1.5, 12), 1],
    ]);
  });

  it('add nothing to rows that are whole already', () => {
    expect(roundingCuts(atLeast(32, [16]))).toEqual([]);
  });

  it('are kept by every whole solution of the row', () => {
    const coefficients = fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(
        coefficients,
        fc.integer({ min: 1, max: 2000 }),
        fc.array(fc.nat(6), { minLength: 4, maxLength: 4 }),
        (tenths, lower, values) => {
          const row = atLeast(
            lower / 10,
            tenths.map((tenth) => tenth / 10),
          );
          fc.pre(sumOf(row, values) >= row.lower);
          const rounded = roundingCuts(row);
          return rounded.every((one) => sumOf(one, values) >= one.lower - 1e-9);
        },
      ),
      { numRuns: 2000 },
    );
  });
});
