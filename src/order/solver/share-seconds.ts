// Solver: many searches that share one time. In: a solver, seconds for all of them. Out: a solver that keeps to them.
import type { Solve } from './integer-program.js';

/** Less than this is no search. */
const leastSeconds = 0.001;

/**
 * Solves as long as the seconds of all searches together last: each may take what is left of them, and once they are
 * gone nothing is found any more, without a search. Seconds are those that the solver says it took.
 */
export function shareSeconds(solve: Solve, seconds: number): Solve {
  let left = seconds;
  return async (program, limits, onProgress) => {
    if (left < leastSeconds) return { state: 'none found', seconds: 0 };
    const within = { ...limits, seconds: Math.min(limits.seconds, left) };
    const solution = await solve(program, within, onProgress);
    left -= solution.seconds;
    return solution;
  };
}
