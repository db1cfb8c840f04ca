// Model: what shops could sell at the most. In: offers. Out: a sum for each shop.
import type { Offer } from './sheets.js';

/** All offers of each shop together, in minor units: without end where one of them has no limit, unless it costs nothing. */
export function mostGoods(offers: readonly Offer[]): Map<string, number> {
  const most = new Map<string, number>();
  for (const { shop, priceMinor, available = Number.POSITIVE_INFINITY } of offers)
    most.set(shop, (most.get(shop) ?? 0) + (priceMinor === 0 ? 0 : priceMinor * available));
  return most;
}
