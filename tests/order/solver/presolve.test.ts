import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Row } from '../../../src/order/solver/integer-program.js';
import { presolve } from '../../../src/order/solver/presolve.js';
import { drawProgram } from './draw-program.js';
import { atLeast, whole } from './published-programs.js';

const bounds = (lower: readonly number[], upper: readonly number[]) => ({
  lower: Float64Array.from(lower),
  upper: Float64Array.from(upper),
});

const keeps = ({ lower, upper, terms }: Row, values: ArrayLike<number>): boolean => {
  const sum = terms.reduce((all, [column, one]) => all + one * (values[column] ?? 0), 0);
  return sum >= lower - 1e-6 && sum <= upper + 1e-6;
};

describe('a smaller program, by hand', () => {
  it('two pots are bought, a third size is not to be had: the rest is what one size has to cover', () => {
    // 50 ml of 12 (290), 24 (495) and 60 (990) ml; two of 24 held, none of 60: 2 ml are missing, which any pot covers.
    const columns = [whole(290, 9), whole(495, 9), whole(990, 9)];
    const small = presolve({ columns, rows: [atLeast(50, [12, 24, 60])] }, bounds([0, 2, 0], [9, 9, 0]));
    expect(small).toMatchObject({
      columns: [
        { cost: 290, lower: 0, upper: 9, integer: true },
        { cost: 495, lower: 0, upper: 7, integer: true },
      ],
      rows: [atLeast(2, [2, 2])],
      baseCost: 990,
    });
    expect([...small.postsolve([1, 0])]).toEqual([1, 2, 0]);
  });

  it('a row that holds whatever the others do is left out', () => {
    // A shop that is bought from: 3 used - pots >= 0 with used = 1.
    const columns = [whole(395, 1), whole(290, 3)];
    const small = presolve({ columns, rows: [atLeast(0, [3, -1])] }, bounds([1, 0], [1, 3]));
    expect(small).toMatchObject({ rows: [], baseCost: 395 });
  });

  it('a rest that only rounding left asks for nothing more', () => {
    // 97 x 16.32 + 2 x 32.64 is 1648.3200000000002 to a computer that adds them up one by one.
    const columns = [whole(295, 99), whole(1450, 9)];
    const rows = [atLeast(97 * 16.32 + 2 * 32.64 + 3e-13, [16.32, 32.64])];
    expect(presolve({ columns, rows }, bounds([97, 2], [99, 9])).rows).toEqual([]);
  });
});

it('the smaller program has the same whole points at the same costs', () => {
  let [fitting, smaller] = [0, 0];
  fc.assert(
    fc.property(
      drawProgram({ isWhole: true, mostColumns: 6 }),
      fc.array(fc.nat(4), { minLength: 12, maxLength: 12 }),
      fc.array(fc.nat(4), { minLength: 6, maxLength: 6 }),
      (program, cuts, more) => {
        const { columns, rows } = program;
        const lower = columns.map((one, at) => Math.min(one.upper, one.lower + (cuts[at] ?? 0)));
        const upper = columns.map((one, at) => Math.max(lower[at] ?? 0, one.upper - (cuts[6 + at] ?? 0)));
        const small = presolve(program, bounds(lower, upper));
        const values = small.columns.map((column, at) => Math.min(column.upper, more[at] ?? 0));
        const all = small.postsolve(values);
        expect([...all].every((value, at) => value >= (lower[at] ?? 0) && value <= (upper[at] ?? 0))).toBe(
          true,
        );
        const isKept = rows.every((row) => keeps(row, all));
        expect(small.rows.every((row) => keeps(row, values))).toBe(isKept);
        const costOf = (of: readonly { cost: number }[], at: ArrayLike<number>) =>
          of.reduce((sum, { cost }, column) => sum + cost * (at[column] ?? 0), 0);
        expect(small.baseCost + costOf(small.columns, values)).toBe(costOf(columns, all));
        fitting += Number(isKept && rows.length > 0);
        smaller += Number(small.columns.length < columns.length && small.columns.length > 0);
      },
    ),
    { numRuns: 3000 },
  );
  expect(fitting).toBeGreaterThan(100);
  expect(smaller).toBeGreaterThan(500);
});
