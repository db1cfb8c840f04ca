// Order: a budget's answer. In: the budget, what a fit works from. Out: figures finished, their order, next steps.
import { at } from '../model/at.js';
import type { Budget, Order } from '../model/order.js';
import { cashFor, type Fitted, type Fitting, fitBudget } from './fit-budget.js';
import { sharing } from './share-time.js';

/** Unfinished units for which the next step is priced. */
const mostNextSteps = 12;

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
  const fitting = { ...spending, buying: sharing('budget', spending.buying), budgetMinor };
  const { demands } = spending;
  const { finished, proved, notTried, order } = await orderWithin(await fitBudget(fitting), fitting);
  const units = demands.map(({ unit, figures }, index) => ({
    unit,
    figures,
    finished: at(finished, index),
  }));
  const nextSteps: Budget['nextSteps'][number][] = [];
  for (const [index, { unit, figures, finished: done }] of units.entries()) {
    if (done === figures || nextSteps.length === mostNextSteps) continue;
    const more = finished.map((count, other) => (other === index ? figures : count));
    const extraMinor = (await cashFor(more, fitting)) - order.totalMinor;
    nextSteps.push({ unit, figures: figures - done, extraMinor });
  }
  return { budgetMinor, order, units, nextSteps, proved, notTried };
}

/** The order for what was found; where the time was too short to find it within the budget again, nothing counts as finished. */
async function orderWithin(
  found: Fitted,
  { budgetMinor, planAgain }: Spending & Pick<Fitting, 'budgetMinor'>,
): Promise<Fitted & { readonly order: Order }> {
  const order = await planAgain(found.finished);
  if (order.totalMinor <= budgetMinor) return { ...found, order };
  const finished = found.finished.map(() => 0);
  return { ...found, finished, proved: false, order: await planAgain(finished) };
}
