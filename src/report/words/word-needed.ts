// Report view: what an order leaves out, though it may be needed. In: paints with their chances. Out: text.
import type { Waiting } from '../../model/choices.js';
import type { Plan } from '../../model/plan.js';
import { hexOf } from './hex-of.js';
import type { NumberWords } from './word-numbers.js';
import { wordChance } from './word-sure.js';

/** A paint that waits. */
export interface NeededRow {
  readonly paint: string;
  readonly hex: string;
  /** `needed in 12% of cases, worth buying now from 27%` */
  readonly says: string;
}

export const listNeeded = (waits: readonly Waiting[], plan: Plan, say: NumberWords): NeededRow[] =>
  waits.map(({ paint, chanceNeeded, threshold }) => ({
    paint,
    hex: hexOf(plan, paint),
    says: `needed in ${wordChance(chanceNeeded, say)} of cases, worth buying now from ${say.percent(threshold)}`,
  }));
