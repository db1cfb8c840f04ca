// Order: what brings low pots back to their level, beyond the army's order. In: stock, that order, the chosen way's margin, the
// market. Out: an order of its own.
import { at } from '../model/at.js';
import type { Order, OrderNeed, ShopBill } from '../model/order.js';
import type { Offer } from '../model/sheets.js';
import type { PaintStock } from '../model/stock.js';
import { sameMl } from '../model/volume.js';
import { billShops } from './bill-shops.js';
import { type Buying, settledCounts } from './choose-counts.js';
import { statusOf } from './choose-order.js';
import type { Market } from './open-market.js';
import { measureSupply, splitNeeds } from './split-needs.js';
import { writeOrder } from './write-order.js';

export interface RestockInputs {
  readonly stock: readonly PaintStock[];
  readonly army: Order;
  /** What the chosen way to buy provides for over the likely need of a paint. */
  readonly marginOf: (paint: string) => number;
}

/**
 * The order that restocks the shelf once the army's order is placed: both needs together, with the army's offers
 * held, less that order. The army is taken to need what the chosen way provides for, and no less than is likely. So goods of both count towards free postage, and postage is what the shops charge beyond the
 * army's (negative where only both together travel free). Nothing low: an empty order.
 */
export async function orderRestock(
  { stock, army, marginOf }: RestockInputs,
  market: Market,
  buying: Buying,
): Promise<Order> {
  const needed = stock.map((one) => ({ ...one, needMl: one.needMl * Math.max(1, marginOf(one.paint)) }));
  const { within, unmet } = splitNeeds(needsOfBoth(needed), measureSupply(market));
  const held = countsOf(army, market);
  const both = await settledCounts(within, market, { ...buying, held });
  const counts = both.wares.map(({ offer }, index) => at(both.counts, index) - (held.get(offer) ?? 0));
  const chosen = { ...both, counts, totalMinor: both.totalMinor - army.totalMinor };
  const order = writeOrder(chosen, findRestock(needed, army), market);
  const bills = billsBeyond(army, order.lines, market);
  return {
    ...order,
    bills,
    postageMinor: bills.reduce((total, bill) => total + bill.postageMinor, 0),
    status: statusOf(chosen, beyond(unmet, army.unmet)),
    unmet: beyond(unmet, army.unmet),
    passedOver: [],
    fromOneShop: [],
  };
}

/** What must be bought of each paint to paint the army and end at the shelf level. */
function needsOfBoth(stock: readonly PaintStock[]): OrderNeed[] {
  return stock.flatMap(({ paint, runningLow, toBuyMl, keepMl, needMl, haveMl }) => {
    const ml = Math.max(toBuyMl, runningLow ? keepMl + needMl - haveMl : 0);
    return ml > sameMl ? [{ paint, ml }] : [];
  });
}

function countsOf({ lines }: Order, { offers }: Market): Map<Offer, number> {
  const counts = new Map(lines.map(({ shop, offer, count }) => [`${shop}\n${offer}`, count]));
  return new Map(offers.map((offer) => [offer, counts.get(`${offer.shop}\n${offer.offer}`) ?? 0]));
}

/** What of each need is unmet beyond what was unmet before. */
function beyond(unmet: readonly OrderNeed[], before: readonly OrderNeed[]): OrderNeed[] {
  const wasMl = new Map(before.map(({ paint, ml }) => [paint, ml]));
  return unmet
    .map(({ paint, ml }) => ({ paint, ml: ml - (wasMl.get(paint) ?? 0) }))
    .filter(({ ml }) => ml > sameMl);
}

/** Bills of both orders together less the army's own, for the shops of the second order. */
function billsBeyond(army: Order, lines: Order['lines'], { shops }: Market): ShopBill[] {
  const before = new Map(army.bills.map((bill) => [bill.shop, bill]));
  const mine = new Set(lines.map(({ shop }) => shop));
  return billShops([...army.lines, ...lines], shops)
    .filter(({ shop }) => mine.has(shop))
    .map((bill) => ({
      ...bill,
      goodsMinor: bill.goodsMinor - (before.get(bill.shop)?.goodsMinor ?? 0),
      postageMinor: bill.postageMinor - (before.get(bill.shop)?.postageMinor ?? 0),
      totalMinor: bill.totalMinor - (before.get(bill.shop)?.totalMinor ?? 0),
    }));
}

/**
 * For each paint that runs low, what is missing to its shelf level after the army is painted and its order has come:
 * `keep - (have + bought - need)`. Pots bought for the army that bring a paint over its level ask for nothing more.
 */
function findRestock(stock: readonly PaintStock[], order: Order): OrderNeed[] {
  const boughtMl = new Map<string, number>();
  for (const { paint, count, usableMl } of order.lines.flatMap(({ pots }) => pots)) {
    boughtMl.set(paint, (boughtMl.get(paint) ?? 0) + count * usableMl);
  }
  return stock
    .filter(({ runningLow }) => runningLow)
    .map(({ paint, keepMl, haveMl, needMl }) => {
      const afterMl = Math.max(0, haveMl + (boughtMl.get(paint) ?? 0) - needMl);
      return { paint, ml: keepMl - afterMl };
    })
    .filter(({ ml }) => ml > sameMl);
}
