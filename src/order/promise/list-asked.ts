// Promise: what must be bought in each draw. In: what the army lacks over the draws, the market. Out: a column of ml for each
// paint on offer that lacks anything.
import type { DrawnLack, GainOf, LackingPaint } from '../../model/draws.js';
import { sameMl } from '../../model/volume.js';
import type { Container } from '../../model/words.js';
import type { Market } from '../open-market.js';
import { containersOnOffer } from '../price-buying.js';

/** A paint on offer over all draws. */
export interface Asked {
  readonly paint: string;
  /** Likely usable ml that must be bought at the least in each draw; at or below 0: nothing. */
  readonly ml: Float64Array;
  /** The same in rising order. */
  readonly rising: Float64Array;
  /** Usable ml, need less shelf. */
  readonly lackMl: Float64Array;
  /** What a ml of each container on offer gives in each draw; undefined: just that. */
  readonly gains: ReadonlyMap<Container, Float64Array | undefined>;
}

/** Every paint on offer that lacks anything in any draw. */
export function listAsked({ paints, gainOf }: DrawnLack, market: Market): Asked[] {
  const containersOf = containersOnOffer(market);
  return paints.flatMap((one) => {
    const containers = containersOf.get(one.paint);
    if (containers === undefined) return [];
    const asked = askFor(one, containers, gainOf);
    return (asked.rising.at(-1) ?? 0) > sameMl ? [asked] : [];
  });
}

/**
 * A lack over the largest gain of any container on offer: whatever is bought, less of it never does.
 */
function askFor({ paint, lackMl }: LackingPaint, containers: Iterable<Container>, gainOf: GainOf): Asked {
  const gains = new Map([...containers].map((container) => [container, gainOf(container)]));
  const [only, ...others] = gains.values();
  const ml = lackMl.slice();
  for (let draw = 0; draw < ml.length; draw++) {
    let most = only?.[draw] ?? 1;
    for (const gain of others) most = Math.max(most, gain?.[draw] ?? 1);
    ml[draw] = (ml[draw] as number) / most;
  }
  return { paint, ml, rising: ml.slice().sort(), lackMl, gains };
}
