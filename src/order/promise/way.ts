// Promise: one way to buy, held against the draws. In: counts of wares, what is asked for. Out: what it costs, where it fails,
// what it covers.
import { at } from '../../model/at.js';
import type { OrderedPot } from '../../model/order.js';
import { sameMl } from '../../model/volume.js';
import type { Container } from '../../model/words.js';
import { usableMlOf } from '../open-market.js';
import type { Ware } from '../ware.js';
import { costOfCounts } from '../write-order.js';
import type { Asked } from './list-asked.js';
import type { OpenPromise } from './open-promise.js';

export interface Way {
  readonly wares: readonly Ware[];
  readonly counts: readonly number[];
  readonly totalMinor: number;
  /** For each draw: 1 where something runs out all the same. */
  readonly fails: Uint8Array;
  readonly failing: number;
}

export function wayOf(
  wares: readonly Ware[],
  counts: readonly number[],
  open: Pick<OpenPromise, 'asked' | 'draws' | 'market'>,
): Way {
  const { assumptions } = open.market;
  const pots = wares.flatMap(({ offer }, place) =>
    offer.pots.map((pot) => ({
      ...{ paint: pot.paint, container: pot.container, usableMl: usableMlOf(pot, assumptions) },
      count: pot.count * at(counts, place),
    })),
  );
  const fails = markFailing(pots, open);
  let failing = 0;
  for (let draw = 0; draw < fails.length; draw++) failing += fails[draw] as number;
  return { wares, counts, totalMinor: costOfCounts(wares, counts, open.market), fails, failing };
}

type BoughtPot = Pick<OrderedPot, 'paint' | 'container' | 'usableMl' | 'count'>;

/** For each draw 1 where some paint runs out in spite of the pots. */
export function markFailing(
  pots: readonly BoughtPot[],
  { asked, draws }: Pick<OpenPromise, 'asked' | 'draws'>,
): Uint8Array {
  const bought = new Map<string, Map<Container, number>>();
  for (const { paint, container, usableMl, count } of pots) {
    const known = bought.get(paint) ?? new Map<Container, number>();
    bought.set(paint, known.set(container, (known.get(container) ?? 0) + usableMl * count));
  }
  const fails = new Uint8Array(draws);
  for (const one of asked) markPaint(fails, one, [...(bought.get(one.paint) ?? [])]);
  return fails;
}

/** Marks the draws in which a paint runs out in spite of so much of it, by container. */
export function markPaint(
  fails: Uint8Array,
  { lackMl, gains }: Asked,
  bought: readonly (readonly [Container, number])[],
): void {
  const left = lackMl.slice();
  for (const [container, ml] of bought) {
    const gain = gains.get(container);
    for (let draw = 0; draw < left.length; draw++)
      left[draw] = (left[draw] as number) - (gain === undefined ? ml : ml * (gain[draw] as number));
  }
  for (let draw = 0; draw < left.length; draw++) if ((left[draw] as number) > sameMl) fails[draw] = 1;
}

/** Likely usable ml that a way buys of each paint. */
export function boughtIn({ wares, counts }: Pick<Way, 'wares' | 'counts'>): Map<string, number> {
  const bought = new Map<string, number>();
  for (const [place, { mlOf }] of wares.entries()) {
    const count = at(counts, place);
    for (const [paint, ml] of count > 0 ? mlOf : []) bought.set(paint, (bought.get(paint) ?? 0) + ml * count);
  }
  return bought;
}

/** What of each paint the draws ask for that are not marked, at the most. */
export function needsOf({ fails }: Pick<Way, 'fails'>, asked: readonly Asked[]): Map<string, number> {
  return new Map(asked.map(({ paint, ml }) => [paint, mostOf(ml, fails)]));
}

function mostOf(ml: Float64Array, isLeftOut: Uint8Array): number {
  let most = Number.NEGATIVE_INFINITY;
  for (let draw = 0; draw < ml.length; draw++)
    if (isLeftOut[draw] === 0 && (ml[draw] as number) > most) most = ml[draw] as number;
  return Number.isFinite(most) ? most : 0;
}
