// Ranges: the promise and what it costs. In: drawn army, how sure, ways to buy. Out: what to buy for it, kept on draws that
// the order has not seen, and the cash for more and less of it.
import type { Order, OrderNeed } from '../model/order.js';
import type { Promised, PromiseLevel } from '../model/ranges.js';
import type { DrawnArmy } from './draw-army.js';
import { type Bought, chanceMet } from './fill-shelf.js';
import { asNeeds, onlyPaints, openPromise, type ToBuy } from './promise-needs.js';
import { takeBack } from './take-back.js';

/** What an order costs, and whether that is proved. */
type Priced = Bought & Pick<Order, 'totalMinor' | 'aboveBestMinor'>;

export interface PromiseInputs {
  /** The draws that the order is made from. */
  readonly drawn: DrawnArmy;
  /** Others, to check it on. */
  readonly fresh: DrawnArmy;
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
  const { order, toBuy } = await findOrder(surePercent, offering, inputs.order);
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
      levels: await priceLevels(offering, { surePercent, order }),
    },
  };
}

interface Offering extends PromiseInputs {
  /** The draws, of paints on offer alone. */
  readonly offered: DrawnArmy;
  readonly promiseAt: (sure: number) => ToBuy;
}

/** The order for a promise; `finish` makes the last search for it. */
async function findOrder<Found extends Priced>(
  surePercent: number,
  { offered, promiseAt, priceNeeds }: Offering,
  finish: (needs: readonly OrderNeed[]) => Promise<Found>,
): Promise<{ readonly order: Found; readonly toBuy: ToBuy }> {
  const sure = surePercent / 100;
  const asked = promiseAt(sure);
  const isKept = (order: Bought): boolean => chanceMet(offered, order).chance >= sure - 1e-9;
  const first = await priceNeeds(asNeeds(asked));
  if (isKept(first)) {
    const toBuy = takeBack(offered, first, { toBuy: asked, sure });
    const order = await finish(asNeeds(toBuy));
    if (isKept(order)) return { order, toBuy };
  }
  // The offers do not reach the promise, or other pots turned up in the last search: what was asked first is the best there is.
  return { order: await finish(asNeeds(asked)), toBuy: asked };
}

async function priceLevels(
  inputs: Offering,
  own: { readonly surePercent: number; readonly order: Order },
): Promise<PromiseLevel[]> {
  const percents = [...new Set([...usualLevels, own.surePercent])].sort((a, b) => a - b);
  const offered = onlyPaints(inputs.fresh, inputs.canBuy);
  const levels: PromiseLevel[] = [];
  for (const surePercent of percents) {
    const isOwn = surePercent === own.surePercent;
    const priced = isOwn ? own.order : (await findOrder(surePercent, inputs, inputs.priceNeeds)).order;
    levels.push({
      surePercent,
      cashMinor: priced.totalMinor,
      met: chanceMet(offered, priced),
      proved: priced.aboveBestMinor === 0,
    });
  }
  return lowerToSurer(levels);
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
