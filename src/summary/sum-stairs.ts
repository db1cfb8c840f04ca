// Summary: where the staircase rises. In: its steps, the army's order. Out: steps at which the cash goes up, the next one.
import type { Order, Stair, Stairs } from '../model/order.js';
import type { NextRise, Rise, StairSums } from '../model/order-sums.js';

/** Undefined for an army of nobody, which has no steps. */
export function sumStairs(stairs: Stairs, { totalMinor }: Order, figureCount: number): StairSums | undefined {
  const { steps } = stairs;
  if (steps.length === 0) return undefined;
  const rises = listRises(steps);
  const armyMinor = Math.max(totalMinor, cashAt(steps, figureCount));
  return {
    rises,
    armyMinor,
    next: findNext(stairs, { rises, armyMinor, figureCount }),
    unproved: steps.filter(({ proved }) => !proved).length,
  };
}

interface Army {
  readonly rises: readonly Rise[];
  readonly armyMinor: number;
  readonly figureCount: number;
}

/** The step right after the army is looked for whatever the others are; later ones may have been passed over. */
function findNext(
  { steps, everyStep }: Stairs,
  { rises, armyMinor, figureCount }: Army,
): NextRise | undefined {
  const rise = rises.find(({ figures }) => figures > figureCount);
  if (rise === undefined) return undefined;
  const next = steps.find(({ figures }) => figures > figureCount)?.figures ?? rise.figures;
  const isNext = everyStep || next === rise.figures;
  const extraMinor = Math.max(0, rise.cashMinor - armyMinor);
  return { rise, extraMinor, reachesFigure: (isNext ? rise.figures : next) - 1, isNext };
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
