// Promise: what a way can do without. In: a way that keeps it. Out: another, no dearer.
import { reachesLeastOrders } from '../first-order.js';
import type { Sought } from './open-promise.js';
import { type Way, wayOf } from './way.js';

/** The way without every pot that the promise does not need, the dearest tried first. */
export function takeBack(way: Way, sought: Sought): Way {
  const places = [...way.wares.keys()].filter((place) => (way.counts[place] ?? 0) > 0);
  places.sort((a, b) => (way.wares[b]?.offer.priceMinor ?? 0) - (way.wares[a]?.offer.priceMinor ?? 0));
  let kept = way;
  for (const place of places) {
    for (let left = kept.counts[place] ?? 0; left > 0; left--) {
      const counts = kept.counts.map((count, at) => (at === place ? count - 1 : count));
      const fewer = wayOf(way.wares, counts, sought);
      const isKept = fewer.failing <= sought.mayFail && reachesLeastOrders(way.wares, counts, sought.market);
      if (!isKept || fewer.totalMinor > kept.totalMinor) break;
      kept = fewer;
    }
  }
  return kept;
}
