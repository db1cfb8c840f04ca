// Promise: a way that does not quite do. In: the way, what is asked for in each draw. Out: needs of an order that does.
import type { Ware } from '../ware.js';
import type { Sought } from './open-promise.js';
import { boughtIn, enoughFor, type Way } from './way.js';

/**
 * What a way covers, and what the draws ask for more that are mended for least: each missing ml at its cheapest price, postage left
 * out. Just so many of them that no more fail than may. Enough for these, whatever it comes in.
 */
export function mendNeeds(way: Way, sought: Sought): Map<string, number> {
  const costs = costsToMend(way, sought);
  const failing = [...way.fails.keys()].filter((draw) => way.fails[draw] === 1);
  failing.sort((a, b) => (costs[a] as number) - (costs[b] as number));
  const fails = way.fails.slice();
  for (const draw of failing.slice(0, way.failing - sought.mayFail)) fails[draw] = 0;
  return enoughFor({ fails }, sought.asked);
}

/** Minor units for all that a draw lacks still. */
function costsToMend(way: Way, { asked, draws }: Sought): Float64Array {
  const bought = boughtIn(way);
  const costs = new Float64Array(draws);
  for (const { paint, ml } of asked) {
    const boughtMl = bought.get(paint) ?? 0;
    const perMl = cheapestPerMl(way.wares, paint);
    for (let draw = 0; draw < draws; draw++)
      costs[draw] = (costs[draw] as number) + perMl * Math.max(0, (ml[draw] as number) - boughtMl);
  }
  return costs;
}

/** An offer's price over all that it holds. */
function cheapestPerMl(wares: readonly Ware[], paint: string): number {
  const prices = wares
    .filter(({ mlOf }) => mlOf.has(paint))
    .map(({ offer, mlOf }) => offer.priceMinor / [...mlOf.values()].reduce((sum, ml) => sum + ml, 0));
  return Math.min(...prices, Number.MAX_VALUE);
}
