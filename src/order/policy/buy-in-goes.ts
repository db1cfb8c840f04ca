// Policy: buying in goes. In: what is asked for over the draws, what another order is worth. Out: needs of the order, and from which
// chance on each paint is bought.
import type { OrderLine } from '../../model/order.js';
import { quantileOfRising } from '../../model/quantiles.js';
import type { Market } from '../open-market.js';
import type { Asked } from '../promise/list-asked.js';
import { potsBought } from './pot-bought.js';
import { thresholdOf } from './threshold.js';

export interface GoesInputs {
  readonly asked: readonly Asked[];
  readonly market: Market;
  readonly againMinor: number | undefined;
  /** What the next units take beyond the shelf: always bought, ml by paint. */
  readonly floors: ReadonlyMap<string, number>;
}

/** Chances from which on a pot of each paint on offer is bought now, 0 to 1. */
export type Thresholds = ReadonlyMap<string, number>;

export interface Goes {
  /** Likely usable ml by paint; below 0: so much more is there. */
  readonly needs: ReadonlyMap<string, number>;
  readonly thresholds: Thresholds;
}

/** Any order that buys some needs. */
type Buy = (needs: ReadonlyMap<string, number>) => Promise<readonly OrderLine[]>;

/**
 * Each paint at the quantile where the chance of needing more falls to its threshold (`thresholdOf`), and never less than the next
 * units take. Which pot would be bought shows once there is an order: so one is made by the cheapest pots, and then, by the
 * pots that it buys, the needs that count.
 */
export async function buyInGoes(inputs: GoesInputs, buy: Buy): Promise<Goes> {
  const first = needsAt(thresholdsFor([], inputs), inputs);
  const thresholds = thresholdsFor(await buy(first), inputs);
  return { needs: needsAt(thresholds, inputs), thresholds };
}

function thresholdsFor(
  ordered: readonly Pick<OrderLine, 'shop' | 'offer'>[],
  { market, againMinor }: Pick<GoesInputs, 'market' | 'againMinor'>,
): Thresholds {
  const pots = potsBought(ordered, market);
  return new Map([...pots].map(([paint, pot]) => [paint, thresholdOf({ ...pot, againMinor })]));
}

function needsAt(thresholds: Thresholds, { asked, floors }: GoesInputs): Map<string, number> {
  return new Map(
    asked.map(({ paint, rising }) => {
      const ml = quantileOfRising(rising, 1 - (thresholds.get(paint) ?? 0.5));
      return [paint, Math.max(ml, floors.get(paint) ?? Number.NEGATIVE_INFINITY)];
    }),
  );
}
