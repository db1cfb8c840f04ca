// Answer: its English. In: results, ways to say numbers. Out: text; '' where there is nothing to say.

import type { Follows } from '../../../model/choices.js';
import type { CostSums } from '../../../model/cost-sums.js';
import type { Order } from '../../../model/order.js';
import type { Alike, BudgetSums, OrderSums, Standing } from '../../../model/order-sums.js';
import type { Plan } from '../../../model/plan.js';
import type { Chance, Promised, Range } from '../../../model/ranges.js';
import type { Ahead, FirstOut, NextStep } from '../../../model/summary.js';
import type { TimePlan } from '../../../model/time.js';
import { formOf } from '../../words/form-of.js';
import { wordAlike } from '../../words/word-alike.js';
import { wordInAll } from '../../words/word-follows.js';
import { wordMinutes } from '../../words/word-minutes.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, listOr, type NumberWords } from '../../words/word-numbers.js';
import { wordBut } from '../../words/word-proof.js';
import { wordRange, wordTimes } from '../../words/word-sure.js';
import { sharedWords } from '../../words/words.js';

export const answerWords = (say: NumberWords) => ({
  heading: 'The answer',
  labels: { weakest: 'Weakest values:', doubt: 'Biggest doubt:' },
  lasting: lastingWords(say),
  cost: costWords(say),
  buying: buyingWords(say),
  promise: promiseWords(say),
  ahead: aheadWords(say),
});

export type AnswerWords = ReturnType<typeof answerWords>;

const lastingWords = (say: NumberWords) => ({
  question: 'Will the pots last?',
  noneNeeded: 'Yes',
  noPots: (paints: number) => ({
    figure: 'No pots yet',
    detail: `${countOf(say, paints, 'paint')} ${formOf(paints, 'is', 'are')} needed, from scratch.`,
  }),
  all: (paints: number) => `Yes: ${paints === 1 ? 'it lasts' : `all ${say.count(paints)} last`}`,
  may: (paints: number, of: number) =>
    `Perhaps: ${sharedWords.some(say.count(paints), say.count(of))} may run out`,
  /** Some likely run out, or are missing, or both. */
  no: (missing: number, out: number, of: number) => {
    const gone = `${say.count(missing)} ${formOf(missing, 'is', 'are')} missing`;
    if (out === 0) return `No: ${gone}`;
    const runs = formOf(out, 'runs', 'run');
    if (missing > 0) return `No: ${gone}, ${say.count(out)} ${runs} out`;
    return `No: ${sharedWords.some(say.count(out), say.count(of))} ${runs} out`;
  },
  chance: (chance: Chance) => `In ${wordTimes(chance, say)} armies like yours nothing runs out.`,
  tightest: (paint: string) => `Tightest: ${nameOf(paint)}.`,
  missing: (paints: readonly string[]) =>
    paints.length === 0 ? '' : `You have no ${listOr(paints.map(nameOf))}.`,
  first: ({ paint, evening, unit }: FirstOut) =>
    `${nameOf(paint)} goes first: evening ${say.count(evening)}, in ${nameOf(unit)}.`,
  mayToo: (paints: number) => (paints === 0 ? '' : `${say.count(paints)} more may run out.`),
  onWay: (ml: number) => `The ${say.aboutMl(ml)} on the way count.`,
});

const costWords = (say: NumberWords) => ({
  question: 'What does a figure cost?',
  noPrices: 'No prices yet',
  howToPrice: 'Write what your pots cost into the pots sheet, or what shops ask into the offers sheet.',
  average: (range: Range) => `Paint and extras, on average; usually ${wordRange(range, say.about)}.`,
  spread: (spread: CostSums['spread']) => {
    if (spread === undefined) return '';
    const { least, most } = spread;
    const figure = ({ exactMinor, unit }: typeof least) =>
      `${say.about(exactMinor.toNumber())} (${nameOf(unit)})`;
    return `By unit: ${sharedWords.range(figure(least), figure(most))}.`;
  },
  unpriced: (paints: readonly string[]) =>
    paints.length === 0 ? '' : `Not fully priced: ${listOf(paints.map(nameOf))}.`,
});

const buyingWords = (say: NumberWords) => ({
  question: 'What must I buy?',
  now: (sum: string) => `${sum} now`,
  nothing: 'Nothing',
  /** What pots without a shop cost; how many they are where none has a price. */
  noShop: ({ pots, minor, atLeast }: OrderSums['alikeCost']) =>
    `${minor === 0 ? countOf(say, pots, 'pot') : say.priced(minor, atLeast)}, without a shop`,
  isEnough: 'Your shelf should do.',
  isEnoughOnWay: 'Your shelf and the pots on the way should do.',
  order: ({ bills }: Order, pots: number) =>
    `${countOf(say, pots, 'pot')} from ${listOf(bills.map(({ shop }) => nameOf(shop)))}.`,
  notProved: (aboveBestMinor: number) => `At most ${say.money(aboveBestMinor)} above the cheapest.`,
  unmet: (alike: readonly Alike[]) =>
    alike.length === 0
      ? ''
      : `No shop sells enough ${listOr(alike.map((one) => `${nameOf(one.paint)} (${wordAlike(one, say)})`))}.`,
  restock: (cashMinor: number) => `Refilling low pots costs another ${say.money(cashMinor)}.`,
  budget: (budgetMinor: number, { figures, finished }: BudgetSums, order: Order) => {
    const all = countOf(say, figures, 'figure');
    const some = finished === figures ? `all ${all}` : sharedWords.some(say.count(finished), all);
    return `A budget of ${say.money(budgetMinor)} finishes ${some}${wordBut(order)}.`;
  },
});

const promiseWords = (say: NumberWords) => ({
  /** How well the order keeps what was asked for. */
  kept: ({ promised, summary }: Plan) => `${wordStanding(summary.promise.standing, promised, say)}.`,
  follows: (follows: Follows) => wordInAll(follows, say),
});

function wordStanding(standing: Standing, promised: Promised, say: NumberWords): string {
  const whole = `In ${wordTimes(promised.metOnFreshDraws, say)} armies like yours nothing runs out`;
  switch (standing) {
    case 'kept':
      return whole;
    case 'apart':
      return `In ${wordTimes(promised.metOfOffered, say)} armies like yours no paint on offer runs out`;
    case 'missed':
    case 'not sold':
      return `${whole}: no shop brings the ${say.sure(promised.surePercent ?? 0)} asked for`;
  }
}

const aheadWords = (say: NumberWords) => ({
  evenings: ({ evenings, eveningMin }: TimePlan, { firstFinished: first }: Ahead) => {
    const done =
      first === undefined ? '' : `; ${nameOf(first.unit)} is finished on evening ${say.count(first.evening)}`;
    return `${countOf(say, evenings, 'evening')} of ${wordMinutes(eveningMin, say)}${done}.`;
  },
  label: 'Next:',
  next: (next: NextStep): string => {
    switch (next.what) {
      case 'weigh': {
        const pot = `${nameOf(next.paint)} ${sharedWords.containers[next.container][0]}`;
        return `weigh your ${pot} before and after evening ${say.count(next.evening)}: that settles ${say.percent(next.share)} of the doubt about what to buy.`;
      }
      case 'order':
        return next.pots === 1 ? 'order this pot.' : `order these ${say.count(next.pots)} pots.`;
      case 'paint':
        return `paint: ${nameOf(next.unit)}, ${nameOf(next.zone)}, ${nameOf(next.paint)}.`;
    }
  },
});
