// Order: how the search for an order is limited. In: options. Out: the solver, its limits, who is told.
import type { Buying } from './choose-counts.js';
import type { OnProgress, Solve } from './solver/integer-program.js';
import { searchFirst } from './solver/search-first.js';
import { solveProgram } from './solver/solve-program.js';

const defaultSeconds = 10;

/** So many nodes are allowed for each second: fewer than most machines search, so that the same sheets end alike. */
const nodesPerSecond = 100;

/** How an order is searched for; each has its default. */
export interface Search {
  /** Solves what our own search leaves, in this thread unless given another, such as one in a worker. */
  readonly solve?: Solve | undefined;
  /** How long a search may take. Default 10. */
  readonly seconds?: number | undefined;
  readonly onProgress?: OnProgress | undefined;
}

/** A search of `seconds` (10) that ends at a number of nodes first; small programs are searched by our own search before. */
export function prepareBuying({
  solve = solveProgram,
  seconds = defaultSeconds,
  onProgress,
}: Search): Buying {
  const limits = { nodes: Math.ceil(seconds * nodesPerSecond), seconds };
  return { solve: searchFirst(solve), limits, ...(onProgress === undefined ? {} : { onProgress }) };
}
