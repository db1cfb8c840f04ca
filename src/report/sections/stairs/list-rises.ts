// Report view: where the staircase rises. In: its steps. Out: those at which the cash goes up, and the cash at a number.
import type { Stair } from '../../../model/order.js';

/** A step at which the cash goes up. */
export interface Rise extends Stair {
  readonly riseMinor: number;
}

/** Steps at the same cash as the one before change the order, not the cash: they are left out. */
export function listRises(steps: readonly Stair[]): Rise[] {
  return steps
    .map((step, index) => ({ ...step, riseMinor: step.cashMinor - (steps[index - 1]?.cashMinor ?? 0) }))
    .filter(({ riseMinor }) => riseMinor > 0);
}

/** The least cash for a number of figures, in minor units: that of the last step at or below it. */
export function cashAt(steps: readonly Stair[], figures: number): number {
  return steps.findLast((step) => step.figures <= figures)?.cashMinor ?? 0;
}
