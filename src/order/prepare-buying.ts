// Order: how the search for an order is limited. In: options. Out: the solver, its limits, who is told.
import type { Buying } from './choose-counts.js';
import { wholeOverOrder } from './share-time.js';
import type { OnProgress, Solution, Solve } from './solver/integer-program.js';
import { searchHere } from './solver/search-first.js';
import { solveWhole } from './solver/solve-whole.js';

const defaultSeconds = 25;

/** How an order is searched for; each has its default. */
export interface Search {
  /** Solves what is not small, in this thread unless given another, such as one of several threads. */
  readonly solve?: Solve | undefined;
  /** How long all searches of a plan may take together. Default 25. */
  readonly seconds?: number | undefined;
  readonly onProgress?: OnProgress | undefined;
}

/**
 * Searches that together take no more than the seconds of a plan. Small programs are
 * searched in this thread.
 */
export function prepareBuying({ solve = solveWhole, seconds = defaultSeconds, onProgress }: Search): Buying {
  const limits = { seconds: seconds / wholeOverOrder };
  return {
    solve: searchHere(improveFirst(solve)),
    limits,
    ...(onProgress === undefined ? {} : { onProgress }),
  };
}

/** Of the time of a search, what may go into its start. */
const shareOfStart = 0.25;

/** Larger programs begin from a better start where they know of one, and end with it where nothing else is found. */
function improveFirst(solve: Solve): Solve {
  return async ({ improveStart, ...program }, limits, onProgress) => {
    if (improveStart === undefined || program.start === undefined) return solve(program, limits, onProgress);
    const { start, seconds } = improveStart(program.start, shareOfStart * limits.seconds);
    const left = { ...limits, seconds: limits.seconds - seconds };
    const solution: Solution = await solve({ ...program, start }, left, onProgress);
    const bound = Number.NEGATIVE_INFINITY;
    const found =
      solution.state === 'none found' ? ({ state: 'not proved', values: start, bound } as const) : solution;
    return { ...found, seconds: seconds + solution.seconds };
  };
}
