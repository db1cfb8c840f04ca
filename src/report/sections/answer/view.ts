// Report view: the answer in three figures, for page and console alike. In: the plan and its sums. Out: plain text.
import type { Amount } from '../../../model/money.js';
import type { Order } from '../../../model/order.js';
import type { Plan } from '../../../model/plan.js';
import type { Lasting } from '../../../model/summary.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import type { TrustView } from '../../words/view-trust.js';
import { wordBudget } from '../../words/word-budget.js';
import { nameOf } from '../../words/word-name.js';
import { wordNoNeed } from '../../words/word-no-need.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { wordPromise } from '../../words/word-promise.js';
import { lowHighMeaning, wordCostRange } from '../../words/word-sure.js';
import { wordLasting } from './word-lasting.js';

/** One of the three figures that the page opens with; the console prints the same. */
export interface AnswerFigure {
  readonly question: string;
  readonly figure: string;
  readonly detail: string;
  readonly trust: TrustView;
}

/** The three figures that the page opens with. */
export type AnswerView = readonly [AnswerFigure, AnswerFigure, AnswerFigure];

/** Will it last, what does it cost, what to buy. */
export function viewAnswer(inputs: ViewInputs): AnswerView {
  return [viewLasting(inputs), wordCost(inputs), wordCash(inputs)];
}

function viewLasting({ plan, words, trust }: ViewInputs): AnswerFigure {
  const { work, lasting } = plan.summary;
  const { figure, says } =
    lasting.states.length === 0
      ? { figure: 'Yes', says: wordNoNeed(work) }
      : wordLasting(lasting, plan.ranges, words);
  return {
    question: 'Will the pots last?',
    figure,
    detail: `${says}${wordOnWay(lasting, words)}`,
    trust: trust.of(lasting.trust),
  };
}

function wordOnWay({ onWayMl, onWayPaints }: Lasting, words: NumberWords): string {
  if (onWayPaints === 0) return '';
  return ` This counts ${words.ml(onWayMl)} that ${onWayPaints === 1 ? 'is' : 'are'} still on the way.`;
}

const whatFigureCosts = 'What does a figure cost?';

function wordCost(inputs: ViewInputs): AnswerFigure {
  const { plan, words, trust } = inputs;
  const { costs, figureCount, ranges } = plan;
  if (hasNoPrice(costs.useWhole)) return wordNoPrices(inputs);
  const { perFigure, perFigureRange, trust: doubt } = plan.summary.costs;
  const remaining = hasNoPrice(costs.useRemaining)
    ? '. What is still to be used has no price yet.'
    : `, of which ${words.amount(costs.useRemaining)} is still to be used.`;
  const unpriced =
    costs.unpriced.length === 0 ? '' : ` Not all priced: ${listOf(costs.unpriced.map(nameOf))}.`;
  return {
    question: whatFigureCosts,
    figure: words.amount(perFigure),
    detail:
      `In paint and extras used, on average; low to high ${wordCostRange(perFigureRange, words)} (${lowHighMeaning}). ` +
      `For all ${countOf(words, figureCount, 'figure')} ${words.amount(costs.useWhole)} ` +
      `(${wordCostRange(ranges.useWhole, words)})${remaining}${unpriced}`,
    trust: trust.of(doubt),
  };
}

const hasNoPrice = ({ exactMinor, atLeast }: Amount): boolean => atLeast && exactMinor.isZero();

function wordNoPrices({ plan, trust }: ViewInputs): AnswerFigure {
  return {
    question: whatFigureCosts,
    figure: 'No prices yet',
    detail:
      'None of the paint that this army needs has a price. Write what your pots cost into the price column of the ' +
      'pots sheet, or what shops ask into the offers sheet.',
    trust: trust.of(plan.summary.costs.trust),
  };
}

function wordCash({ plan, words, trust }: ViewInputs): AnswerFigure {
  const { order, restock, costs } = plan;
  const shelf =
    restock === undefined || restock.lines.length === 0
      ? ''
      : ` Another ${words.money(costs.restockCashMinor)} would fill low pots up to their level.`;
  return {
    question: 'What must I buy?',
    figure: order.lines.length === 0 ? wordNothing(order) : words.money(costs.cashMinor),
    detail:
      `${wordOrder(plan, words)}${wordPromise(plan, words)}${wordAbove(order, words)}${wordUnmet(order, words)}${shelf}${wordBudget(plan, words)}`.trimStart(),
    trust: trust.of(plan.summary.lasting.trust),
  };
}

const wordNothing = (order: Order): string => (order.unmet.length === 0 ? 'Nothing' : 'Nothing on offer');

function wordOrder(plan: Plan, words: NumberWords): string {
  const { lines, bills, postageMinor, unmet } = plan.order;
  const { order, isPostageKnown } = plan.summary;
  if (lines.length === 0)
    return unmet.length === 0 ? 'What stands on the shelf is enough for this army.' : '';
  const none = isPostageKnown ? 'no postage' : 'postage not known';
  const postage = postageMinor === 0 ? none : `postage of ${words.money(postageMinor)} included`;
  return `${countOf(words, order.pots, 'whole pot')} from ${listOf(bills.map(({ shop }) => nameOf(shop)))}, ${postage}.`;
}

const wordAbove = ({ lines, aboveBestMinor }: Order, words: NumberWords): string =>
  lines.length === 0 || aboveBestMinor === 0
    ? ''
    : ` Not proved: at most ${words.money(aboveBestMinor)} above the best possible.`;

function wordUnmet({ unmet }: Order, words: NumberWords): string {
  if (unmet.length === 0) return '';
  const named = unmet.map(({ paint, ml }) => `${nameOf(paint)} (${words.ml(ml)} more for that)`);
  return ` No offer covers ${listOf(named)}.`;
}
