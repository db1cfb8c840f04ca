// Order: a set's price over its pots. In: an offer's pots and a cost. Out: each row's share, adding up to the cost.
import { splitWhole } from '../model/money.js';
import type { Offer, OfferPot } from '../model/sheets.js';

/**
 * Shares of `costMinor` for each row of a set: by the cheapest single price known of each paint (per labelled ml);
 * if one of them has no single price, by ml. An offer of one row takes the whole cost.
 */
export function priceSet(pots: readonly OfferPot[], costMinor: number, offers: readonly Offer[]): number[] {
  const ml = pots.map(({ sizeMl, count }) => sizeMl * count);
  const perMl = pots.length === 1 ? [1] : pots.map(({ paint }) => cheapestPerMl(paint, offers));
  const known = perMl.every((price) => price !== undefined);
  return splitWhole(
    costMinor,
    ml.map((volume, index) => (known ? volume * (perMl[index] ?? 0) : volume)),
  );
}

function cheapestPerMl(paint: string, offers: readonly Offer[]): number | undefined {
  const prices = offers.flatMap(({ pots, priceMinor }) => {
    const [only] = pots;
    if (pots.length !== 1 || only?.paint !== paint) return [];
    return [priceMinor / (only.sizeMl * only.count)];
  });
  return prices.length === 0 ? undefined : Math.min(...prices);
}
