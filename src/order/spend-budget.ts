// Order: a budget's answer. In: the budget, what a fit works from. Out: figures finished, their order, next steps.
import type { Budget } from '../model/plan.js';
import { chooseOrder } from './choose-order.js';
import { cashFor, type Fitting, fitBudget, toBuy } from './fit-budget.js';

/** Unfinished units for which the next step is priced. */
const mostNextSteps = 12;

/**
 * What the budget finishes, with the order for just that, chosen and proved like any other order; and for each of
 * the next unfinished units what finishing it, and nothing else more, would take. Undefined without a budget.
 */
export async function spendBudget(
  budgetMinor: number | undefined,
  spending: Omit<Fitting, 'budgetMinor'>,
): Promise<Budget | undefined> {
  if (budgetMinor === undefined) return undefined;
  const fitting = { ...spending, budgetMinor };
  const { demands, market, buying } = spending;
  const { finished, proved, notTried } = await fitBudget(fitting);
  const order = await chooseOrder(toBuy(finished, fitting), market, buying);
  const units = demands.map(({ unit, figures }, index) => ({
    unit,
    figures,
    finished: finished[index] ?? 0,
  }));
  const nextSteps: Budget['nextSteps'][number][] = [];
  for (const [index, { unit, figures, finished: done }] of units.entries()) {
    if (done === figures || nextSteps.length === mostNextSteps) continue;
    const more = finished.map((count, at) => (at === index ? figures : count));
    const extraMinor = (await cashFor(more, fitting)) - order.totalMinor;
    nextSteps.push({ unit, figures: figures - done, extraMinor });
  }
  return { budgetMinor, order, units, nextSteps, proved, notTried };
}
