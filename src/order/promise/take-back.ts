// Promise: what a way can do without. In: a way that keeps it. Out: another, no dearer.
import { at } from '../../model/at.js';
import { reachesLeastOrders } from '../first-order.js';
import type { Sought } from './open-promise.js';
import { type Way, wayOf } from './way.js';

/** The way without every pot that the promise does not need, the dearest tried first. */
export function takeBack(way: Way, sought: Sought): Way {
  const places = [...way.wares.keys()].filter((place) => at(way.counts, place) > 0);
  places.sort((a, b) => at(way.wares, b).offer.priceMinor - at(way.wares, a).offer.priceMinor);
  let kept = way;
  for (const place of places) {
    for (let left = at(kept.counts, place); left > 0; left--) {
      const counts = kept.counts.map((count, one) => (one === place ? count - 1 : count));
      const fewer = wayOf(way.wares, counts, sought);
      const isKept = fewer.failing <= sought.mayFail && reachesLeastOrders(way.wares, counts, sought.market);
      if (!isKept || fewer.totalMinor > kept.totalMinor) break;
      kept = fewer;
    }
  }
  return kept;
}
