// Report view: the answer in three figures, for page and console alike. In: the plan and its sums. Out: plain text.
import type { Amount } from '../../../model/money.js';
import type { Plan } from '../../../model/plan.js';
import { joinSentences } from '../../words/join-sentences.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import type { TrustView } from '../../words/view-trust.js';
import { wordNoNeed } from '../../words/word-no-need.js';
import { type AnswerWords, answerWords } from './words.js';

/** One of the three figures that the page opens with; the console prints the same. */
interface AnswerFigure {
  readonly question: string;
  readonly figure: string;
  readonly detail: string;
  readonly trust: TrustView;
}

export interface AnswerView {
  readonly heading: string;
  readonly figures: readonly [AnswerFigure, AnswerFigure, AnswerFigure];
}

/** Will it last, what does it cost, what to buy. */
export function viewAnswer(inputs: ViewInputs): AnswerView {
  const texts = answerWords(inputs.words);
  return {
    heading: texts.heading,
    figures: [viewLasting(inputs, texts.lasting), viewCost(inputs, texts.cost), viewBuying(inputs, texts)],
  };
}

/** Owned paints named as likely to run short. */
const mostRisky = 3;

function viewLasting({ plan, trust }: ViewInputs, texts: AnswerWords['lasting']): AnswerFigure {
  const { work, lasting } = plan.summary;
  const { states, risky, verdict, onWayMl, onWayPaints } = lasting;
  const noPot = states.find(({ state }) => state === 'none owned')?.paints ?? [];
  const lacking = noPot.map(({ paint }) => paint);
  const chance = () => (lacking.length > 0 ? texts.no : texts.verdict(verdict, plan.ranges.chanceAllLast));
  const isNeeded = states.length > 0;
  const named = risky.slice(0, mostRisky);
  const says = isNeeded
    ? [texts.chance(lacking), texts.states(states), texts.risky(named, named.length === risky.length)]
    : [wordNoNeed(work)];
  return {
    question: texts.question,
    figure: isNeeded ? chance() : texts.yes,
    detail: joinSentences(...says, onWayPaints === 0 ? '' : texts.onWay(onWayMl, onWayPaints)),
    trust: trust.of(lasting.trust),
  };
}

const hasNoPrice = ({ exactMinor, atLeast }: Amount): boolean => atLeast && exactMinor.isZero();

function viewCost({ plan, words, trust }: ViewInputs, texts: AnswerWords['cost']): AnswerFigure {
  const { costs, figureCount, ranges } = plan;
  const { perFigure, perFigureRange, trust: doubt } = plan.summary.costs;
  const base = { question: texts.question, trust: trust.of(doubt) };
  if (hasNoPrice(costs.useWhole)) return { ...base, figure: texts.noPrices, detail: texts.howToPrice };
  const remaining = hasNoPrice(costs.useRemaining) ? undefined : costs.useRemaining;
  return {
    ...base,
    figure: words.amount(perFigure),
    detail: joinSentences(
      texts.average(perFigureRange),
      texts.all(figureCount, costs.useWhole, ranges.useWhole, remaining),
      texts.unpriced(costs.unpriced),
    ),
  };
}

function viewBuying({ plan, words, trust }: ViewInputs, { buying, promise }: AnswerWords): AnswerFigure {
  const { order, restock, costs, ranges, summary, budget } = plan;
  const isBought = order.lines.length > 0;
  const isNeeded = ranges.paints.size > 0;
  return {
    question: buying.question,
    figure: isBought ? words.money(costs.cashMinor) : wordNothing(plan, buying),
    detail: joinSentences(
      isBought ? buying.order(order, summary) : order.unmet.length === 0 ? buying.isEnough : '',
      isNeeded ? wordAfter(plan, promise) : '',
      isBought && order.aboveBestMinor > 0 ? buying.notProved(order.aboveBestMinor) : '',
      buying.unmet(summary.order.alike),
      (restock?.lines.length ?? 0) > 0 ? buying.restock(costs.restockCashMinor) : '',
      budget && summary.budget ? buying.budget(budget.budgetMinor, summary.budget, budget.order) : '',
    ),
    trust: trust.of(summary.lasting.trust),
  };
}

/** Where a promise was asked for, how it stands beside buying in goes; else what follows. */
function wordAfter(plan: Plan, texts: AnswerWords['promise']): string {
  const { chosen, goes } = plan.summary.buying;
  if (plan.aim.policy !== 'sure') return chosen === undefined ? '' : texts.follows(chosen.follows);
  const isBought = plan.order.lines.length > 0;
  return joinSentences(texts.asked(plan), isBought && goes !== undefined ? texts.goes(goes) : '');
}

function wordNothing({ summary }: Plan, texts: AnswerWords['buying']): string {
  const { alike, alikeCost } = summary.order;
  if (alike.length === 0) return texts.nothing;
  return texts.noShop(alike.some(({ isOwned }) => isOwned) ? alikeCost : undefined);
}
