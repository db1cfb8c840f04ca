// Order: the least cash that covers every need, proved. In: needs in usable ml, market, solver. Out: the order.
import type { Order, OrderNeed } from '../model/plan.js';
import { type Buying, settledCounts } from './choose-counts.js';
import { askEachShop, weighSets } from './explain-order.js';
import type { Market } from './list-wares.js';
import { measureSupply, splitNeeds } from './split-needs.js';
import { type Chosen, writeOrder } from './write-order.js';

/**
 * Whole offers from all shops, single pots and sets, that cover every need at the least cash, postage and least
 * orders included. What the offers can't cover is listed as unmet, and the rest is ordered. No needs: an empty
 * order. Of equal costs the order with the fewest shops is taken, then the fewest pots, then the first names.
 */
export async function chooseOrder(
  needs: readonly OrderNeed[],
  market: Market,
  buying: Buying,
): Promise<Order> {
  const { within, unmet } = splitNeeds(needs, measureSupply(market));
  const chosen = await settledCounts(within, market, buying);
  const explained = { market, buying, chosen };
  return {
    ...writeOrder(chosen, within, market),
    status: statusOf(chosen, unmet),
    unmet,
    passedOver: await weighSets(within, explained),
    fromOneShop: await askEachShop(within, explained),
  };
}

/** How an order stands: what could not be met comes before what could not be proved. */
export function statusOf({ counts, aboveBestMinor }: Chosen, unmet: readonly OrderNeed[]): Order['status'] {
  if (unmet.length > 0) return "can't be met";
  if (counts.every((count) => count === 0)) return 'nothing to buy';
  return aboveBestMinor === 0 ? 'proved' : 'not proved';
}
