// Promise: how far a paint may be raised. In: what it asks for over the draws, its sizes. Out: amounts, and which draws each does.
import { at } from '../../model/at.js';
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

/** Which steps are looked at: the more, the longer a search. */
export interface Fineness {
  /** Of the draws that may fail: once no more than so many pass a step, no further one is taken. */
  readonly shareLeft: number;
  /** Likely usable ml by paint about which steps lie close, and the wider apart the farther from it; left out: every step. */
  readonly about?: readonly ReadonlyMap<string, number>[];
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
  { shareLeft, about }: Fineness,
): Steps {
  const { paint, rising } = asked;
  const leastMl = Math.min(supplyMl, Math.max(0, rising[rising.length - mayFail - 1] ?? 0));
  const to = Math.min(supplyMl, rising.at(-1) ?? 0);
  const all = listAmounts(sizes, to, mostAmounts);
  const { amounts, beyond } =
    all === undefined ? stepsByDraws(rising, leastMl, to) : stepsByPots(all, leastMl);
  const enough = amounts.findIndex((ml) => countOver(rising, ml) <= shareLeft * mayFail);
  const count = enough < 0 ? amounts.length : enough + 1;
  const kept = placesAbout(
    count,
    about?.map((ml) => countUpTo(amounts, ml.get(paint) ?? 0) - 1),
  );
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

/** Amounts that the draws ask for; whatever whole pots come to, each draw asks for so much. */
function stepsByDraws(rising: Float64Array, leastMl: number, to: number): Amounts {
  const asked = rising.subarray(rising.length - countOver(rising, leastMl));
  const amounts = [leastMl, ...Array.from(asked, (ml) => Math.min(to, ml))];
  return { amounts, beyond: amounts.map((ml) => ml - 2 * sameMl) };
}

/** Between so many others: a relaxation goes where steps lie far apart. */
const evenly = 16;

/** Every place; or those about some of them, at distances that double, and some evenly among all, the first and the last with them. */
function placesAbout(count: number, about: readonly number[] | undefined): number[] {
  const all = Array.from({ length: count }, (_, place) => place);
  if (about === undefined) return all;
  const kept = new Set(
    Array.from({ length: evenly + 1 }, (_, one) => Math.round((one * (count - 1)) / evenly)),
  );
  for (const one of about)
    for (let apart = 0; apart < count; apart = Math.max(1, 2 * apart))
      for (const place of [one - apart, one + apart]) kept.add(place);
  return all.filter((place) => kept.has(place));
}

/** How many rising amounts are no more than so many ml. */
export function countUpTo(amounts: readonly number[], ml: number): number {
  const over = amounts.findIndex((amount) => amount > ml + sameMl);
  return over < 0 ? amounts.length : over;
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
