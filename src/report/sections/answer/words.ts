// Answer: its English. In: results, ways to say numbers. Out: text; '' where there is nothing to say.

import type { Choice, Follows } from '../../../model/choices.js';
import type { Amount } from '../../../model/money.js';
import type { Order } from '../../../model/order.js';
import type { Plan } from '../../../model/plan.js';
import type { Chance, Promised, Range } from '../../../model/ranges.js';
import type {
  Alike,
  BudgetSums,
  Lasting,
  OrderSums,
  Standing,
  Summary,
  Verdict,
} from '../../../model/summary.js';
import { formOf } from '../../words/form-of.js';
import { wordAlike } from '../../words/word-alike.js';
import { wordInAll } from '../../words/word-follows.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { wordBut } from '../../words/word-proof.js';
import { isTrace, lowHighMeaning, wordChance, wordCostRange, wordReached } from '../../words/word-sure.js';
import { sharedWords } from '../../words/words.js';

export const answerWords = (say: NumberWords) => ({
  heading: 'The answer in three figures',
  lasting: lastingWords(say),
  cost: costWords(say),
  buying: buyingWords(say),
  promise: promiseWords(say),
});

export type AnswerWords = ReturnType<typeof answerWords>;

const verdicts: Record<Verdict, string> = { yes: 'Yes', likely: 'Likely', hardly: 'Hardly', no: 'No' };

const lastingWords = (say: NumberWords) => ({
  question: 'Will the pots last?',
  yes: verdicts.yes,
  no: verdicts.no,
  verdict: (verdict: Verdict, chance: Chance) => {
    const only = verdict === 'no' && !isTrace(chance) ? 'only ' : '';
    return `${verdicts[verdict]}: ${only}${wordChance(chance, say)} sure`;
  },
  /** `lacking`: paints of which there is no pot. */
  chance: (lacking: readonly string[]) =>
    lacking.length === 0
      ? 'That is the chance that today’s pots last for the whole army.'
      : `The chance that today’s pots last for the whole army is ${say.percent(0)}: there is no pot of ${listOf(lacking.map(nameOf))}.`,
  states: (states: Lasting['states']) => {
    const needed = states.flatMap(({ paints }) => paints).length;
    const counts = states.map(
      ({ state, paints }) => `${say.count(paints.length)} ${sharedWords.states[state]}`,
    );
    return `${countOf(say, needed, 'paint')} needed: ${listOf(counts)}.`;
  },
  /** `isAll`: no other paints may run short. */
  risky: (paints: Lasting['risky'], isAll: boolean) => {
    if (paints.length === 0) return '';
    const named = paints.map(
      ({ paint, chanceShort }) => `${nameOf(paint)} (${wordChance(chanceShort, say)})`,
    );
    return `${isAll ? 'May run short' : 'Most likely to run short'}: ${listOf(named)}.`;
  },
  onWay: (ml: number, paints: number) =>
    `This counts ${say.ml(ml)} that ${formOf(paints, 'is', 'are')} still on the way.`,
});

const costWords = (say: NumberWords) => ({
  question: 'What does a figure cost?',
  noPrices: 'No prices yet',
  howToPrice:
    'None of the paint that this army needs has a price. Write what your pots cost into the price column of the ' +
    'pots sheet, or what shops ask into the offers sheet.',
  average: (range: Range) =>
    `In paint and extras used, on average; low to high ${wordCostRange(range, say)} (${lowHighMeaning}).`,
  all: (figures: number, whole: Amount, range: Range, remaining: Amount | undefined) => {
    const left =
      remaining === undefined
        ? '. What is still to be used has no price yet.'
        : `, of which ${say.amount(remaining)} is still to be used.`;
    return `For all ${countOf(say, figures, 'figure')} ${say.amount(whole)} (${wordCostRange(range, say)})${left}`;
  },
  unpriced: (paints: readonly string[]) =>
    paints.length === 0 ? '' : `Not all priced: ${listOf(paints.map(nameOf))}.`,
});

const buyingWords = (say: NumberWords) => ({
  question: 'What must I buy?',
  nothing: 'Nothing',
  /** What pots without a shop cost; undefined where none was ever owned. */
  noShop: (cost: OrderSums['alikeCost'] | undefined) =>
    cost === undefined ? 'Nothing on offer' : `${say.priced(cost.minor, cost.atLeast)}, without a shop`,
  isEnough: 'What stands on the shelf is enough for this army.',
  order: ({ bills, postageMinor }: Order, { order, isPostageKnown }: Summary) => {
    const none = isPostageKnown ? 'no postage' : 'postage not known';
    const postage = postageMinor === 0 ? none : `postage of ${say.money(postageMinor)} included`;
    return `${countOf(say, order.pots, 'whole pot')} from ${listOf(bills.map(({ shop }) => nameOf(shop)))}, ${postage}.`;
  },
  notProved: (aboveBestMinor: number) =>
    `Not proved: at most ${say.money(aboveBestMinor)} above the best possible.`,
  unmet: (alike: readonly Alike[]) =>
    alike.length === 0
      ? ''
      : `No offer covers ${listOf(alike.map((one) => `${nameOf(one.paint)} (${say.ml(one.ml)} more for that: ${wordAlike(one, say)})`))}.`,
  restock: (cashMinor: number) => `Another ${say.money(cashMinor)} would fill low pots up to their level.`,
  budget: (budgetMinor: number, { figures, finished }: BudgetSums, order: Order) => {
    const all = countOf(say, figures, 'figure');
    const some = finished === figures ? `all ${all}` : sharedWords.some(say.count(finished), all);
    return `A budget of ${say.money(budgetMinor)} finishes ${some}${wordBut(order)}.`;
  },
});

const promiseWords = (say: NumberWords) => ({
  /** What was asked for, and how well the order keeps it. */
  asked: ({ promised, summary }: Plan) =>
    `Asked for: ${say.sure(promised.surePercent ?? 0)} sure. ${wordStanding(summary.promise.standing, promised, say)}.`,
  /** What it would cost to buy in goes. */
  goes: ({ cashNowMinor, follows }: Choice) =>
    `In goes it would be ${say.money(cashNowMinor)} now and ${(follows.atLeast ? sharedWords.atLeast : String)(say.money(Math.round(follows.meanInAllMinor.value)))} in all, on average.`,
  follows: (follows: Follows) => wordInAll(follows, say),
});

function wordStanding(standing: Standing, promised: Promised, say: NumberWords): string {
  const whole = wordReached(promised.metOnFreshDraws, say);
  const lasts = `nothing runs out in ${whole} of armies like this`;
  switch (standing) {
    case 'kept':
      return `Nothing runs out in ${whole} of armies like this`;
    case 'apart':
      return `Of paints on offer nothing runs out in ${wordReached(promised.metOfOffered, say)} of armies like this, of all in ${whole}`;
    case 'missed':
      return `The offers do not reach that: ${lasts}`;
    case 'not sold':
      return `No offer helps to that: ${lasts}`;
  }
}
