// Order: what brings low pots back to their level, beyond the army's order. In: stock, that order, the market.
// Out: an order of its own.
import type { Order, OrderNeed, PaintStock, ShopBill } from '../model/plan.js';
import { billShops } from './bill-shops.js';
import type { ChooseOrder, Market } from './choose-order.js';

/**
 * The order that restocks the shelf once the army's order is placed: what that order takes is no longer available,
 * and postage is what the shops charge beyond it (negative where both together travel free).
 */
export function orderRestock(
  { stock, army, choose }: { stock: readonly PaintStock[]; army: Order; choose: ChooseOrder },
  market: Market,
): Order {
  const order = choose(findRestock(stock, army), { ...market, offers: offersLeft(army, market) });
  const bills = billsBeyond(army, order, market);
  const postageMinor = bills.reduce((total, bill) => total + bill.postageMinor, 0);
  const goodsMinor = bills.reduce((total, bill) => total + bill.goodsMinor, 0);
  return { ...order, bills, postageMinor, totalMinor: goodsMinor + postageMinor };
}

function offersLeft({ lines }: Order, { offers }: Market): Market['offers'] {
  const taken = new Map(lines.map(({ shop, offer, count }) => [`${shop}\n${offer}`, count]));
  return offers.map((one) =>
    one.available === undefined
      ? one
      : { ...one, available: one.available - (taken.get(`${one.shop}\n${one.offer}`) ?? 0) },
  );
}

/** Bills of both orders together less the army's own, for the shops of the second order. */
function billsBeyond(army: Order, order: Order, { shops }: Market): ShopBill[] {
  const before = new Map(army.bills.map((bill) => [bill.shop, bill]));
  const mine = new Set(order.lines.map(({ shop }) => shop));
  return billShops([...army.lines, ...order.lines], shops)
    .filter(({ shop }) => mine.has(shop))
    .map((bill) => ({
      ...bill,
      goodsMinor: bill.goodsMinor - (before.get(bill.shop)?.goodsMinor ?? 0),
      postageMinor: bill.postageMinor - (before.get(bill.shop)?.postageMinor ?? 0),
    }));
}

/**
 * For each paint that runs low, what is missing to its shelf level after the army is painted and its order has come:
 * `keep - (have + bought - need)`. Pots bought for the army that bring a paint over its level ask for nothing more.
 */
export function findRestock(stock: readonly PaintStock[], order: Order): OrderNeed[] {
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
    .filter(({ ml }) => ml > 1e-9);
}
