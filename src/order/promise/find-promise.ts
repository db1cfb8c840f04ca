// Promise: the least cash with which nothing runs out in so many draws. In: what is asked for in each draw, the market, a solver.
// Out: counts of wares, what they cover, and what no order that keeps it undercuts.
import type { OrderNeed } from '../../model/order.js';
import { sameMl } from '../../model/volume.js';
import { type Buying, cheapestCounts, within } from '../choose-counts.js';
import { splitNeeds } from '../split-needs.js';
import { commonNeeds, leastNeeds } from './common-needs.js';
import { isManyPots, openCuts } from './cut-search.js';
import type { Fineness } from './list-steps.js';
import { cheaper, isProved, isProvedBest, type Known, note } from './note-found.js';
import type { OpenPromise, Sought } from './open-promise.js';
import { ofMany, searchAbout } from './search-about.js';
import { takeBack } from './take-back.js';
import { needsOf, type Way, wayOf } from './way.js';

export interface FoundPromise {
  /** What an order must cover, likely usable ml by paint; below 0: so much more is there. */
  readonly needs: ReadonlyMap<string, number>;
  /** The cheapest found; undefined where the offers do not reach the promise. */
  readonly way: Way | undefined;
  /** No order that keeps the promise costs less. */
  readonly leastMinor: number;
  /** Draws in which something may run out. */
  readonly mayFail: number;
}

/** Steps from few to all. */
const finenesses: readonly Fineness[] = [{ shareLeft: 0.1 }, { shareLeft: 0.01 }, { shareLeft: 0 }];

/** Programs solved for one promise at the most. */
const mostPrograms = 40;

/**
 * A first way by one quantile common to all paints. Then each paint at its own quantile, which every order that keeps the promise
 * covers; and as long as the cheapest order for that fails in too many draws, rows that cut it off (`cutRows`). The first one that
 * does is the cheapest there is. One that does not is mended (`mendWay`), which mostly comes near the best at once.
 * `surer`: a way for a surer promise, which does for this one too.
 */
export async function findPromise(
  open: OpenPromise,
  sure: number,
  buying: Buying,
  surer?: Way,
): Promise<FoundPromise> {
  const mayFail = mayFailOf(open, sure);
  const sought = { ...open, mayFail, buying };
  const common = commonNeeds(open.asked, mayFail);
  const known: Known = {
    best: cheaper(surer, await tryNeeds(common, sought)),
    missed: [],
    leastMinor: 0,
    programs: 0,
  };
  if (isManyPots(sought, ofMany)) await searchAbout({ sought, known });
  else for (const fineness of finenesses) if (!(await searchSteps(sought, fineness, known))) break;
  const { best, leastMinor } = known;
  const needs = best === undefined ? common : leastNeeds(best, open.asked, mayFail);
  return { needs, way: best, leastMinor, mayFail };
}

/** Draws in which something may run out. */
export const mayFailOf = ({ draws }: OpenPromise, sure: number): number =>
  draws - Math.ceil(sure * draws - 1e-9);

/** The cheapest order for some needs, where it keeps the promise, and then for what of it the promise does need. */
async function tryNeeds(needs: ReadonlyMap<string, number>, sought: Sought): Promise<Way | undefined> {
  const way = await orderNeeds(needs, sought);
  if (way === undefined) return undefined;
  const fewer = takeBack(way, sought);
  return fewer === way ? way : cheaper(fewer, await orderNeeds(needsOf(fewer, sought.asked), sought));
}

/** Of the time of a program, for a first way: what that covers is not what is sought, so it need not be the cheapest for it. */
const shareOfFirst = 0.2;

async function orderNeeds(needs: ReadonlyMap<string, number>, sought: Sought): Promise<Way | undefined> {
  const { market, supply, buying } = sought;
  const met = splitNeeds(asNeeds(needs), supply).within;
  const { wares, counts } = await cheapestCounts(met, market, within(shareOfFirst, buying));
  const way = wayOf(wares, counts, sought);
  return way.failing <= sought.mayFail ? way : undefined;
}

/** What is to be bought, as an order takes it. */
export function asNeeds(needs: ReadonlyMap<string, number>): OrderNeed[] {
  return [...needs].flatMap(([paint, ml]) => (ml > sameMl ? [{ paint, ml }] : []));
}

/** Searches with steps of one fineness, and notes what it finds. True where finer steps may tell more. */
async function searchSteps(sought: Sought, fineness: Fineness, known: Known): Promise<boolean> {
  const { buying } = sought;
  const cuts = openCuts(sought, fineness, known.missed);
  if (cuts === undefined) return false;
  while (known.programs < mostPrograms && !isProved(known)) {
    known.programs++;
    const solution = await buying.solve(cuts.program(known.best), buying.limits, buying.onProgress);
    const missed = note(solution, cuts, { sought, known });
    if (!isProvedBest(solution)) return false;
    if (missed !== undefined && !cuts.cutOff(missed)) return true;
  }
  return false;
}
