import { describe, expect, it } from 'vitest';
import type { IntegerProgram, Row } from '../../../src/order/solver/integer-program.js';
import { solveProgram } from '../../../src/order/solver/solve-program.js';
import { atMost, published, tried, whole } from './published-programs.js';

const limits = { seconds: 10 };
it.each([...published, ...tried])('known: $name', async ({ program, values, cost }) => {
  const solution = await solveProgram(program, limits);
  expect(solution).toMatchObject({ state: 'proved', values, bound: expect.closeTo(cost, 6) });
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

  it('gives no more than the start where there is hardly time, and does not call it proved', async () => {
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
    const solution = await solveProgram({ columns, rows, start }, { seconds: 0.001 });
    if (solution.state !== 'not proved') throw new Error(`it is ${solution.state}`);
    const cost = solution.values.reduce((sum, value, index) => sum + value * (columns[index]?.cost ?? 0), 0);
    expect(solution.bound).toBeLessThan(cost);
    expect(cost).toBeLessThanOrEqual(columns.reduce((sum, column) => sum + 3 * column.cost, 0));
  });
});
