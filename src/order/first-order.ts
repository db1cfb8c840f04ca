// Order: a first order, quick and not proved, for the solver to better. In: needs, wares, market. Out: counts.
import type { OrderNeed } from '../model/order.js';
import { choosePots, type Pack } from './choose-pots.js';
import type { Holders, Market, Ware } from './list-wares.js';
import { costOfCounts } from './write-order.js';

/** Wares, and which of them hold each paint. */
interface Shelves {
  readonly wares: readonly Ware[];
  readonly holders: Holders;
  /** How many of each ware the order must hold. */
  readonly held: readonly number[];
}

/**
 * The cheapest of: every paint by itself from all shops, and from each shop alone; sets of several paints are not
 * weighed, and a shop under its least order is no way. Where none of them does, the most of everything: that
 * covers whatever can be covered.
 */
export function findFirstOrder(
  needs: readonly OrderNeed[],
  { wares, holders, held }: Shelves,
  market: Market,
): readonly number[] {
  const atLeastHeld = (count: number, index: number): number => Math.max(count, held[index] ?? 0);
  const shops = [...new Set(wares.map(({ offer }) => offer.shop))];
  const ways = [undefined, ...shops]
    .map((shop) => byPaint(needs, { wares, holders }, shop)?.map(atLeastHeld))
    .filter((counts) => counts !== undefined)
    .filter((counts) => reachesLeastOrders(wares, counts, market))
    .map((counts) => ({ counts, costMinor: costOfCounts(wares, counts, market) }));
  return (
    ways.sort((a, b) => a.costMinor - b.costMinor)[0]?.counts ??
    wares.map(({ most }) => most).map(atLeastHeld)
  );
}

/** The cheapest whole pots for each paint by itself, from one shop or all; undefined where they do not cover it. */
function byPaint(
  needs: readonly OrderNeed[],
  { wares, holders }: Omit<Shelves, 'held'>,
  shop?: string,
): number[] | undefined {
  const counts = wares.map(() => 0);
  for (const { paint, ml } of needs) {
    const packs = (holders.get(paint) ?? []).flatMap((holder) => packsOf(holder, wares[holder.column], shop));
    const chosen = choosePots(ml, packs);
    if (chosen === undefined) return undefined;
    packs.forEach(({ column }, place) => {
      counts[column] = chosen[place] ?? 0;
    });
  }
  return counts;
}

interface PlacedPack extends Pack {
  readonly column: number;
}

/** The holder as a pack; none for a set of several paints, or one of another shop. */
function packsOf(
  { column, ml }: { column: number; ml: number },
  ware: Ware | undefined,
  shop: string | undefined,
): PlacedPack[] {
  if (ware === undefined || ware.mlOf.size > 1) return [];
  const { offer, pots, limit } = ware;
  if (shop !== undefined && offer.shop !== shop) return [];
  return [{ column, ml, priceMinor: offer.priceMinor, pots, limit }];
}

/** True where every shop that is bought from gets its least order. */
export function reachesLeastOrders(
  wares: readonly Ware[],
  counts: readonly number[],
  { shops }: Market,
): boolean {
  const goods = new Map<string, number>();
  wares.forEach(({ offer }, index) => {
    const count = counts[index] ?? 0;
    if (count > 0) goods.set(offer.shop, (goods.get(offer.shop) ?? 0) + offer.priceMinor * count);
  });
  return [...goods].every(([shop, sum]) => sum >= (shops.get(shop)?.leastOrderMinor ?? 0));
}
