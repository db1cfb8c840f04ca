// Order: a first order, quick and not proved, for the solver to better. In: needs, wares, market. Out: counts.
import type { OrderNeed } from '../model/plan.js';
import { choosePots, type Pack } from './choose-pots.js';
import type { Market, Ware } from './list-wares.js';
import { costOfCounts } from './write-order.js';

/**
 * The cheapest of: every paint by itself from all shops, and from each shop alone; sets of several paints are not
 * weighed, and a shop under its least order is no way. Where none of them does, the most of everything: that
 * covers whatever can be covered.
 */
export function findFirstOrder(
  needs: readonly OrderNeed[],
  wares: readonly Ware[],
  market: Market,
): readonly number[] {
  const shops = [...new Set(wares.map(({ offer }) => offer.shop))];
  const ways = [undefined, ...shops]
    .map((shop) => byPaint(needs, wares, shop))
    .filter((counts) => counts !== undefined)
    .filter((counts) => reachesLeastOrders(wares, counts, market))
    .map((counts) => ({ counts, costMinor: costOfCounts(wares, counts, market) }));
  return ways.sort((a, b) => a.costMinor - b.costMinor)[0]?.counts ?? wares.map(({ most }) => most);
}

/** The cheapest whole pots for each paint by itself, from one shop or all. */
function byPaint(needs: readonly OrderNeed[], wares: readonly Ware[], shop?: string): number[] | undefined {
  const counts = wares.map(() => 0);
  for (const { paint, ml } of needs) {
    const held = wares.flatMap((ware, index) =>
      ware.mlOf.size === 1 && ware.mlOf.has(paint) && (shop === undefined || ware.offer.shop === shop)
        ? [{ index, pack: packOf(ware, paint) }]
        : [],
    );
    const chosen = choosePots(
      ml,
      held.map(({ pack }) => pack),
    );
    if (chosen === undefined) return undefined;
    held.forEach(({ index }, place) => {
      counts[index] = chosen[place] ?? 0;
    });
  }
  return counts;
}

const packOf = ({ offer, mlOf, pots, limit }: Ware, paint: string): Pack => ({
  ml: mlOf.get(paint) ?? 0,
  priceMinor: offer.priceMinor,
  pots,
  limit,
});

function reachesLeastOrders(wares: readonly Ware[], counts: readonly number[], { shops }: Market): boolean {
  const goods = new Map<string, number>();
  wares.forEach(({ offer }, index) => {
    const cost = offer.priceMinor * (counts[index] ?? 0);
    if (cost > 0) goods.set(offer.shop, (goods.get(offer.shop) ?? 0) + cost);
  });
  return [...goods].every(([shop, sum]) => sum >= (shops.get(shop)?.leastOrderMinor ?? 0));
}
