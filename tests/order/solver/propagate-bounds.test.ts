import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Column, Row } from '../../../src/order/solver/integer-program.js';
import { propagateBounds } from '../../../src/order/solver/propagate-bounds.js';
import { scaleRow } from '../../../src/order/solver/sparse-rows.js';
import { drawProgram } from './draw-program.js';
import { atLeast, atMost } from './published-programs.js';

/** The bounds after the rows, and how many of these still ask for anything; undefined where nothing fits. */
function close(
  rows: readonly Row[],
  lower: readonly number[],
  upper: readonly number[],
  areWhole?: boolean[],
) {
  const bounds = { lower: Float64Array.from(lower), upper: Float64Array.from(upper) };
  const asking = propagateBounds(rows.map(scaleRow), areWhole ?? lower.map(() => true), bounds);
  return asking === undefined ? undefined : { asking, lower: [...bounds.lower], upper: [...bounds.upper] };
}

describe('bounds, by hand', () => {
  it('nothing is left of a shop that is closed, and a shop is open where a pot is held', () => {
    // 3 used - pots >= 0.
    const shop = [atLeast(0, [3, -1])];
    expect(close(shop, [0, 0], [0, 3])).toEqual({ asking: 1, lower: [0, 0], upper: [0, 0] });
    expect(close(shop, [0, 1], [1, 3])).toEqual({ asking: 1, lower: [1, 1], upper: [1, 3] });
    expect(close(shop, [1, 0], [1, 3])).toEqual({ asking: 0, lower: [1, 0], upper: [1, 3] });
    expect(close(shop, [0, 1], [0, 3])).toBeUndefined();
  });

  it('a need that one pot of 16 ml does not cover takes two of 12 ml beside it', () => {
    // 16 x + 12 y >= 40 with one x at the most: 24 ml are left to y.
    expect(close([atLeast(40, [16, 12])], [0, 0], [1, 9])).toEqual({
      ...{ asking: 1, lower: [0, 2], upper: [1, 9] },
    });
    expect(close([atLeast(40, [16, 12])], [0, 0], [1, 1])).toBeUndefined();
  });

  it('a sum of money leaves three pots of 290 and one of 395', () => {
    expect(close([atMost(1000, [290, 395])], [0, 0], [9, 9])).toEqual({
      ...{ asking: 1, lower: [0, 0], upper: [3, 2] },
    });
    expect(close([atMost(1000, [290, 395])], [0, 1], [9, 9])?.upper).toEqual([2, 2]);
  });

  it('a column that a row does not count stays as it is', () => {
    const free = { ...atMost(250, [300]), terms: [[0, 300] as const, [1, 0] as const] };
    expect(close([free], [0, 0], [2, 1])).toMatchObject({ lower: [0, 0], upper: [0, 1] });
  });

  it('what need not be whole stays as it is', () => {
    expect(close([atMost(10, [4, 4])], [0, 0], [9, 9], [false, true])).toMatchObject({ upper: [9, 2] });
  });
});

/** Every whole point between the bounds. */
function pointsOf(columns: readonly Column[]): number[][] {
  return columns.reduce<number[][]>(
    (points, { lower, upper }) =>
      points.flatMap((point) =>
        Array.from({ length: upper - lower + 1 }, (_, more) => [...point, lower + more]),
      ),
    [[]],
  );
}

it('no whole point that keeps to all rows is left outside, and none within where it says that nothing fits', () => {
  let [closed, nothing] = [0, 0];
  fc.assert(
    fc.property(drawProgram({ isWhole: true, mostColumns: 4 }), ({ columns, rows }) => {
      const [lower, upper] = [columns.map((one) => one.lower), columns.map((one) => one.upper)];
      const left = close(rows, lower, upper);
      const fits = pointsOf(columns).filter((point) =>
        rows.every(({ terms, ...row }) => {
          const sum = terms.reduce((all, [column, one]) => all + one * (point[column] ?? 0), 0);
          return sum >= row.lower - 1e-9 && sum <= row.upper + 1e-9;
        }),
      );
      if (left === undefined) {
        nothing++;
        expect(fits).toEqual([]);
        return;
      }
      closed += Number(`${left.lower}${left.upper}` !== `${lower}${upper}`);
      for (const point of fits) {
        for (const [at, value] of point.entries()) {
          expect(left.lower[at]).toBeLessThanOrEqual(value);
          expect(left.upper[at]).toBeGreaterThanOrEqual(value);
        }
      }
    }),
    { numRuns: 3000 },
  );
  expect(closed).toBeGreaterThan(100);
  expect(nothing).toBeGreaterThan(100);
});
