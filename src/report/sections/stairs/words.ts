// Stairs: their English. In: results, ways to say numbers. Out: text; '' where there is nothing to say.

import type { NextRise, Rise, StairSums } from '../../../model/order-sums.js';
import type { Plan } from '../../../model/plan.js';
import { joinSentences } from '../../words/join-sentences.js';
import { wordMargin } from '../../words/word-aim.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { searchLonger, wordBut } from '../../words/word-proof.js';
import { sharedWords } from '../../words/words.js';

const labels = {
  oneMore: 'One more figure, right now:',
  step: 'Step',
  because: 'Because of',
  from: 'From figure',
  cash: 'Cash',
  rise: 'More',
  proved: 'Proved',
  short: { from: 'from figure', cash: 'cash', rise: 'more' },
};

export const stairsWords = (say: NumberWords) => ({
  labels,
  ...leadWords(say),
  next: nextWords(say),
  chart: chartWords(say),
  ...stepWords(say),
});

export type StairsWords = ReturnType<typeof stairsWords>;

const leadWords = (say: NumberWords) => ({
  heading: (mostFigures: number) => `What each step up to ${countOf(say, mostFigures, 'figure')} costs`,
  lead: ({ aim, summary: { firstUnit } }: Plan) => {
    const start = firstUnit === undefined ? '' : `, ${nameOf(firstUnit.unit)} first`;
    return joinSentences(
      `The least cash for paint, postage included. Figures are painted by priority${start}; after the last one a second army follows from scratch.`,
      wordMargin(aim, say),
      'Paint that no offer covers costs nothing here.',
    );
  },
  /** Between the steps that were looked for. */
  missed:
    'There are too many steps to look for each: between those shown the cash may rise earlier than drawn, never later.',
  open: (unproved: number) =>
    `${countOf(say, unproved, 'step is', 'steps are')} not proved: a cheaper order may exist there. ${searchLonger}`,
});

const nextWords = (say: NumberWords) => ({
  nothing: 'nothing',
  /** A step that is not proved may be had for less. */
  extra: ({ rise, extraMinor }: NextRise) => {
    const money = say.money(extraMinor);
    return rise.proved || extraMinor === 0 ? money : `at most ${money}`;
  },
  evenTwice: (order: Plan['order']) => `${wordReach(order)}, even for twice the army.`,
  needed: ({ rise }: NextRise) => `More of ${listOf(rise.because.map(nameOf))} would be needed.`,
  /** `extra` as worded above. */
  later: (order: Plan['order'], { rise, reachesFigure, isNext }: NextRise, extra: string) => {
    const step = `figure ${say.count(rise.figures)} (${listOf(rise.because.map(nameOf))}): ${extra}`;
    const says = isNext
      ? `The next step is ${step}.`
      : `The next step shown is ${step}; not every step was looked for, so it may come earlier.`;
    return `${wordReach(order)}, up to figure ${say.count(reachesFigure)}. ${says}`;
  },
});

function wordReach(order: Plan['order']): string {
  const what = order.lines.length === 0 ? 'Your pots' : 'Your pots and this order';
  return `${what} still reach${wordBut(order)}`;
}

const chartWords = (say: NumberWords) => ({
  title: 'Cash against figures',
  across: 'figures',
  says: ({ figureCount, stairs }: Plan, { rises, armyMinor }: StairSums, mostMinor: number) =>
    `${countOf(say, rises.length, 'step')} from none to ${say.count(stairs.mostFigures)} figures: ${say.money(armyMinor)} for your army of ${say.count(figureCount)}, ${say.money(mostMinor)} at the end. The table that follows lists each step.`,
  army: (figures: number, cashMinor: number) =>
    `your army: ${countOf(say, figures, 'figure')}, ${say.money(cashMinor)}`,
  armyShort: (figures: number) => `your army: ${say.count(figures)}`,
  riser: ({ figures, riseMinor, because }: Rise) =>
    `Figure ${say.count(figures)}: ${say.money(riseMinor)} more for ${listOf(because.map(nameOf))}`,
  /** The first of the paints that cause a rise, and how many more. */
  because: ([first = '', ...others]: readonly string[]) =>
    others.length === 0 ? nameOf(first) : `${nameOf(first)} + ${say.count(others.length)}`,
});

const stepWords = (say: NumberWords) => ({
  caption: ({ rises, unproved }: StairSums) =>
    `Where the cash rises, ${countOf(say, rises.length, 'step')}${unproved === 0 ? ', each proved: no order for so many figures costs less' : ''}`,
  /** After a row's paints, as many as are not listed. */
  others: (paints: number) => (paints > 0 ? `and ${say.count(paints)} more` : ''),
  proved: sharedWords.provedOrNot,
});
