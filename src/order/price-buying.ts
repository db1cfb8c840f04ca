// Order: what a ml more of a paint would cost. In: the order, the market, the shelf. Out: minor units per usable ml by paint.
import { newestPaid } from '../model/newest-paid.js';
import type { Order } from '../model/order.js';
import type { CountedStock } from '../model/stock.js';
import type { Container } from '../model/words.js';
import { type Market, openMarket, usableMlOf } from './open-market.js';

/** Which paints any shop sells, by themselves or in a set, as far as their offers last. */
export function isOnOffer(market: Market): (paint: string) => boolean {
  const containersOf = containersOnOffer(market);
  return (paint) => containersOf.has(paint);
}

/** The same, with what each of them comes in. */
export function containersOnOffer(market: Market): Map<string, Set<Container>> {
  const containersOf = new Map<string, Set<Container>>();
  for (const { paint, container } of openMarket(market).stock.flatMap(({ offer }) => offer.pots))
    containersOf.set(paint, (containersOf.get(paint) ?? new Set()).add(container));
  return containersOf;
}

/**
 * What the order pays for a ml of each paint that it holds; for others the cheapest single offer, by its size, in any shop;
 * for a paint that nobody sells by itself what the newest pot with a price cost, else undefined. Postage is left out.
 */
export function openPrices(
  { lines }: Order,
  { offers, assumptions }: Market,
  stock: readonly CountedStock[],
): (paint: string) => number | undefined {
  const paid = new Map<string, { minor: number; ml: number }>();
  for (const { paint, costMinor, count, usableMl } of lines.flatMap(({ pots }) => pots)) {
    const sum = paid.get(paint) ?? { minor: 0, ml: 0 };
    paid.set(paint, { minor: sum.minor + costMinor, ml: sum.ml + count * usableMl });
  }
  const asked = new Map<string, number>();
  for (const { pots, priceMinor } of offers) {
    const [only] = pots;
    if (only === undefined || pots.length > 1) continue;
    const perMl = priceMinor / (usableMlOf(only, assumptions) * only.count);
    asked.set(only.paint, Math.min(perMl, asked.get(only.paint) ?? Number.POSITIVE_INFINITY));
  }
  for (const { paint, pots } of stock) {
    const newest = newestPaid(pots);
    if (newest !== undefined && !asked.has(paint)) asked.set(paint, newest.priceMinor / newest.fullUsableMl);
  }
  return (paint) => {
    const sum = paid.get(paint);
    return sum === undefined ? asked.get(paint) : sum.minor / sum.ml;
  };
}
