// Promise: its English. In: results, ways to say numbers. Out: text.
import type { Order, OrderNeed } from '../../../model/order.js';
import type { Chance, Promised, PromiseLevel } from '../../../model/ranges.js';
import type { PromiseSums, Standing } from '../../../model/summary.js';
import { joinSentences } from '../../words/join-sentences.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { wordMore } from '../../words/word-proof.js';
import { isRather, wordReached, wordTimes } from '../../words/word-sure.js';
import { sharedWords } from '../../words/words.js';

const labels = {
  heading: 'What being sure costs',
  level: 'Buy for',
  drawn: 'Drawn',
  cash: 'cash',
  more: 'against the likely needs',
  met: 'of fresh armies finished',
  proved: 'cheapest for its amounts',
  own: 'this order',
};

export const promiseWords = (say: NumberWords) => ({
  labels,
  ...leadWords(say),
  ...warningWords(say),
  ...levelWords(say),
});

export type PromiseWords = ReturnType<typeof promiseWords>;

const leadWords = (say: NumberWords) => ({
  lead: (surePercent: number, standing: Standing, paints: number) => {
    const made = standing === 'missed' ? 'was to be made' : 'is made';
    const each = `That is more than ${say.sure(surePercent)} for each paint by itself: with ${countOf(say, paints, 'paint')}, one of them would run out far more often. So it can cost much more than what is likely.`;
    return joinSentences(
      `The order ${made} so that in ${say.count(surePercent)} of ${say.count(100)} armies like this nothing at all runs out.`,
      paints === 1 ? '' : each,
    );
  },
  note: (draws: number) =>
    `An army like this is yours with other values for all that nobody knows for sure: each assumption, each pot’s reading. ${say.count(draws)} of them were drawn to make the order, and as many fresh ones to check it.`,
  /** Behind the share of armies that is reached. */
  reached: (draws: number, { lines }: Order, { surePercent }: Promised, standing: Standing) => {
    const pots = lines.length === 0 ? 'today’s pots' : 'your pots and this order';
    const apart = standing === 'apart' ? ', as far as the paints on offer go' : '';
    return `of ${say.count(draws)} fresh armies like this are finished with ${pots}${apart}. Asked for: ${say.sure(surePercent)}.`;
  },
  /** That a joint promise can cost much more than what is likely. */
  plainly: ({ likely, surePercent }: Promised, { standing, extraMinor }: PromiseSums) => {
    const what = standing === 'missed' ? 'This order' : `To be ${say.sure(surePercent)} sure`;
    const rarely = `which alone ${isRather(likely.met) ? 'would do' : 'would do only'} in ${wordTimes(likely.met, say)} armies like this.`;
    return joinSentences(
      likely.cashMinor === 0
        ? `Nothing need be bought for the likely needs, ${rarely}`
        : `Just the likely needs would cost ${say.money(likely.cashMinor)}, ${rarely}`,
      `${what} costs ${extraMinor === 0 ? 'no more than that' : wordMore(extraMinor, say)}.`,
    );
  },
});

const warningWords = (say: NumberWords) => ({
  /** That the offers do not reach what was asked for, and what reaches the farthest. */
  missed: (surePercent: number, surer: PromiseLevel | undefined) =>
    joinSentences(
      `No order from these offers is ${say.sure(surePercent)} sure.`,
      surer === undefined
        ? ''
        : `The surest found reaches ${wordReached(surer.met, say)}, for ${say.money(surer.cashMinor)}.`,
    ),
  heldBack: (met: Chance, unmet: readonly OrderNeed[]) => {
    const named = unmet.map(({ paint, ml }) => `${nameOf(paint)} (${say.ml(ml)})`);
    const lacking =
      named.length === 0
        ? 'paints that no shop offers'
        : `${listOf(named, 12)}, which the offers do not cover`;
    return `With every paint only ${wordReached(met, say)} are finished: the army also hangs on ${lacking}.`;
  },
});

const levelWords = (say: NumberWords) => ({
  caption: (isHeldBack: boolean) =>
    joinSentences(
      'The least cash found for each promise, postage included. It is not proved that no other order keeps a promise for less.',
      isHeldBack ? 'Paints that no shop offers are left out.' : '',
    ),
  likely: 'the likely needs alone',
  level: (surePercent: number, isReached: boolean) =>
    `${say.sure(surePercent)} sure${isReached ? '' : ', not reached'}`,
  proved: sharedWords.provedOrNot,
});
