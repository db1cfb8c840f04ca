// Cost: what a ml of each paint costs. In: stock, the order, what the work needs. Out: average price per usable ml.
import { type ExactMinor, exactMinor, sumMinor, zeroMinor } from '../model/money.js';
import { newestPaid } from '../model/newest-paid.js';
import type { OrderedPot } from '../model/order.js';
import type { CountedStock, ShelfPot } from '../model/stock.js';
import { sameMl } from '../model/volume.js';

/** A supply of one paint in the order in which it is used up. */
interface Supply {
  readonly ml: number;
  /** Minor units per usable ml; undefined: unpriced. */
  readonly perMl: ExactMinor | undefined;
}

export interface PaintPrice {
  /** Average over the priced part of the need; undefined where nothing of it has a price. */
  readonly perMl: ExactMinor | undefined;
  /** Share of the need, 0 to 1, that has a price. */
  readonly pricedShare: number;
  /** Of the need, what is priced like the newest pot: neither a pot nor the order gives it. */
  readonly likeNewestMl: number;
}

/**
 * What the need of a paint costs per ml: pots opened first, then the oldest, then those `ordered`; what neither gives costs
 * what the newest pot with a price did. A paint that nothing needs any more takes the price of the first supply that has one.
 */
export function pricePaint(
  needMl: number,
  stock: CountedStock | undefined,
  ordered: readonly OrderedPot[],
): PaintPrice {
  const given = [...shelfSupplies(stock), ...ordered.map(supplyOf)];
  const supplies = [...given, ...anotherLike(stock)];
  if (needMl === 0) return priceOf(supplies.find(({ perMl }) => perMl !== undefined)?.perMl, 1, 0);
  const priced = useUp(needMl, supplies).filter(({ perMl }) => perMl !== undefined);
  const pricedMl = sumMl(priced);
  if (pricedMl === 0) return priceOf(undefined, 0, 0);
  const cost = sumMinor(priced.map(({ ml, perMl }) => (perMl ?? zeroMinor).times(ml)));
  const share = 1 - pricedMl / needMl < 1e-9 ? 1 : pricedMl / needMl;
  const beyondMl = needMl - sumMl(given);
  return priceOf(
    cost.div(pricedMl),
    share,
    supplies.length > given.length && beyondMl > sameMl ? beyondMl : 0,
  );
}

const sumMl = (supplies: readonly Supply[]): number => supplies.reduce((total, { ml }) => total + ml, 0);

const priceOf = (perMl: ExactMinor | undefined, share: number, likeNewestMl: number): PaintPrice => ({
  perMl,
  pricedShare: perMl === undefined ? 0 : share,
  likeNewestMl,
});

/** As much more as is wanted, at the price of the newest pot. */
function anotherLike(stock: CountedStock | undefined): Supply[] {
  const newest = newestPaid(stock?.pots ?? []);
  return newest === undefined ? [] : [{ ml: Number.POSITIVE_INFINITY, perMl: perMlOf(newest) }];
}

/** The supplies that a need draws on, in turn, each with the ml drawn. */
function useUp(needMl: number, supplies: readonly Supply[]): Supply[] {
  let restMl = needMl;
  const used: Supply[] = [];
  for (const { ml, perMl } of supplies) {
    const drawnMl = Math.min(ml, restMl);
    if (drawnMl > 0) used.push({ ml: drawnMl, perMl });
    restMl -= drawnMl;
  }
  return used;
}

function shelfSupplies(stock: CountedStock | undefined): Supply[] {
  return (stock?.pots ?? []).map((pot) => ({ ml: pot.usableMl, perMl: perMlOf(pot) }));
}

const perMlOf = ({ fullUsableMl, priceMinor }: ShelfPot): ExactMinor | undefined =>
  priceMinor === undefined ? undefined : exactMinor(priceMinor).div(fullUsableMl);

const supplyOf = ({ count, usableMl, costMinor }: OrderedPot): Supply => ({
  ml: count * usableMl,
  perMl: exactMinor(costMinor).div(usableMl * count),
});
