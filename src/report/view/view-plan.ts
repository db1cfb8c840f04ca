// Report view: the plan as the page shows it. In: a plan, the problems of its sheets. Out: a ReportView, plain data;
// all rounding and wording happens in this folder.
import type { Plan } from '../../model/plan.js';
import type { Problem } from '../../model/problem.js';
import type { ReportView } from './report-view.js';
import { viewAnswer } from './view-answer.js';
import { viewBudget } from './view-budget.js';
import { viewCautions } from './view-cautions.js';
import { viewCoats } from './view-coats.js';
import { viewCosts } from './view-costs.js';
import { viewGround } from './view-ground.js';
import { viewInputs } from './view-inputs.js';
import { viewInstead } from './view-instead.js';
import { viewPalette } from './view-palette.js';
import { viewPots } from './view-pots.js';
import { viewProgress } from './view-progress.js';
import { viewPromise } from './view-promise.js';
import { viewReorder } from './view-reorder.js';
import { viewShopping } from './view-shopping.js';
import { viewStairs } from './view-stairs.js';
import { viewTime } from './view-time.js';
import { viewUse } from './view-use.js';
import { viewWeigh } from './view-weigh.js';
import { countOf, wordDate, wordNumerals } from './word-numbers.js';

/**
 * The whole report. Only warnings of `problems` are shown, since errors stop a plan. An empty army gives a page
 * of zeros. Throws where locale or currency is none: the sheets have checked both.
 */
export function viewPlan(plan: Plan, problems: readonly Problem[]): ReportView {
  const inputs = viewInputs(plan);
  const { words, sums, lang } = inputs;
  return {
    lang,
    numerals: wordNumerals(words),
    title: `Paint for ${countOf(words, plan.figureCount, 'figure')}`,
    facts: [
      countOf(words, plan.estimate.units.length, 'unit'),
      countOf(words, sums.paints.size, 'paint'),
      wordDate(plan.date, lang),
      `prices in ${plan.settings.currency}`,
    ],
    palette: viewPalette(plan, sums),
    answer: viewAnswer(inputs),
    budget: viewBudget(inputs),
    pots: viewPots(inputs),
    shopping: viewShopping(inputs, viewReorder(plan)),
    promise: viewPromise(inputs),
    weigh: viewWeigh(inputs),
    instead: viewInstead(inputs),
    stairs: viewStairs(inputs),
    costs: viewCosts(inputs),
    progress: viewProgress(inputs),
    coats: viewCoats(inputs),
    use: viewUse(inputs),
    time: viewTime(inputs),
    ground: viewGround({ ...inputs, problems }),
    cautions: viewCautions(plan.cautions),
  };
}
