// Promise: what all levels of it share. In: what the army lacks over the draws, the market. Out: what is asked for, what is on
// offer.
import type { DrawnLack } from '../../model/draws.js';
import type { Buying } from '../choose-counts.js';
import { type Market, openMarket } from '../open-market.js';
import { measureSupply, type Supply } from '../split-needs.js';
import type { Size } from './list-amounts.js';
import { type Asked, listAsked } from './list-asked.js';

export interface OpenPromise {
  readonly market: Market;
  readonly supply: Supply;
  readonly draws: number;
  /** Paints on offer that lack anything in any draw. */
  readonly asked: readonly Asked[];
  /** What each of them comes in. */
  readonly sizes: ReadonlyMap<string, readonly Size[]>;
}

/** One promise to find. */
export interface Sought extends OpenPromise {
  /** Draws in which something may run out. */
  readonly mayFail: number;
  readonly buying: Buying;
}

export function openPromise(drawn: DrawnLack, market: Market): OpenPromise {
  const asked = listAsked(drawn, market);
  return {
    ...{ market, asked, draws: drawn.drawing.draws },
    supply: measureSupply(market),
    sizes: listSizes(asked, market),
  };
}

/** For each paint how much of it every offer holds; alike offers together. */
function listSizes(asked: readonly Asked[], market: Market): Map<string, Size[]> {
  const limits = new Map(asked.map(({ paint }) => [paint, new Map<number, number>()]));
  for (const { mlOf, limit } of openMarket(market).worth) {
    for (const [paint, ml] of mlOf) {
      const known = limits.get(paint);
      known?.set(ml, limit + (known.get(ml) ?? 0));
    }
  }
  return new Map(
    [...limits].map(([paint, known]) => [paint, [...known].map(([ml, most]) => ({ ml, most }))]),
  );
}
