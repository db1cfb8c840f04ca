// Order: the least cash that covers every need, proved. In: needs in usable ml, market, solver. Out: the order.
import type { Order, OrderNeed } from '../model/plan.js';
import { type Buying, settledCounts } from './choose-counts.js';
import { askEachShop, weighSets } from './explain-order.js';
import { listWares, type Market, supplyMl } from './list-wares.js';
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
  const { within, unmet } = splitNeeds(needs, market);
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

/** Each need up to what the offers hold, and what is beyond them. */
export function splitNeeds(
  needs: readonly OrderNeed[],
  market: Market,
): { readonly within: readonly OrderNeed[]; readonly unmet: readonly OrderNeed[] } {
  const wares = listWares(needs, market);
  const split = needs.map(({ paint, ml }) => ({ paint, ml, heldMl: Math.min(ml, supplyMl(paint, wares)) }));
  return {
    within: split.flatMap(({ paint, heldMl }) => (heldMl > 0 ? [{ paint, ml: heldMl }] : [])),
    unmet: split.flatMap(({ paint, ml, heldMl }) => (ml - heldMl > 1e-9 ? [{ paint, ml: ml - heldMl }] : [])),
  };
}

/** How an order stands: what could not be met comes before what could not be proved. */
export function statusOf({ counts, aboveBestMinor }: Chosen, unmet: readonly OrderNeed[]): Order['status'] {
  if (unmet.length > 0) return "can't be met";
  if (counts.every((count) => count === 0)) return 'nothing to buy';
  return aboveBestMinor === 0 ? 'proved' : 'not proved';
}
