// Order: how the search for an order is limited. In: options. Out: the solver, its limits, who is told.
import type { Buying } from './choose-counts.js';
import { wholeOverOrder } from './share-time.js';
import type { OnProgress, Solve } from './solver/integer-program.js';
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
    solve: searchHere(solve),
    limits,
    ...(onProgress === undefined ? {} : { onProgress }),
  };
}
