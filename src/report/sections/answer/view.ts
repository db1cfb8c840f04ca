// Report view: the first screen, for page and console alike. In: the plan and its sums. Out: plain text.
import type { Amount } from '../../../model/money.js';
import type { Plan } from '../../../model/plan.js';
import type { Lasting } from '../../../model/summary.js';
import { joinSentences } from '../../words/join-sentences.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import type { TrustView } from '../../words/view-trust.js';
import { wordNoNeed } from '../../words/word-no-need.js';
import type { AnswerFigure } from './answer-figure.js';
import { viewShelf } from './view-shelf.js';
import { type AnswerWords, answerWords } from './words.js';

export interface AnswerView {
  readonly heading: string;
  readonly figures: readonly [AnswerFigure, AnswerFigure, AnswerFigure];
  /** Of the amounts, on which all three rest. */
  readonly trust: TrustView;
  readonly labels: AnswerWords['labels'];
  /** How many evenings; '' where nothing is left to be painted. */
  readonly evenings: string;
  /** The one thing to do next that is worth most, and what stands before it; undefined where there is none. */
  readonly next: { readonly label: string; readonly says: string } | undefined;
}

/** Will it last, what does it cost, what to buy; how many evenings; what to do next. */
export function viewAnswer(inputs: ViewInputs): AnswerView {
  const texts = answerWords(inputs.words);
  const { time, summary } = inputs.plan;
  const { next } = summary.ahead;
  return {
    heading: texts.heading,
    figures: inputs.plan.lacking.includes('army')
      ? viewShelf(inputs)
      : [viewLasting(inputs, texts.lasting), viewCost(inputs, texts.cost), viewBuying(inputs, texts)],
    trust: inputs.trust.of(summary.lasting.trust),
    labels: texts.labels,
    evenings: time.evenings === 0 ? '' : texts.ahead.evenings(time, summary.ahead),
    next: next === undefined ? undefined : { label: texts.ahead.label, says: texts.ahead.next(next) },
  };
}

function viewLasting({ plan }: ViewInputs, texts: AnswerWords['lasting']): AnswerFigure {
  const { work, lasting } = plan.summary;
  const isNeeded = lasting.states.length > 0;
  const { figure, detail } = isNeeded
    ? plan.lacking.includes('pots')
      ? texts.noPots(plan.stock.length)
      : wordLasting(plan, texts)
    : { figure: texts.noneNeeded, detail: wordNoNeed(work) };
  const onWay = lasting.onWayPaints === 0 ? '' : texts.onWay(lasting.onWayMl);
  return { question: texts.question, figure, detail: joinSentences(detail, onWay) };
}

function wordLasting(
  { summary: { lasting, ahead }, ranges: { chanceAllLast } }: Plan,
  texts: AnswerWords['lasting'],
): Pick<AnswerFigure, 'figure' | 'detail'> {
  const [missing, out, may] = (['none owned', 'short', 'tight'] as const).map((state) =>
    paintsIn(lasting, state),
  ) as [string[], string[], string[]];
  const needed = lasting.states.flatMap(({ paints }) => paints).length;
  if (missing.length > 0 || out.length > 0) {
    const first = ahead.firstOut === undefined ? '' : texts.first(ahead.firstOut);
    return {
      figure: texts.no(missing.length, out.length, needed),
      detail: joinSentences(texts.missing(missing), first, texts.mayToo(may.length)),
    };
  }
  const [tightest] = lasting.risky;
  const tight = tightest === undefined ? '' : texts.tightest(tightest.paint);
  return {
    figure: lasting.verdict === 'yes' ? texts.all(needed) : texts.may(may.length || 1, needed),
    detail: joinSentences(texts.chance(chanceAllLast), tight),
  };
}

const paintsIn = ({ states }: Lasting, wanted: Lasting['states'][number]['state']): string[] =>
  states.filter(({ state }) => state === wanted).flatMap(({ paints }) => paints.map(({ paint }) => paint));

const hasNoPrice = ({ exactMinor, atLeast }: Amount): boolean => atLeast && exactMinor.isZero();

function viewCost({ plan, words }: ViewInputs, texts: AnswerWords['cost']): AnswerFigure {
  const { costs } = plan;
  const { perFigure, perFigureRange, spread } = plan.summary.costs;
  const { question } = texts;
  if (hasNoPrice(costs.useWhole)) return { question, figure: texts.noPrices, detail: texts.howToPrice };
  return {
    question,
    figure: words.amount(perFigure),
    detail: joinSentences(
      texts.average(perFigureRange),
      texts.spread(spread),
      texts.unpriced(costs.unpriced),
    ),
  };
}

function viewBuying({ plan, words }: ViewInputs, { buying, promise }: AnswerWords): AnswerFigure {
  const { order, restock, costs, ranges, summary, budget } = plan;
  const isBought = order.lines.length > 0;
  const isNeeded = ranges.paints.size > 0;
  return {
    question: buying.question,
    figure: isBought ? buying.now(words.money(costs.cashMinor)) : wordNothing(plan, buying),
    detail: joinSentences(
      isBought ? buying.order(order, summary.order.pots) : wordEnough(plan, buying),
      isNeeded ? wordAfter(plan, promise) : '',
      isBought && order.aboveBestMinor > 0 ? buying.notProved(order.aboveBestMinor) : '',
      buying.unmet(summary.order.alike),
      (restock?.lines.length ?? 0) > 0 ? buying.restock(costs.restockCashMinor) : '',
      budget && summary.budget ? buying.budget(budget.budgetMinor, summary.budget, budget.order) : '',
    ),
  };
}

function wordEnough({ order, summary }: Plan, texts: AnswerWords['buying']): string {
  if (order.unmet.length > 0) return '';
  return summary.lasting.onWayPaints === 0 ? texts.isEnough : texts.isEnoughOnWay;
}

/** Where a promise was asked for, how it is kept; else what follows. */
function wordAfter(plan: Plan, texts: AnswerWords['promise']): string {
  if (plan.aim.policy === 'sure') return texts.kept(plan);
  const follows = plan.summary.buying.chosen?.follows;
  const isNone = plan.order.lines.length === 0 && follows?.next === undefined;
  return follows === undefined || isNone ? '' : texts.follows(follows);
}

function wordNothing({ summary }: Plan, texts: AnswerWords['buying']): string {
  const { alike, alikeCost } = summary.order;
  if (alike.length === 0) return texts.nothing;
  return texts.noShop(alikeCost);
}
