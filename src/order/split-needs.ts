// Order: what can be met and what can't. In: needs, market. Out: each need up to what the offers hold, and the rest.
import type { OrderNeed } from '../model/order.js';
import { sameMl } from '../model/volume.js';
import { type Market, openMarket } from './open-market.js';

/** All the usable ml of each paint that can be bought; Infinity where an offer has no limit. */
export type Supply = ReadonlyMap<string, number>;

/** Adds up the offers of every shop that can reach its own least order. */
export function measureSupply(market: Market): Supply {
  const supply = new Map<string, number>();
  for (const { mlOf, limit } of openMarket(market).stock) {
    for (const [paint, ml] of mlOf) supply.set(paint, (supply.get(paint) ?? 0) + ml * limit);
  }
  return supply;
}

/** What of some needs lies within a supply, and what is beyond it. */
export interface SplitNeeds {
  readonly within: readonly OrderNeed[];
  readonly unmet: readonly OrderNeed[];
}

export function splitNeeds(needs: readonly OrderNeed[], supply: Supply): SplitNeeds {
  const split = needs.map(({ paint, ml }) => ({ paint, ml, heldMl: Math.min(ml, supply.get(paint) ?? 0) }));
  return {
    within: split.flatMap(({ paint, heldMl }) => (heldMl > 0 ? [{ paint, ml: heldMl }] : [])),
    unmet: split.flatMap(({ paint, ml, heldMl }) =>
      ml - heldMl > sameMl ? [{ paint, ml: ml - heldMl }] : [],
    ),
  };
}
