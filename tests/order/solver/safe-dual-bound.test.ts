import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { IntegerProgram } from '../../../src/order/solver/integer-program.js';
import { SafeDualBound } from '../../../src/order/solver/safe-dual-bound.js';
import { scaleRow } from '../../../src/order/solver/sparse-rows.js';
import { drawProgram } from './draw-program.js';
import { atLeast, whole } from './published-programs.js';

/** The bound by some weights of the rows, as scaled. */
const boundOf = (...given: Parameters<typeof sumUp>): number => sumUp(...given).sum;

function sumUp({ columns, rows }: Pick<IntegerProgram, 'columns' | 'rows'>, weights: readonly number[]) {
  const sparse = rows.map(scaleRow);
  const unknowns = [...columns, ...sparse];
  const bounds = {
    low: Float64Array.from(unknowns, ({ lower }) => lower),
    high: Float64Array.from(unknowns, ({ upper }) => upper),
  };
  const bound = new SafeDualBound(
    Float64Array.from(columns, ({ cost }) => cost),
    sparse,
    bounds,
    { touched: 0 },
  );
  bound.begin();
  for (const row of rows.keys()) bound.add(row, weights[row] ?? 0);
  return { bound, sum: bound.end() };
}

describe('the safe dual bound', () => {
  it('by hand: 290 x + 495 y for 12 x + 24 y >= 50, up to nine of each', () => {
    // 495 / 24 = 20.625 for a ml (of the row as scaled, more by as much) leaves 290 - 247.5 = 42.5 of x and
    // nothing of y, and 50 ml are worth 1031.25. Without any weight nothing needs to be bought at all.
    const program = { columns: [whole(290, 9), whole(495, 9)], rows: [atLeast(50, [12, 24])] };
    const scale = (scaleRow(program.rows[0] ?? atLeast(0, [])).coefficients[1] ?? 0) / 24;
    expect(boundOf(program, [20.625 / scale])).toBeCloseTo(1031.25, 9);
    expect(boundOf(program, [0])).toBe(0);
    // Twice the weight is worth less than nothing: 50 x 41.25 less nine times what 12 and 24 ml then exceed their price by.
    expect(boundOf(program, [41.25 / scale])).toBeCloseTo(
      50 * 41.25 - 9 * (12 * 41.25 - 290) - 9 * (24 * 41.25 - 495),
      9,
    );
  });

  it('is never above the cost of anything that fits, whatever the multipliers', () => {
    const weights = fc.array(fc.double({ min: -1e4, max: 1e4, noNaN: true }), { minLength: 8, maxLength: 8 });
    const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 7, maxLength: 7 });
    fc.assert(
      fc.property(
        drawProgram({ isWhole: false, mostColumns: 7 }),
        weights,
        shares,
        (program, weighed, share) => {
          const values = program.columns.map(
            ({ lower, upper }, at) => lower + (share[at] ?? 0) * (upper - lower),
          );
          const sums = program.rows.map(({ terms }) =>
            terms.reduce((sum, [column, one]) => sum + one * (values[column] ?? 0), 0),
          );
          // Rows are drawn anew around the values, so that these fit: each keeps the side on which it was bounded.
          const rows = program.rows.map((row, at) => ({
            ...row,
            lower: Math.min(row.lower, sums[at] ?? 0),
            upper: Math.max(row.upper, sums[at] ?? 0),
          }));
          const cost = program.columns.reduce((sum, column, at) => sum + column.cost * (values[at] ?? 0), 0);
          const bound = boundOf({ ...program, rows }, weighed);
          expect(bound).toBeLessThanOrEqual(cost + 1e-6);
        },
      ),
      { numRuns: 2000 },
    );
  });

  it('leaves a multiplier at 0 that would need an infinite bound', () => {
    const program = { columns: [whole(290, 9)], rows: [atLeast(50, [12])] };
    // A row without an upper bound can't be worth anything downwards.
    expect(boundOf(program, [-5])).toBe(boundOf(program, [0]));
  });

  it('fixes by reduced costs: moves bounds to where nothing beyond them is as cheap as a cutoff, by hand', () => {
    // As above: 50 ml are worth 1031.25, and each x adds 42.5 to that. Under 1280 there is room for 5.85 of x.
    const program = { columns: [whole(290, 9), whole(495, 9)], rows: [atLeast(50, [12, 24])] };
    const scale = (scaleRow(program.rows[0] ?? atLeast(0, [])).coefficients[1] ?? 0) / 24;
    const { bound } = sumUp(program, [20.625 / scale]);
    const bounds = { lower: Float64Array.of(0, 0), upper: Float64Array.of(9, 9) };
    bound.fixByReducedCosts([true, true], 1280, bounds);
    expect(bounds).toEqual({ lower: Float64Array.of(0, 0), upper: Float64Array.of(5, 9) });
    // What need not be whole stays as it is; and what gains by being bought is held from below.
    bound.fixByReducedCosts([false, false], 1100, bounds);
    expect(bounds.upper[0]).toBe(5);
    const gains = sumUp({ columns: [whole(-100, 9)], rows: [] }, []);
    expect(gains.sum).toBe(-900);
    gains.bound.fixByReducedCosts([true], -650, bounds);
    expect(bounds.lower[0]).toBe(7);
  });

  it('moves no bound past whole values that cost no more than the cutoff', () => {
    const weights = fc.array(fc.double({ min: -500, max: 500, noNaN: true }), {
      minLength: 8,
      maxLength: 8,
    });
    let moved = 0;
    fc.assert(
      fc.property(
        drawProgram({ isWhole: true, mostColumns: 6 }),
        weights,
        fc.array(fc.nat(4), { minLength: 6, maxLength: 6 }),
        (program, weighed, more) => {
          const { columns } = program;
          const values = columns.map(({ lower, upper }, at) => Math.min(upper, lower + (more[at] ?? 0)));
          // Rows are drawn anew around the values, so that these fit.
          const rows = program.rows.map((row) => {
            const sum = row.terms.reduce((all, [column, one]) => all + one * (values[column] ?? 0), 0);
            return { ...row, lower: Math.min(row.lower, sum), upper: Math.max(row.upper, sum) };
          });
          const cost = columns.reduce((sum, column, at) => sum + column.cost * (values[at] ?? 0), 0);
          const { bound } = sumUp({ columns, rows }, weighed);
          const bounds = {
            lower: Float64Array.from(columns, ({ lower }) => lower),
            upper: Float64Array.from(columns, ({ upper }) => upper),
          };
          bound.fixByReducedCosts(
            columns.map(() => true),
            cost + 1e-4,
            bounds,
          );
          for (const [at, value] of values.entries()) {
            expect(bounds.lower[at]).toBeLessThanOrEqual(value);
            expect(bounds.upper[at]).toBeGreaterThanOrEqual(value);
            moved += Number(
              bounds.upper[at] !== columns[at]?.upper || bounds.lower[at] !== columns[at]?.lower,
            );
          }
        },
      ),
      { numRuns: 2000 },
    );
    expect(moved).toBeGreaterThan(100);
  });
});
