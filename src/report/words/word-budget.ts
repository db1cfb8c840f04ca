// Report words: what a budget finishes, for the answer and the budget's section. In: the budget. Out: text.
import type { Plan } from '../../model/plan.js';
import type { BudgetSums } from '../../model/summary.js';
import { countOf, type NumberWords } from './word-numbers.js';
import { wordBut } from './word-promise.js';

/** `107 of 109 figures`, `All 109 figures`. */
export function wordFinished({ figures, finished }: BudgetSums, words: NumberWords): string {
  const all = countOf(words, figures, 'figure');
  return finished === figures ? `All ${all}` : `${words.count(finished)} of ${all}`;
}

/** One sentence for the answer on top of the page and on the console. */
export function wordBudget({ budget, summary }: Plan, words: NumberWords): string {
  if (budget === undefined || summary.budget === undefined) return '';
  const finished = wordFinished(summary.budget, words);
  return ` A budget of ${words.money(budget.budgetMinor)} finishes ${finished.replace(/^All/, 'all')}${wordBut(budget.order)}.`;
}
