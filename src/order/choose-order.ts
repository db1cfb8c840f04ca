// Order: the least cash that covers every need, proved. In: needs in usable ml, market, solver. Out: the order.
import type { Order, OrderNeed } from '../model/order.js';
import { type Buying, besides, cheapestCounts, settledCounts } from './choose-counts.js';
import { askEachShop, weighSets } from './explain-order.js';
import type { Market } from './open-market.js';
import { sharing } from './share-time.js';
import { measureSupply, splitNeeds } from './split-needs.js';
import { type Chosen, writeOrder } from './write-order.js';

/**
 * Whole offers from all shops, single pots and sets, that cover every need at the least cash, postage and least
 * orders included. What the offers can't cover is listed as unmet, and the rest is ordered. No needs: an empty
 * order. Of equal costs the order with the fewest shops is taken, then the fewest pots, then the first names.
 * Other ways to buy are weighed only against a proved order: beside another they would prove nothing.
 */
export async function chooseOrder(
  needs: readonly OrderNeed[],
  market: Market,
  buying: Buying,
  explaining: Buying = sharing('reasons', buying),
): Promise<Order> {
  const { order, within, chosen } = await place(needs, market, buying);
  if (chosen.aboveBestMinor > 0) return order;
  const explained = { market, buying: explaining, chosen };
  return {
    ...order,
    passedOver: await weighSets(within, explained),
    fromOneShop: await askEachShop(within, explained),
  };
}

/** The order alone, without the ways that it was weighed against. */
export async function placeOrder(
  needs: readonly OrderNeed[],
  market: Market,
  buying: Buying,
): Promise<Order> {
  return (await place(needs, market, buying)).order;
}

/** What some needs cost at the least, searched for as long as a side question may take; ties are not settled. */
export async function priceNeeds(
  needs: readonly OrderNeed[],
  market: Market,
  buying: Buying,
): Promise<ReturnType<typeof writeOrder>> {
  const { within } = splitNeeds(needs, measureSupply(market));
  return writeOrder(await cheapestCounts(within, market, besides(buying)), within, market);
}

async function place(needs: readonly OrderNeed[], market: Market, buying: Buying) {
  const { within, unmet } = splitNeeds(needs, measureSupply(market));
  const chosen = await settledCounts(within, market, buying);
  const written = writeOrder(chosen, within, market);
  const order: Order = {
    ...written,
    status: statusOf(chosen, unmet),
    unmet,
    passedOver: [],
    fromOneShop: [],
  };
  return { order, within, chosen };
}

/** How an order stands: what could not be met comes before what could not be proved. */
export function statusOf({ counts, aboveBestMinor }: Chosen, unmet: readonly OrderNeed[]): Order['status'] {
  if (unmet.length > 0) return "can't be met";
  if (counts.every((count) => count === 0)) return 'nothing to buy';
  return aboveBestMinor === 0 ? 'proved' : 'not proved';
}
