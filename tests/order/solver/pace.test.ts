// The solver's work, counted: what it takes, where it stops, and that both repeat.
import { expect, it } from 'vitest';
import type { IntegerProgram } from '../../../src/order/solver/integer-program.js';
import { paceOf } from '../../../src/order/solver/pace.js';
import { solveProgram } from '../../../src/order/solver/solve-program.js';
import { drawFrom } from '../draw-market.mjs';

/** Which of 60 things, each with two weights, are worth the most within two limits (Martello & Toth 1990: a knapsack of two rows). */
function knapsack(seed: number): IntegerProgram {
  const { whole } = drawFrom(seed);
  const things = Array.from({ length: 60 }, () => [whole(20, 99), whole(20, 99)] as const);
  return {
    columns: things.map(([one, other]) => ({
      ...{ cost: -(one + other + whole(0, 9)), lower: 0, upper: 1, integer: true },
    })),
    rows: [0, 1].map((row) => ({
      lower: Number.NEGATIVE_INFINITY,
      upper: 1500,
      terms: things.map((weights, column) => [column, weights[row] as number] as const),
    })),
  };
}

it('seconds are iterations and coefficients', () => {
  const { secondsOf, iterationsIn } = paceOf(knapsack(1));
  // Two rows of 60 coefficients: 120 x 0.00001 before the first, then 0.00025 + 2 x 0.00000003 for each.
  expect(secondsOf(0)).toBeCloseTo(0.0012, 12);
  expect(secondsOf(1000)).toBeCloseTo(0.0012 + 0.25006, 12);
  expect(iterationsIn(0.0012 + 0.25006 + 1e-9)).toBe(1000);
  expect(iterationsIn(0)).toBe(1);
});

it('a relaxation alone counts a fifth of that', () => {
  const { columns, rows } = knapsack(1);
  const { secondsOf } = paceOf({ columns: columns.map((column) => ({ ...column, integer: false })), rows });
  expect(secondsOf(1000)).toBeCloseTo((0.0012 + 0.25006) / 5, 12);
});

it('stops after the same work with the same values, said as no more than was allowed', async () => {
  const program = knapsack(3);
  const seconds = 0.02;
  const [one, other] = [await solveProgram(program, { seconds }), await solveProgram(program, { seconds })];
  expect(one).toMatchObject({ state: 'not proved', seconds });
  expect(other).toEqual(one);
  const whole = await solveProgram(program, { seconds: 60 });
  expect(whole).toMatchObject({ state: 'proved' });
  expect(whole.seconds).toBeGreaterThan(seconds);
});
