// Order: all that could be bought, less what the needs can do without. In: needs, wares, market. Out: counts.
import { at } from '../model/at.js';
import type { OrderNeed } from '../model/order.js';
import { sameMl } from '../model/volume.js';
import { type Holders, heldMl, placesByShop } from './list-wares.js';
import type { Market } from './open-market.js';
import type { Ware } from './ware.js';

/** Wares, and which of them hold each paint. */
export interface Shelves {
  readonly wares: readonly Ware[];
  readonly holders: Holders;
  /** How many of each ware the order must hold. */
  readonly held: readonly number[];
}

interface Goods {
  minor: number;
  count: number;
}

/** An order from which something is taken, step by step. */
interface Pared extends Shelves {
  readonly counts: number[];
  /** By needed paint, what the counts hold beyond the need, in usable ml. */
  readonly spareMl: Map<string, number>;
  /** Of each shop: goods in minor units, and how many offers. */
  readonly goodsOf: Map<string, Goods>;
  readonly leastOf: (shop: string) => number;
}

/**
 * The most of everything, which covers whatever can be covered; of that whole shops are taken away while the others do, the
 * dearest first, and then the wares that cost most for what they cover, as many as can go. Every need stays covered and every
 * least order reached; nothing more could be left out.
 */
export function pareOrder(needs: readonly OrderNeed[], shelves: Shelves, { shops }: Market): number[] {
  const { wares, holders, held } = shelves;
  const counts = wares.map(({ most }, place) => Math.max(most, at(held, place)));
  const pared: Pared = {
    ...shelves,
    counts,
    spareMl: new Map(
      needs.map(({ paint, ml }) => [paint, heldMl(holders, paint, (place) => at(counts, place)) - ml]),
    ),
    goodsOf: sumGoods(wares, counts),
    leastOf: (shop) => shops.get(shop)?.leastOrderMinor ?? 0,
  };
  leaveShops(pared);
  leaveWares(pared, new Map(needs.map(({ paint, ml }) => [paint, ml])));
  return counts;
}

function sumGoods(wares: readonly Ware[], counts: readonly number[]): Map<string, Goods> {
  const goods = new Map<string, Goods>();
  for (const [place, { offer }] of wares.entries()) addGoods(goods, offer, at(counts, place));
  return goods;
}

function addGoods(goodsOf: Map<string, Goods>, { shop, priceMinor }: Ware['offer'], count: number): void {
  const goods = goodsOf.get(shop) ?? { minor: 0, count: 0 };
  goodsOf.set(shop, goods);
  goods.minor += priceMinor * count;
  goods.count += count;
}

function leaveShops(pared: Pared): void {
  const { wares, held, counts, goodsOf, spareMl } = pared;
  const minorOf = (shop: string): number => goodsOf.get(shop)?.minor ?? 0;
  const dearest = [...placesByShop(wares)].sort(([a], [b]) => minorOf(b) - minorOf(a));
  for (const [, places] of dearest) {
    if (places.some((place) => at(held, place) > 0)) continue;
    const before = places.map((place) => at(counts, place));
    for (const [index, place] of places.entries()) take(pared, place, at(before, index));
    const paints = places.flatMap((place) => [...at(wares, place).mlOf.keys()]);
    if (paints.every((paint) => (spareMl.get(paint) ?? 0) >= -sameMl)) continue;
    for (const [index, place] of places.entries()) take(pared, place, -at(before, index));
  }
}

function leaveWares(pared: Pared, needOf: ReadonlyMap<string, number>): void {
  const { wares, held, counts } = pared;
  const worth = wares.map(({ offer, mlOf }) => {
    const covers = [...mlOf].reduce((sum, [paint, ml]) => {
      const need = needOf.get(paint);
      return need === undefined ? sum : sum + Math.min(ml, need) / need;
    }, 0);
    return offer.priceMinor / covers;
  });
  const dearest = [...wares.keys()].sort((a, b) => at(worth, b) - at(worth, a) || b - a);
  for (const place of dearest) {
    const most = at(counts, place) - at(held, place);
    take(pared, place, Math.min(most, spareCount(pared, place)));
  }
}

/** How many of a ware the needs and its shop's least order can do without. */
function spareCount({ wares, counts, spareMl, goodsOf, leastOf }: Pared, place: number): number {
  const count = at(counts, place);
  if (count === 0) return 0;
  const { offer, mlOf } = at(wares, place);
  const byNeeds = [...mlOf].flatMap(([paint, ml]) => {
    const spare = spareMl.get(paint);
    return spare === undefined ? [] : [Math.floor((spare + sameMl) / ml)];
  });
  const spare = Math.max(0, Math.min(count, ...byNeeds));
  const goods = goodsOf.get(offer.shop);
  const isAll = spare === goods?.count;
  if (isAll || offer.priceMinor === 0) return spare;
  const overLeast = Math.max(0, (goods?.minor ?? 0) - leastOf(offer.shop));
  return Math.min(spare, Math.floor(overLeast / offer.priceMinor));
}

function take({ wares, counts, spareMl, goodsOf }: Pared, place: number, count: number): void {
  if (count === 0) return;
  const { offer, mlOf } = at(wares, place);
  counts[place] = at(counts, place) - count;
  addGoods(goodsOf, offer, -count);
  for (const [paint, ml] of mlOf) {
    const spare = spareMl.get(paint);
    if (spare !== undefined) spareMl.set(paint, spare - ml * count);
  }
}
