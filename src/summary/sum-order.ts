// Summary: an order counted. In: the order, the shelf. Out: its pots, what of it could be left out, what no shop has, other ways.
import type { Order, OrderedPot, OrderLine } from '../model/order.js';
import type { Alike, OrderSums, OtherWay } from '../model/order-sums.js';
import { listAlike, type Shelf } from './list-alike.js';

export function sumOrder(order: Order, shelf: Shelf): OrderSums {
  const alike = listAlike(order.unmet, shelf);
  return {
    alike,
    alikeCost: costOf(alike),
    pots: countPots(order),
    spare: new Map(order.lines.map((line) => [line, spareOf(line)])),
    ways: listWays(order),
  };
}

const costOf = (alike: readonly Alike[]): OrderSums['alikeCost'] => ({
  pots: alike.reduce((sum, { count }) => sum + count, 0),
  minor: alike.reduce((sum, { count, priceMinor = 0 }) => sum + count * priceMinor, 0),
  atLeast: alike.some(({ priceMinor }) => priceMinor === undefined),
});

/** Offers of a line that could be left out and every need would still be covered. */
function spareOf({ count, pots }: OrderLine): number {
  return count - Math.max(0, ...pots.map((pot) => offersUsed(pot, count)));
}

function offersUsed({ coversMl, overMl }: OrderedPot, count: number): number {
  const perOfferMl = (coversMl + overMl) / count;
  return perOfferMl === 0 ? 0 : Math.ceil(coversMl / perOfferMl - 1e-9);
}

/** All from one shop, and with sets passed over. */
function listWays({ bills, totalMinor, fromOneShop, passedOver }: Order): OtherWay[] {
  const isFromOne = bills.length === 1 ? bills[0]?.shop : undefined;
  const shops = fromOneShop
    .filter((one) => one.shop !== isFromOne || one.totalMinor !== totalMinor)
    .map((one) => ({ way: 'one shop' as const, ...one, extraMinor: one.totalMinor - totalMinor }));
  const sets = passedOver.map(({ shop, offer, extraMinor }) => ({
    ...{ way: 'with set' as const, set: { shop, offer } },
    ...{ totalMinor: totalMinor + extraMinor, extraMinor },
  }));
  return [...shops, ...sets].sort((a, b) => a.totalMinor - b.totalMinor);
}

export const countPots = ({ lines }: Pick<Order, 'lines'>): number =>
  lines.flatMap(({ pots }) => pots).reduce((sum, { count }) => sum + count, 0);
