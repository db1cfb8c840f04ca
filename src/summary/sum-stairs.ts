// Summary: where the staircase rises. In: its steps, the army's order. Out: steps at which the cash goes up, the next one.
import type { Order, Stair, Stairs } from '../model/order.js';
import type { Rise, StairSums } from '../model/summary.js';

/** Undefined for an army of nobody, which has no steps. */
export function sumStairs(
  { steps }: Stairs,
  { totalMinor }: Order,
  figureCount: number,
): StairSums | undefined {
  if (steps.length === 0) return undefined;
  const rises = listRises(steps);
  const armyMinor = Math.max(totalMinor, cashAt(steps, figureCount));
  const next = rises.find(({ figures }) => figures > figureCount);
  return {
    rises,
    armyMinor,
    next:
      next === undefined
        ? undefined
        : {
            rise: next,
            extraMinor: Math.max(0, next.cashMinor - armyMinor),
            lastFigure: next.figures - 1,
          },
    unproved: steps.filter(({ proved }) => !proved).length,
  };
}

/** Steps at the same cash as the one before change the order, not the cash: they are left out. */
function listRises(steps: readonly Stair[]): Rise[] {
  return steps
    .map((step, index) => ({ ...step, riseMinor: step.cashMinor - (steps[index - 1]?.cashMinor ?? 0) }))
    .filter(({ riseMinor }) => riseMinor > 0);
}

/** The least cash for a number of figures, in minor units: that of the last step at or below it. */
function cashAt(steps: readonly Stair[], figures: number): number {
  return steps.findLast((step) => step.figures <= figures)?.cashMinor ?? 0;
}
