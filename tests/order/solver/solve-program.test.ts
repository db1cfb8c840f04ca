import { describe, expect, it } from 'vitest';
import type { IntegerProgram, Row } from '../../../src/order/solver/integer-program.js';
import { solveProgram } from '../../../src/order/solver/solve-program.js';

const limits = { nodes: 1000, seconds: 10 };
const atMost = (upper: number, coefficients: readonly number[]): Row => ({
  lower: Number.NEGATIVE_INFINITY,
  upper,
  terms: coefficients.map((coefficient, column) => [column, coefficient] as const),
});
const whole = (cost: number, upper: number) => ({ cost, lower: 0, upper, integer: true });

describe('published instances', () => {
  it('knapsack P01 (Burkardt, KNAPSACK_01): capacity 165, best profit 309', async () => {
    const weights = [23, 31, 29, 44, 53, 38, 63, 85, 89, 82];
    const profits = [92, 57, 49, 68, 60, 43, 67, 84, 87, 72];
    const program = { columns: profits.map((profit) => whole(-profit, 1)), rows: [atMost(165, weights)] };
    const solution = await solveProgram(program, limits);
    expect(solution).toMatchObject({ state: 'proved', bound: expect.closeTo(-309, 6) });
    if (!('values' in solution)) throw new Error('no values');
    expect(solution.values).toEqual([1, 1, 1, 1, 0, 1, 0, 0, 0, 0]);
  });

  it('a set cover on which taking the largest set first fails: 2 sets, not 3', async () => {
    // Sets over 1..14 at one price: A {1,8}, B {2,3,9,10}, C {4..7,11..14}, R1 {1..7}, R2 {8..14}.
    const sets = [
      [1, 8],
      [2, 3, 9, 10],
      [4, 5, 6, 7, 11, 12, 13, 14],
      [1, 2, 3, 4, 5, 6, 7],
      [8, 9, 10, 11, 12, 13, 14],
    ];
    const rows = Array.from(
      { length: 14 },
      (_, index): Row => ({
        lower: 1,
        upper: Number.POSITIVE_INFINITY,
        terms: sets.flatMap((set, column): [number, number][] =>
          set.includes(index + 1) ? [[column, 1]] : [],
        ),
      }),
    );
    const solution = await solveProgram({ columns: sets.map(() => whole(1, 1)), rows }, limits);
    expect(solution).toMatchObject({ state: 'proved', values: [0, 0, 0, 1, 1] });
  });
});

describe('what a solution is worth', () => {
  const apart: IntegerProgram = { columns: [whole(1, 1)], rows: [atMost(-1, [1])] };

  it('says when nothing fits', async () => {
    expect(await solveProgram(apart, limits)).toMatchObject({ state: 'impossible' });
  });

  it('does not take a gap of a ten thousandth for proof', async () => {
    // 100000 against 100001 differ by 1e-5, within the usual relative gap of 1e-4: the cheaper one must be found.
    const program: IntegerProgram = {
      columns: [whole(100_001, 1), whole(100_000, 1)],
      rows: [
        {
          lower: 1,
          upper: Number.POSITIVE_INFINITY,
          terms: [
            [0, 1],
            [1, 1],
          ],
        },
      ],
      start: [1, 0],
    };
    expect(await solveProgram(program, limits)).toMatchObject({ state: 'proved', values: [0, 1] });
  });

  it('gives the start back where no node may be searched, and does not call it proved', async () => {
    const columns = Array.from({ length: 40 }, (_, index) => whole(100 + ((index * 37) % 61), 3));
    const rows = Array.from(
      { length: 30 },
      (_, row): Row => ({
        lower: 7 + (row % 5),
        upper: Number.POSITIVE_INFINITY,
        terms: columns.flatMap((_, column): [number, number][] =>
          (column * 7 + row * 3) % 5 < 2 ? [[column, 1 + ((column + row) % 3)]] : [],
        ),
      }),
    );
    const start = columns.map(() => 3);
    const solution = await solveProgram({ columns, rows, start }, { nodes: 0, seconds: 10 });
    expect(['not proved', 'proved']).toContain(solution.state);
    if (!('values' in solution)) throw new Error('no values');
    const cost = solution.values.reduce((sum, value, index) => sum + value * (columns[index]?.cost ?? 0), 0);
    if (solution.state === 'not proved') expect(solution.bound).toBeLessThan(cost);
    expect(cost).toBeLessThanOrEqual(columns.reduce((sum, column) => sum + 3 * column.cost, 0));
  });
});
