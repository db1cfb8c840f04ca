// Ranges: the promise and what it costs. In: drawn army, how sure, ways to buy. Out: what to buy for it, kept on draws that
// the order has not seen, and the cash for more and less of it.

import type { DrawnLack } from '../model/draws.js';
import type { Order, OrderNeed } from '../model/order.js';
import type { Promised, PromiseLevel } from '../model/ranges.js';
import { type Bought, chanceMet } from './fill-shelf.js';
import { asNeeds, onlyPaints, openPromise, type ToBuy } from './promise-needs.js';
import { takeBack } from './take-back.js';

/** What an order costs, and whether that is proved. */
type Priced = Bought & Pick<Order, 'totalMinor' | 'aboveBestMinor'>;

export interface PromiseInputs {
  /** The draws that the order is made from. */
  readonly drawn: DrawnLack;
  /** Others, to check it on. */
  readonly fresh: DrawnLack;
  /** Likely need less the shelf, by paint: what a plan without any ranges would buy. */
  readonly likely: readonly OrderNeed[];
  readonly surePercent: number;
  readonly canBuy: (paint: string) => boolean;
  /** The least cash for some needs, searched for briefly. */
  readonly priceNeeds: (needs: readonly OrderNeed[]) => Promise<Priced>;
  /** The army's own order. */
  readonly order: (needs: readonly OrderNeed[]) => Promise<Order>;
}

export interface KeptPromise {
  readonly order: Order;
  readonly promised: Promised;
}

const usualLevels = [50, 80, 90, 95];

/**
 * The order that lets the whole army finish in `surePercent` of draws: needs at one common quantile, an order for them, what
 * of it the promise does not need taken back, and the order for the rest. The least cash found this way, not proved the
 * least of all. Each level's cash is found alike; more sureness never costs less.
 */
export async function keepPromise(inputs: PromiseInputs): Promise<KeptPromise> {
  const { drawn, fresh, surePercent, canBuy } = inputs;
  const offering = { ...inputs, offered: onlyPaints(drawn, canBuy), promiseAt: openPromise(drawn, canBuy) };
  const others = await findOthers(offering);
  const { order, toBuy } = await findOwn(offering, others);
  const likely = await inputs.priceNeeds(inputs.likely);
  const freshOffered = onlyPaints(fresh, canBuy);
  return {
    order,
    promised: {
      surePercent,
      met: chanceMet(drawn, order),
      metOnFreshDraws: chanceMet(fresh, order),
      metOfOffered: chanceMet(freshOffered, order),
      toBuyMl: toBuy,
      likely: { cashMinor: likely.totalMinor, met: chanceMet(freshOffered, likely) },
      levels: priceLevels([...others, { surePercent, order }], freshOffered),
    },
  };
}

interface Offering extends PromiseInputs {
  /** The draws, of paints on offer alone. */
  readonly offered: DrawnLack;
  readonly promiseAt: (sure: number) => ToBuy;
}

/** What was found for one level. */
interface FoundLevel<Found extends Priced = Priced> {
  readonly surePercent: number;
  readonly order: Found;
  readonly toBuy: ToBuy;
}

/** The orders for the usual levels, other than the painter's own. */
async function findOthers(offering: Offering): Promise<FoundLevel[]> {
  const found: FoundLevel[] = [];
  for (const surePercent of usualLevels) {
    if (surePercent === offering.surePercent) continue;
    found.push(await findOrder(surePercent, offering, offering.priceNeeds));
  }
  return found;
}

/** The painter's own order. Where more sureness was found for less cash, the needs of that are ordered instead. */
async function findOwn(offering: Offering, others: readonly FoundLevel[]): Promise<FoundLevel<Order>> {
  const { surePercent, order: place } = offering;
  const own = await findOrder(surePercent, offering, place);
  const surer = others.filter((one) => one.surePercent > surePercent);
  const [cheapest] = surer.sort((a, b) => a.order.totalMinor - b.order.totalMinor);
  if (cheapest === undefined || cheapest.order.totalMinor >= own.order.totalMinor) return own;
  return { ...cheapest, surePercent, order: await place(asNeeds(cheapest.toBuy)) };
}

/** The order for a promise; `finish` makes the last search for it. */
async function findOrder<Found extends Priced>(
  surePercent: number,
  { offered, promiseAt, priceNeeds }: Offering,
  finish: (needs: readonly OrderNeed[]) => Promise<Found>,
): Promise<FoundLevel<Found>> {
  const sure = surePercent / 100;
  const asked = promiseAt(sure);
  const isKept = (order: Bought): boolean => chanceMet(offered, order).chance >= sure - 1e-9;
  const first = await priceNeeds(asNeeds(asked));
  if (isKept(first)) {
    const toBuy = takeBack(offered, first, { toBuy: asked, sure });
    const order = await finish(asNeeds(toBuy));
    if (isKept(order)) return { surePercent, order, toBuy };
  }
  // The offers do not reach the promise, or other pots turned up in the last search: what was asked first is the best there is.
  return { surePercent, order: await finish(asNeeds(asked)), toBuy: asked };
}

/** Each level's cash by rising sureness, and how often its order does on draws of paints on offer. */
function priceLevels(
  found: readonly Pick<FoundLevel, 'surePercent' | 'order'>[],
  offered: DrawnLack,
): PromiseLevel[] {
  const levels = found.map(({ surePercent, order }) => ({
    surePercent,
    cashMinor: order.totalMinor,
    met: chanceMet(offered, order),
    proved: order.aboveBestMinor === 0,
  }));
  return lowerToSurer(levels.sort((a, b) => a.surePercent - b.surePercent));
}

/** An order for a surer level also does for a less sure one. */
function lowerToSurer(levels: readonly PromiseLevel[]): PromiseLevel[] {
  const lowered: PromiseLevel[] = [];
  for (const level of levels.toReversed()) {
    const surer = lowered[0];
    lowered.unshift(
      surer !== undefined && surer.cashMinor < level.cashMinor
        ? { ...surer, surePercent: level.surePercent }
        : level,
    );
  }
  return lowered;
}
