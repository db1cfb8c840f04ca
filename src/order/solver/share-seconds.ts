// Solver: many searches that share one time. In: a solver, seconds for all of them. Out: a solver that keeps to them.
import type { Solve } from './integer-program.js';

/** Less than this is no search. */
const leastSeconds = 0.001;

/**
 * Solves as long as the seconds of all searches together last: each may take what is left of them, and once they are
 * gone nothing is found any more, without a search. Seconds are those that the solver says it took.
 */
export function shareSeconds(solve: Solve, seconds: number): Solve {
  const [shared] = shareInTurn(solve, seconds, [0]);
  return shared as Solve;
}

/** The same for questions asked one after the other, a solver for each: so many seconds it leaves to those that follow. */
export function shareInTurn(solve: Solve, seconds: number, kept: readonly number[]): Solve[] {
  let left = seconds;
  return kept.map(
    (toOthers): Solve =>
      async (program, limits, onProgress) => {
        const most = left - toOthers;
        if (most < leastSeconds) return { state: 'none found', seconds: 0 };
        const within = { ...limits, seconds: Math.min(limits.seconds, most) };
        const solution = await solve(program, within, onProgress);
        left -= solution.seconds;
        return solution;
      },
  );
}
