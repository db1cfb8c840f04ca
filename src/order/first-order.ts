// Order: the first incumbent, found quickly and not proved, for the solver to better. In: needs, wares, market. Out: counts.
import { at } from '../model/at.js';
import type { OrderNeed } from '../model/order.js';
import { choosePots, type Pack } from './choose-pots.js';
import type { Market } from './open-market.js';
import { pareOrder, type Shelves } from './pare-order.js';
import type { Ware } from './ware.js';
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
  const all = needs.map(({ paint, ml }) => ({ ml, packs: packsOf(holders.get(paint) ?? [], wares) }));
  const least = new Map(held.flatMap((count, column) => (count > 0 ? [[column, count] as const] : [])));
  const best = [all, ...splitByShop(all)]
    .flatMap((pots) => buyEach(pots) ?? [])
    .map((counts) => priceWay(raise(counts, least), wares, market))
    .filter(({ reachesLeast }) => reachesLeast)
    .sort((a, b) => a.costMinor - b.costMinor)[0];
  if (best === undefined) return pareOrder(needs, shelves, market);
  return wares.map((_, column) => best.counts.get(column) ?? 0);
}

/** How many of each ware, by its place in the list; of those left out, none. */
type Counts = ReadonlyMap<number, number>;

interface PlacedPack extends Pack {
  readonly column: number;
  readonly shop: string;
}

/** A need, and the pots that hold it alone. */
interface PotsOfNeed {
  readonly ml: number;
  readonly packs: readonly PlacedPack[];
}

function packsOf(
  holders: readonly { readonly column: number; readonly ml: number }[],
  wares: readonly Ware[],
): PlacedPack[] {
  const packs: PlacedPack[] = [];
  for (const { column, ml } of holders) {
    const { offer, mlOf, pots, limit } = at(wares, column);
    if (mlOf.size > 1) continue;
    packs.push({ column, shop: offer.shop, ml, priceMinor: offer.priceMinor, pots, limit });
  }
  return packs;
}

/** The same in each shop by itself that has pots for every need. */
function splitByShop(needs: readonly PotsOfNeed[]): PotsOfNeed[][] {
  const met = new Map<string, number>();
  for (const { packs } of needs)
    for (const shop of new Set(packs.map((pack) => pack.shop))) met.set(shop, (met.get(shop) ?? 0) + 1);
  const able = new Map(
    [...met].flatMap(([shop, count]) => (count === needs.length ? [[shop, newPots(needs)] as const] : [])),
  );
  for (const [index, { packs }] of needs.entries())
    for (const pack of packs) able.get(pack.shop)?.[index]?.packs.push(pack);
  return [...able.values()];
}

const newPots = (needs: readonly PotsOfNeed[]) => needs.map(({ ml }) => ({ ml, packs: [] as PlacedPack[] }));

/** The cheapest whole pots for each paint by itself; undefined where they do not cover it. */
function buyEach(needs: readonly PotsOfNeed[]): Counts | undefined {
  const counts = new Map<number, number>();
  for (const { ml, packs } of needs) {
    const chosen = choosePots(ml, packs);
    if (chosen === undefined) return undefined;
    for (const [place, { column }] of packs.entries()) {
      const count = at(chosen, place);
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
  const bought = [...counts.keys()].map((column) => at(wares, column));
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
    const count = at(counts, index);
    if (count > 0) goods.set(offer.shop, (goods.get(offer.shop) ?? 0) + offer.priceMinor * count);
  });
  return [...goods].every(([shop, sum]) => sum >= (shops.get(shop)?.leastOrderMinor ?? 0));
}
