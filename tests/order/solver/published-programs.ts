// Tests: integer programs whose best solution is published, or known from trying all, for whatever solves programs.
import type { Column, IntegerProgram, Row } from '../../../src/order/solver/integer-program.js';

export const whole = (cost: number, upper: number): Column => ({ cost, lower: 0, upper, integer: true });

export const atMost = (upper: number, coefficients: readonly number[]): Row => ({
  lower: Number.NEGATIVE_INFINITY,
  upper,
  terms: coefficients.flatMap((one, column): [number, number][] => (one === 0 ? [] : [[column, one]])),
});

export const atLeast = (lower: number, coefficients: readonly number[]): Row => ({
  ...atMost(Number.POSITIVE_INFINITY, coefficients),
  lower,
});

const weights = [23, 31, 29, 44, 53, 38, 63, 85, 89, 82];
const profits = [92, 57, 49, 68, 60, 43, 67, 84, 87, 72];

/** Over 1..14 at one price: A {1,8}, B {2,3,9,10}, C {4..7,11..14}, R1 {1..7}, R2 {8..14}. */
const sets = [
  [1, 8],
  [2, 3, 9, 10],
  [4, 5, 6, 7, 11, 12, 13, 14],
  [1, 2, 3, 4, 5, 6, 7],
  [8, 9, 10, 11, 12, 13, 14],
];
const members = Array.from({ length: 14 }, (_, index) => index + 1);

interface Known {
  readonly name: string;
  readonly program: IntegerProgram;
  readonly values: readonly number[];
  readonly cost: number;
}

export const published: readonly Known[] = [
  {
    name: 'knapsack P01 (Burkardt, KNAPSACK_01): capacity 165, best profit 309',
    program: { columns: profits.map((profit) => whole(-profit, 1)), rows: [atMost(165, weights)] },
    values: [1, 1, 1, 1, 0, 1, 0, 0, 0, 0],
    cost: -309,
  },
];

/** Every choice of sets tried: no single one holds all fourteen. */
export const tried: readonly Known[] = [
  {
    name: 'a set cover on which taking the largest set first fails: 2 sets, not 3',
    program: {
      columns: sets.map(() => whole(1, 1)),
      rows: members.map((member) =>
        atLeast(
          1,
          sets.map((set) => (set.includes(member) ? 1 : 0)),
        ),
      ),
    },
    values: [0, 0, 0, 1, 1],
    cost: 2,
  },
];
