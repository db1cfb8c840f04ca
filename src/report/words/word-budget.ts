// Report words: what a budget finishes, for the answer and the budget's section. In: the budget. Out: text.
import type { Budget } from '../../model/order.js';
import { countOf, type NumberWords } from './word-numbers.js';
import { wordBut } from './word-promise.js';

/** Figures in all and finished. */
function sumFigures({ units }: Budget) {
  return units.reduce(
    (sum, unit) => ({ figures: sum.figures + unit.figures, finished: sum.finished + unit.finished }),
    { figures: 0, finished: 0 },
  );
}

/** `107 of 109 figures`, `All 109 figures`. */
export function wordFinished(budget: Budget, words: NumberWords): string {
  const { figures, finished } = sumFigures(budget);
  const all = countOf(words, figures, 'figure');
  return finished === figures ? `All ${all}` : `${words.count(finished)} of ${all}`;
}

/** One sentence for the answer on top of the page and on the console. */
export function wordBudget(budget: Budget | undefined, words: NumberWords): string {
  if (budget === undefined) return '';
  const finished = wordFinished(budget, words);
  return ` A budget of ${words.money(budget.budgetMinor)} finishes ${finished.replace(/^All/, 'all')}${wordBut(budget.order)}.`;
}
