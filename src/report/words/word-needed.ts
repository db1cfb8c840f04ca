// Report view: what an order leaves out, though it may be needed. In: paints with their chances. Out: text.
import type { Needed, Waiting } from '../../model/choices.js';
import type { Plan } from '../../model/plan.js';
import { hexOf } from './hex-of.js';
import type { NumberWords } from './word-numbers.js';
import { wordTimes } from './word-sure.js';

/** A paint that waits. */
export interface NeededRow {
  readonly paint: string;
  readonly hex: string;
  /** `needed in 12 of 100, worth buying from 27` */
  readonly says: string;
}

/** `needed in 70 of 100, worth buying from 64` */
export const wordNeeded = ({ chanceNeeded, threshold }: Needed, say: NumberWords): string =>
  `needed in ${wordTimes(chanceNeeded, say)}, worth buying from ${say.count(Math.ceil(threshold * 100))}`;

export const listNeeded = (waits: readonly Waiting[], plan: Plan, say: NumberWords): NeededRow[] =>
  waits.map((one) => ({
    paint: one.paint,
    hex: hexOf(plan, one.paint),
    says: wordNeeded(one, say),
  }));
