// Policy: which pot of a paint would be bought. In: an order or none, the market. Out: its price and its shop's postage.
import { at } from '../../model/at.js';
import type { OrderLine } from '../../model/order.js';
import type { Offer } from '../../model/sheets.js';
import { type Market, openMarket } from '../open-market.js';
import { findSinglePrices, priceSet } from '../price-set.js';

/** A pot of one paint: what it costs, of a set its share, and the postage of its shop; minor units. */
export interface PotPrice {
  readonly priceMinor: number;
  readonly postageMinor: number;
}

/**
 * For each paint on offer the pot that would be bought, that of the least price: of those that an order buys, else of those that
 * are sold by themselves, else of all.
 */
export function potsBought(
  ordered: readonly Pick<OrderLine, 'shop' | 'offer'>[],
  market: Market,
): Map<string, PotPrice> {
  const sold = openMarket(market).stock.map(({ offer }) => offer);
  const names = new Set(ordered.map(nameOf));
  const own = sold.filter((offer) => names.has(nameOf(offer)));
  const single = sold.filter(({ pots }) => pots.length === 1);
  return new Map([sold, single, own].flatMap((offers) => [...cheapestPots(offers, market)]));
}

const nameOf = ({ shop, offer }: Pick<OrderLine, 'shop' | 'offer'>): string => `${shop}\n${offer}`;

function cheapestPots(offers: readonly Offer[], market: Market): Map<string, PotPrice> {
  const singles = findSinglePrices(market.offers);
  const cheapest = new Map<string, PotPrice>();
  for (const { shop, pots, priceMinor } of offers) {
    const postageMinor = market.shops.get(shop)?.postageMinor ?? 0;
    const shares = priceSet(pots, priceMinor, singles);
    for (const [place, { paint }] of pots.entries()) {
      const share = at(shares, place);
      if (share < (cheapest.get(paint)?.priceMinor ?? Number.POSITIVE_INFINITY))
        cheapest.set(paint, { priceMinor: share, postageMinor });
    }
  }
  return cheapest;
}
