// Order: a set's price over its pots. In: an offer's pots, a cost, single prices. Out: each row's share, adding up to the cost.
import { at } from '../model/at.js';
import { splitWhole } from '../model/money.js';
import type { Offer, OfferPot } from '../model/sheets.js';

/** The cheapest price of each paint that is sold by itself, minor units per labelled ml. */
export type SinglePrices = ReadonlyMap<string, number>;

export function findSinglePrices(offers: readonly Offer[]): SinglePrices {
  const prices = new Map<string, number>();
  for (const { pots, priceMinor } of offers) {
    const [only] = pots;
    if (only === undefined || pots.length > 1) continue;
    const perMl = priceMinor / (only.sizeMl * only.count);
    prices.set(only.paint, Math.min(perMl, prices.get(only.paint) ?? perMl));
  }
  return prices;
}

/**
 * Shares of `costMinor` for each row of a set: by the cheapest single price known of each paint; if one of them has
 * none, by ml. An offer of one row takes the whole cost.
 */
export function priceSet(pots: readonly OfferPot[], costMinor: number, singles: SinglePrices): number[] {
  const ml = pots.map(({ sizeMl, count }) => sizeMl * count);
  const perMl = pots.length === 1 ? [1] : pots.map(({ paint }) => singles.get(paint));
  const isKnown = perMl.every((price) => price !== undefined);
  return splitWhole(costMinor, isKnown ? ml.map((volume, index) => volume * at(perMl, index)) : ml);
}
