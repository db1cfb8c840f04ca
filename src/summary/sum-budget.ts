// Summary: what a budget finishes. In: the budget. Out: figures in all and finished, units whole and open.
import type { Budget } from '../model/order.js';
import type { BudgetSums } from '../model/order-sums.js';

/** Undefined without a budget. */
export function sumBudget(budget: Budget | undefined): BudgetSums | undefined {
  if (budget === undefined) return undefined;
  const { units, budgetMinor, order, nextSteps } = budget;
  const open = units.filter(({ figures, finished }) => finished < figures);
  return {
    figures: units.reduce((sum, { figures }) => sum + figures, 0),
    finished: units.reduce((sum, { finished }) => sum + finished, 0),
    leftMinor: budgetMinor - order.totalMinor,
    whole: units.filter(({ figures, finished }) => finished === figures),
    // Next steps stand in the order of the units that are open, for the first of them.
    open: open.map((unit, index) => {
      const extraMinor = nextSteps[index]?.extraMinor;
      const shortMinor = extraMinor === undefined ? 0 : order.totalMinor + extraMinor - budgetMinor;
      const left = unit.figures - unit.finished;
      return { ...unit, left, extraMinor, shortMinor: Math.max(0, shortMinor) };
    }),
  };
}
