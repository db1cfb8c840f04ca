// Promise: what a search has found so far. In: solutions of its programs. Out: the best way, those that were missed, a bound.
import { reachesLeastOrders } from '../first-order.js';
import type { Solution } from '../solver/integer-program.js';
import { type CutSearch, leastOfBound } from './cut-search.js';
import { mendWay } from './mend-way.js';
import type { Sought } from './open-promise.js';
import { takeBack } from './take-back.js';
import { type Way, wayOf } from './way.js';

/** What is known so far. */
export interface Known {
  /** The cheapest way that keeps the promise. */
  best: Way | undefined;
  /** Those tried that do not. */
  readonly missed: Way[];
  leastMinor: number;
  programs: number;
}

export interface Searching {
  readonly sought: Sought;
  readonly known: Known;
}

export const isProved = ({ best, leastMinor }: Known): boolean =>
  best !== undefined && best.totalMinor <= leastMinor;

export const cheaper = (one: Way | undefined, other: Way | undefined): Way | undefined =>
  other !== undefined && isCheaper(other, one) ? other : one;

export const isCheaper = (one: Way, other: Way | undefined): boolean =>
  other === undefined || one.totalMinor < other.totalMinor;

export const isProvedBest = ({ state }: Solution): boolean => state === 'proved';

/** What a solution tells: a bound, and a way that keeps the promise or, given back, one that does not. */
export function note(
  solution: Solution,
  { wares }: CutSearch,
  { sought, known }: Searching,
): Way | undefined {
  if (!('values' in solution)) return undefined;
  known.leastMinor = Math.max(known.leastMinor, leastOfBound(solution));
  const way = wayOf(wares, solution.values.slice(0, wares.length), sought);
  if (way.failing <= sought.mayFail && reachesLeastOrders(way.wares, way.counts, sought.market)) {
    known.best = cheaper(known.best, way);
    return undefined;
  }
  known.missed.push(way);
  known.best = cheaper(known.best, mended(way, { sought, known }));
  return way;
}

/** Only what betters the best is looked through for pots to take back. */
export function mended(missed: Way, { sought, known }: Searching): Way | undefined {
  const found = mendWay(missed, sought);
  if (found === undefined || cheaper(known.best, found) !== found) return undefined;
  return reachesLeastOrders(found.wares, found.counts, sought.market) ? takeBack(found, sought) : undefined;
}
