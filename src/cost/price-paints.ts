// Cost: what a ml of each paint costs. In: stock, the order, what the work needs. Out: average price per usable ml.
import { type ExactMinor, exactMinor, sumMinor, zeroMinor } from '../model/money.js';
import type { OrderedPot } from '../model/order.js';
import type { CountedStock } from '../model/plan.js';

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
}

/**
 * What the need of a paint costs per ml: pots opened first, then the oldest, then those `ordered`. A paint that
 * nothing needs any more takes the price of the first supply that has one. Paint that neither a pot nor the order
 * gives has no price.
 */
export function pricePaint(
  needMl: number,
  stock: CountedStock | undefined,
  ordered: readonly OrderedPot[],
): PaintPrice {
  const supplies = [...shelfSupplies(stock), ...ordered.map(supplyOf)];
  if (needMl === 0) return priceOf(supplies.find(({ perMl }) => perMl !== undefined)?.perMl, 1);
  const priced = useUp(needMl, supplies).filter(({ perMl }) => perMl !== undefined);
  const pricedMl = priced.reduce((total, { ml }) => total + ml, 0);
  if (pricedMl === 0) return priceOf(undefined, 0);
  const cost = sumMinor(priced.map(({ ml, perMl }) => (perMl ?? zeroMinor).times(ml)));
  return priceOf(cost.div(pricedMl), 1 - pricedMl / needMl < 1e-9 ? 1 : pricedMl / needMl);
}

const priceOf = (perMl: ExactMinor | undefined, share: number): PaintPrice => ({
  perMl,
  pricedShare: perMl === undefined ? 0 : share,
});

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
  return (stock?.pots ?? []).map(({ usableMl, fullUsableMl, priceMinor }) => ({
    ml: usableMl,
    perMl: priceMinor === undefined ? undefined : exactMinor(priceMinor).div(fullUsableMl),
  }));
}

const supplyOf = ({ count, usableMl, costMinor }: OrderedPot): Supply => ({
  ml: count * usableMl,
  perMl: exactMinor(costMinor).div(usableMl * count),
});
