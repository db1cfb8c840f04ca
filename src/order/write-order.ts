// Order: counts of wares as an order to place. In: wares and counts, shops, needs. Out: lines, bills, sums.
import { at } from '../model/at.js';
import type { Order, OrderedPot, OrderLine, OrderNeed } from '../model/order.js';
import { billShops } from './bill-shops.js';
import { type Market, usableMlOf } from './open-market.js';
import { findSinglePrices, priceSet, type SinglePrices } from './price-set.js';
import type { Ware } from './ware.js';

/** Goods and postage of counts of wares, in whole minor units; no wares, nothing. */
export function costOfCounts(wares: readonly Ware[], counts: readonly number[], { shops }: Market): number {
  const goods = wares.map(({ offer }, index) => ({
    shop: offer.shop,
    costMinor: offer.priceMinor * at(counts, index),
  }));
  return billShops(
    goods.filter(({ costMinor }, index) => costMinor > 0 || at(counts, index) > 0),
    shops,
  ).reduce((total, bill) => total + bill.goodsMinor + bill.postageMinor, 0);
}

/** Counts of each ware, and how sure it is that none cost less. */
export interface Chosen {
  readonly wares: readonly Ware[];
  readonly counts: readonly number[];
  readonly totalMinor: number;
  /** At most this much above the best possible; 0: proved. */
  readonly aboveBestMinor: number;
  /** Proved, but not all counts at that cost were compared: others may take fewer shops or pots. */
  readonly tiesOpen?: true;
}

/** The order that buys what was chosen; each line says which needs it covers and what it leaves over. */
export function writeOrder(
  { wares, counts, totalMinor, aboveBestMinor, tiesOpen }: Chosen,
  needs: readonly OrderNeed[],
  market: Market,
): Pick<Order, 'lines' | 'bills' | 'totalMinor' | 'postageMinor' | 'aboveBestMinor' | 'tiesOpen'> {
  const restOf = new Map(needs.map(({ paint, ml }) => [paint, ml]));
  const writing = { assumptions: market.assumptions, singles: findSinglePrices(market.offers), restOf };
  const lines = wares.flatMap((ware, index) => lineOf(ware, at(counts, index), writing));
  const bills = billShops(lines, market.shops);
  const postageMinor = bills.reduce((total, bill) => total + bill.postageMinor, 0);
  return { lines, bills, totalMinor, postageMinor, aboveBestMinor, ...(tiesOpen ? { tiesOpen } : {}) };
}

interface Writing extends Pick<Market, 'assumptions'> {
  readonly singles: SinglePrices;
  /** What the lines so far leave of each need. */
  readonly restOf: Map<string, number>;
}

/** The line for so many of a ware; none for none. Takes what it covers off the rest of each need. */
function lineOf(ware: Ware, count: number, { assumptions, singles, restOf }: Writing): OrderLine[] {
  if (count === 0) return [];
  const { offer } = ware;
  const costMinor = offer.priceMinor * count;
  const shares = priceSet(offer.pots, costMinor, singles);
  const pots = offer.pots.map((pot, index): OrderedPot => {
    const { paint, sizeMl, container, code } = pot;
    const usableMl = usableMlOf(pot, assumptions);
    const gotMl = usableMl * pot.count * count;
    const rest = restOf.get(paint) ?? 0;
    const coversMl = cutTrace(Math.min(rest, gotMl));
    restOf.set(paint, rest - coversMl);
    return {
      paint,
      sizeMl,
      container,
      count: pot.count * count,
      usableMl,
      coversMl,
      overMl: cutTrace(gotMl - coversMl),
      costMinor: at(shares, index),
      ...(code === undefined ? {} : { code }),
    };
  });
  return [{ shop: offer.shop, offer: offer.offer, count, priceMinor: offer.priceMinor, costMinor, pots }];
}

/** What subtraction leaves of nothing is nothing. */
const cutTrace = (ml: number): number => (ml < 1e-6 ? 0 : ml);
