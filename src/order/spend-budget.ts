// Order: a budget's answer. In: the budget, what a fit works from. Out: figures finished, their order, next steps.
import type { Budget, Order } from '../model/order.js';
import { sharing } from './choose-counts.js';
import { cashFor, type Fitting, fitBudget } from './fit-budget.js';

/** Unfinished units for which the next step is priced. */
const mostNextSteps = 12;

/** Of the time that the order may take: for all searches after what a budget finishes. */
const shareOfBudget = 1;

/** A fit, and the whole plan to check it with. */
export interface Spending extends Omit<Fitting, 'budgetMinor'> {
  /** The order of a plan for just so many figures of each demand. */
  readonly planAgain: (finished: readonly number[]) => Promise<Order>;
}

/**
 * What the budget finishes: the figures found go through the whole plan again, and the order shown is that plan's;
 * and for each of the next unfinished units what finishing it, and nothing else more, would take. Undefined
 * without a budget.
 */
export async function spendBudget(
  budgetMinor: number | undefined,
  spending: Spending,
): Promise<Budget | undefined> {
  if (budgetMinor === undefined) return undefined;
  const fitting = { ...spending, buying: sharing(shareOfBudget, spending.buying), budgetMinor };
  const { demands } = spending;
  const { finished, proved, notTried } = await fitBudget(fitting);
  const order = await spending.planAgain(finished);
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
