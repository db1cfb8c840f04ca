// Promise: how far a paint may be raised. In: what it asks for over the draws, its sizes. Out: amounts, and which draws each does.
import { at, numberAt } from '../../model/at.js';
import { sameMl } from '../../model/volume.js';
import { listAmounts, type Size } from './list-amounts.js';
import type { Asked } from './list-asked.js';

/** A paint's amounts, rising. */
export interface Steps {
  readonly paint: string;
  /** Likely usable ml in whole pots; the first is what each draw may count on. */
  readonly amounts: readonly number[];
  /** A draw that asks for more than this takes the amount at the same place: the last that whole pots come to before it. */
  readonly beyond: readonly number[];
}

/** How many steps are looked at: the finer, the longer a search. */
export interface Fineness {
  /** Of the draws that may fail: once no more than so many pass a step, no further one is taken. */
  readonly shareLeft: number;
  readonly mostSteps: number;
}

export interface StepInputs {
  readonly sizes: readonly Size[];
  /** All that can be had. */
  readonly supplyMl: number;
  /** Draws that may fail. */
  readonly mayFail: number;
}

/** Sums of whole pots that are looked at; where there are more, steps go by the draws instead. */
const mostAmounts = 1000;

/**
 * From the least that its own quantile asks for, in whole pots, to where nearly no draw is left. A draw past the last step counts
 * as served by it: so the steps ask for no more than there is to ask, and what they miss shows when the order is counted again.
 */
export function listSteps(
  asked: Asked,
  { sizes, supplyMl, mayFail }: StepInputs,
  { shareLeft, mostSteps }: Fineness,
): Steps {
  const { paint, rising } = asked;
  const leastMl = Math.min(supplyMl, Math.max(0, rising[rising.length - mayFail - 1] ?? 0));
  const to = Math.min(supplyMl, rising.at(-1) ?? 0);
  const all = listAmounts(sizes, to, mostAmounts);
  const { amounts, beyond } =
    all === undefined ? stepsByDraws(rising, leastMl, to, mostSteps) : stepsByPots(all, leastMl);
  const enough = amounts.findIndex((ml) => countOver(rising, ml) <= shareLeft * mayFail);
  const kept = spread(enough < 0 ? amounts.length : enough + 1, mostSteps);
  return {
    paint,
    amounts: kept.map((step) => at(amounts, step)),
    beyond: kept.map((step) => at(beyond, step)),
  };
}

type Amounts = Pick<Steps, 'amounts' | 'beyond'>;

function stepsByPots(all: readonly number[], leastMl: number): Amounts {
  const found = all.findIndex((ml) => ml >= leastMl - sameMl);
  const first = found < 0 ? all.length - 1 : found;
  return { amounts: all.slice(first), beyond: [leastMl, ...all.slice(first, -1)] };
}

/** Amounts that the draws ask for, evenly among them; whatever whole pots come to, each draw asks for so much. */
function stepsByDraws(rising: Float64Array, leastMl: number, to: number, mostSteps: number): Amounts {
  const first = rising.length - countOver(rising, leastMl);
  const places = spread(rising.length - first, mostSteps).map((step) => first + step);
  const amounts = [leastMl, ...places.map((place) => Math.min(to, numberAt(rising, place)))];
  return { amounts, beyond: amounts.map((ml) => ml - 2 * sameMl) };
}

/** So many places at the most, evenly among `count`, the first and the last of them. */
function spread(count: number, most: number): number[] {
  if (count <= most) return Array.from({ length: count }, (_, place) => place);
  return Array.from({ length: most }, (_, place) => Math.round((place * (count - 1)) / (most - 1)));
}

/** Draws that ask for more than an amount. */
export function countOver(rising: Float64Array, ml: number): number {
  let [low, high] = [0, rising.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rising[middle] as number) <= ml + sameMl) low = middle + 1;
    else high = middle;
  }
  return rising.length - low;
}
