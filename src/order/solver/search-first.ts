// Solver: small programs by our own branch and bound; larger ones by a solver. In: a solver. Out: one that does both.

import { branchAndBound } from './branch-and-bound.js';
import type { IntegerProgram, Solution, Solve } from './integer-program.js';

/**
 * Coefficients that a search touches in a second, about, so that its seconds are the same on every machine: measured on
 * 2026-11-27 on two cores, 2e7 before the code is compiled to 1e8 after.
 */
const workPerSecond = 1e8;

/** What takes longer is sooner done by a solver with cuts and heuristics of all kinds; nor longer than half of the time there is. */
const mostSeconds = 0.5;

/**
 * Rows squared times columns, as the work of a relaxation grows: some 100 paints with three offers each. How many are done in
 * their time hangs on shops and sets more than on paints: of drawn markets with four shops nearly all of 30 paints, most of 40,
 * some of 60 (the same day).
 */
const largest = 6e7;

/** Alike, of programs that are sooner searched here than brought to a thread whose code is still to be compiled: up to 30 paints. */
const largestHere = 3e6;

/** Small programs, wherever they are searched. */
export const searchFirst = (solve: Solve): Solve => searchSizes(0, largest, solve);

/** Those that are searched at once, in the thread that asks; and the others, in one that is asked. */
export const searchHere = (solve: Solve): Solve => searchSizes(0, largestHere, solve);
export const searchThere = (solve: Solve): Solve => searchSizes(largestHere, largest, solve);

/**
 * Searches programs of some sizes itself, which spares them the way to the solver and back. What that does not prove in half a second
 * of work, and what has another size, goes on to `solve`, from the incumbent.
 */
function searchSizes(above: number, upTo: number, solve: Solve): Solve {
  return async (program, limits, onProgress) => {
    const size = sizeOf(program);
    if (size <= above || size > upTo) return solve(program, limits, onProgress);
    const searched = branchAndBound(program, Math.min(mostSeconds, limits.seconds / 2) * workPerSecond);
    const seconds = searched.work / workPerSecond;
    if (searched.state === 'impossible') return { state: 'impossible', seconds };
    if (searched.state === 'proved')
      return { state: 'proved', values: searched.values, bound: searched.cost, seconds };
    const start = searched.state === 'not proved' ? searched.values : undefined;
    const left = { ...limits, seconds: Math.max(0, limits.seconds - seconds) };
    return addSeconds(await solve(startFrom(program, start), left, onProgress), seconds);
  };
}

/**
 * Searches small programs in this thread alone, for as long as the limits say; what is found by then is taken, proved or not. For
 * many questions of which none is worth a wait. Of larger programs nothing is found.
 */
export const searchAlone: Solve = async (program, limits) => {
  if (sizeOf(program) > largest) return { state: 'none found', seconds: 0 };
  const searched = branchAndBound(program, limits.seconds * workPerSecond);
  const seconds = searched.work / workPerSecond;
  if (!('values' in searched)) return { state: searched.state, seconds };
  const { state, values, cost } = searched;
  return { state, values, bound: state === 'proved' ? cost : Number.NEGATIVE_INFINITY, seconds };
};

/** Endless where a column has no end: our own search can't do these; and where a relaxation is all there is, which a solver does sooner. */
function sizeOf({ columns, rows }: IntegerProgram): number {
  const isBounded = columns.every(({ lower, upper }) => Number.isFinite(lower) && Number.isFinite(upper));
  const size = isBounded ? rows.length ** 2 * columns.length : Number.POSITIVE_INFINITY;
  return size <= largestHere || columns.some(({ integer }) => integer) ? size : Number.POSITIVE_INFINITY;
}

const startFrom = (program: IntegerProgram, start: readonly number[] | undefined): IntegerProgram =>
  start === undefined ? program : { ...program, start };

const addSeconds = (solution: Solution, seconds: number): Solution => ({
  ...solution,
  seconds: solution.seconds + seconds,
});
