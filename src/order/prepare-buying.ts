// Order: how the search for an order is limited. In: options. Out: the solver, its limits, who is told.
import type { Buying } from './choose-counts.js';
import { wholeOverOrder } from './share-time.js';
import type { OnProgress, Solve } from './solver/integer-program.js';
import { searchFirst } from './solver/search-first.js';
import { solveProgram } from './solver/solve-program.js';

const defaultSeconds = 25;

/** How an order is searched for; each has its default. */
export interface Search {
  /** Solves what our own search leaves, in this thread unless given another, such as one in a worker. */
  readonly solve?: Solve | undefined;
  /** How long all searches of a plan may take together. Default 25. */
  readonly seconds?: number | undefined;
  readonly onProgress?: OnProgress | undefined;
}

/**
 * Searches that together take no more than the seconds of a plan. Small programs are
 * searched by our own search before.
 */
export function prepareBuying({
  solve = solveProgram,
  seconds = defaultSeconds,
  onProgress,
}: Search): Buying {
  const limits = { seconds: seconds / wholeOverOrder };
  return { solve: searchFirst(solve), limits, ...(onProgress === undefined ? {} : { onProgress }) };
}
