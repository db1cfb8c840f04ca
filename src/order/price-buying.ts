// Order: what a ml more of a paint would cost. In: the order, the market. Out: minor units per usable ml by paint.
import type { Order } from '../model/order.js';
import type { Container } from '../model/words.js';
import { type Market, openShops, usableMlOf } from './list-wares.js';

/** Which paints any shop sells, by themselves or in a set, as far as their offers last. */
export function isOnOffer(market: Market): (paint: string) => boolean {
  const containersOf = containersOnOffer(market);
  return (paint) => containersOf.has(paint);
}

/** The same, with what each of them comes in. */
export function containersOnOffer({ offers, shops }: Market): Map<string, Set<Container>> {
  const open = openShops(offers, shops);
  const sold = offers.filter(({ shop, available }) => open.has(shop) && available !== 0);
  const containersOf = new Map<string, Set<Container>>();
  for (const { paint, container } of sold.flatMap(({ pots }) => pots))
    containersOf.set(paint, (containersOf.get(paint) ?? new Set()).add(container));
  return containersOf;
}

/**
 * What the order pays for a ml of each paint that it holds; for others the cheapest single offer, by its size, in any shop.
 * Undefined for a paint that nobody sells by itself. Postage is left out.
 */
export function openPrices(
  { lines }: Order,
  { offers, assumptions }: Market,
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
  return (paint) => {
    const sum = paid.get(paint);
    return sum === undefined ? asked.get(paint) : sum.minor / sum.ml;
  };
}
