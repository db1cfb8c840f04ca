// Order: a first order, quick and not proved, for the solver to better. In: needs, wares, market. Out: counts.
import type { OrderNeed } from '../model/order.js';
import { choosePots, type Pack } from './choose-pots.js';
import type { Market, Ware } from './list-wares.js';
import { pareOrder, type Shelves } from './pare-order.js';
import { costOfCounts } from './write-order.js';

/**
 * The cheapest of: every paint by itself from all shops, and from each shop alone; sets of several paints are not
 * weighed, and a shop under its least order is no way. Where none of them does, all that can be had, less what is not needed.
 */
export function findFirstOrder(
  needs: readonly OrderNeed[],
  shelves: Shelves,
  market: Market,
): readonly number[] {
  const { wares, holders, held } = shelves;
  const pots = needs.map(({ paint, ml }) => potsFor(ml, holders.get(paint) ?? [], wares));
  const shops = new Set(wares.map(({ offer }) => offer.shop));
  const least = new Map(held.flatMap((count, column) => (count > 0 ? [[column, count] as const] : [])));
  const best = [undefined, ...shops]
    .flatMap((shop) => buyEach(pots, shop) ?? [])
    .map((counts) => priceWay(raise(counts, least), wares, market))
    .filter(({ reachesLeast }) => reachesLeast)
    .sort((a, b) => a.costMinor - b.costMinor)[0];
  if (best === undefined) return pareOrder(needs, shelves, market);
  return wares.map((_, column) => best.counts.get(column) ?? 0);
}

/** How many of each ware, by its place in the list; of those left out, none. */
type Counts = ReadonlyMap<number, number>;

/** The pots that hold one needed paint alone, in all shops and in each. */
interface PotsOfNeed {
  readonly ml: number;
  readonly all: readonly PlacedPack[];
  readonly byShop: ReadonlyMap<string, readonly PlacedPack[]>;
}

interface PlacedPack extends Pack {
  readonly column: number;
}

function potsFor(
  needMl: number,
  holders: readonly { readonly column: number; readonly ml: number }[],
  wares: readonly Ware[],
): PotsOfNeed {
  const all: PlacedPack[] = [];
  const byShop = new Map<string, PlacedPack[]>();
  for (const { column, ml } of holders) {
    const ware = wares[column];
    if (ware === undefined || ware.mlOf.size > 1) continue;
    const { offer, pots, limit } = ware;
    const pack = { column, ml, priceMinor: offer.priceMinor, pots, limit };
    all.push(pack);
    const ofShop = byShop.get(offer.shop) ?? [];
    byShop.set(offer.shop, ofShop);
    ofShop.push(pack);
  }
  return { ml: needMl, all, byShop };
}

/** The cheapest whole pots for each paint by itself, from one shop or all; undefined where they do not cover it. */
function buyEach(needs: readonly PotsOfNeed[], shop: string | undefined): Counts | undefined {
  const counts = new Map<number, number>();
  for (const { ml, all, byShop } of needs) {
    const packs = shop === undefined ? all : (byShop.get(shop) ?? []);
    const chosen = choosePots(ml, packs);
    if (chosen === undefined) return undefined;
    for (const [place, { column }] of packs.entries()) {
      const count = chosen[place] ?? 0;
      if (count > 0) counts.set(column, count);
    }
  }
  return counts;
}

function raise(counts: Counts, least: Counts): Counts {
  const raised = new Map(counts);
  for (const [column, count] of least) raised.set(column, Math.max(count, raised.get(column) ?? 0));
  return raised;
}

function priceWay(counts: Counts, wares: readonly Ware[], market: Market) {
  const bought = [...counts.keys()].flatMap((column) => wares[column] ?? []);
  const each = [...counts.values()];
  return {
    counts,
    costMinor: costOfCounts(bought, each, market),
    reachesLeast: reachesLeastOrders(bought, each, market),
  };
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
