// Ways to buy: their English. In: results, ways to say numbers. Out: text.
import type { Aim, Choice, ChoiceLine, Follows, Sampled, Waiting } from '../../../model/choices.js';
import type { Order, OrderNeed } from '../../../model/order.js';
import type { Standing } from '../../../model/order-sums.js';
import type { Chance, Promised, PromiseLevel } from '../../../model/ranges.js';
import { joinSentences } from '../../words/join-sentences.js';
import { wordNext } from '../../words/word-follows.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { wordReached, wordTimes } from '../../words/word-sure.js';
import { sharedWords } from '../../words/words.js';

const labels = {
  heading: 'Other ways to buy',
  way: 'Buy',
  drawn: 'Drawn',
  cash: 'now',
  orders: 'orders after it',
  mean: 'in all, on average',
  own: 'this order',
  lists: 'Each way’s list, to print alone',
  alone: 'This list alone, for paper',
  together: 'all of the report',
};

export const buyingWords = (say: NumberWords) => ({
  labels,
  ...leadWords(say),
  ...promiseWords(say),
  ...wayWords(say),
  list: (name: string, cashMinor: number) => `${name}: ${say.money(cashMinor)}`,
  line: ({ offer, count, costMinor, chanceNeeded }: ChoiceLine) =>
    `${say.count(count)} × ${nameOf(offer)}, ${say.money(costMinor)}, needed in ${wordTimes(chanceNeeded, say)}`,
  sums: (postageMinor: number, cashMinor: number) =>
    `Postage ${say.money(postageMinor)}, in all ${say.money(cashMinor)}.`,
  /** What the painted draws say of it, each with its error. */
  follows: ({ follows, met, aboveBestMinor }: Choice) => {
    const { ordersAfter, meanInAllMinor, highInAllMinor, leftOverMinor, atLeast } = follows;
    const orders = `${say.tenth(ordersAfter.value)} ± ${say.tenth(ordersAfter.error)} more orders`;
    const mean = (atLeast ? sharedWords.atLeast : String)(withError(meanInAllMinor, say));
    const left = `${withError(leftOverMinor, say)} left over in the pots`;
    return joinSentences(
      `By itself it lasts in ${wordReached(met, say)} of armies.`,
      `${orders}, ${mean} in all on average, one time in ten over ${withError(highInAllMinor, say)}; ${left}.`,
      wordNext(follows, say),
      aboveBestMinor === 0 ? '' : sharedWords.notProved(say.money(aboveBestMinor)),
    );
  },
  waits: (waits: readonly Waiting[]) =>
    `What can wait: ${listOf(
      waits.map(({ paint, chanceNeeded }) => `${nameOf(paint)} (${wordTimes(chanceNeeded, say)})`),
      12,
    )}.`,
});

export type BuyingWords = ReturnType<typeof buyingWords>;

const likelyLead =
  'The order buys what is likely, and leaves the rest to orders that follow. In goes, what is cheap beside its postage comes along at once.';
const goesLead =
  'The order is made in goes: a pot is bought now where its chance of being needed is worth its price against another order, and what the next two units need always is. When a pot runs dry, another order follows. To be surer costs more now and leaves more over.';

const leadWords = (say: NumberWords) => ({
  lead: ({ policy, surePercent = 0 }: Aim, standing: Standing, paints: number) => {
    if (policy !== 'sure') return policy === 'likely' ? likelyLead : goesLead;
    const made = standing === 'missed' ? 'was to be made' : 'is made';
    const each = `That is more than ${say.sure(surePercent)} for each paint by itself: with ${countOf(say, paints, 'paint')}, one of them would run out far more often. So it can cost much more than buying in goes.`;
    return joinSentences(
      `The order ${made} so that in ${say.count(surePercent)} of ${say.count(100)} armies like this nothing at all runs out.`,
      paints === 1 ? '' : each,
    );
  },
  note: (draws: number) =>
    `An army like this is yours with other values for all that nobody knows for sure: each assumption, each pot’s reading. With each way ${say.count(draws)} of them were painted on paper, unit by unit, ordering again by the same rule when a pot was dry.`,
});

const promiseWords = (say: NumberWords) => ({
  promiseNote: (draws: number) =>
    `For the promise ${say.count(draws)} more were drawn to make the order, and as many fresh ones to check it.`,
  /** How well the order keeps what was asked for. */
  promise: (
    reached: Chance,
    { order, promised, standing }: { order: Order; promised: Promised; standing: Standing },
  ) => {
    const pots = order.lines.length === 0 ? 'today’s pots' : 'your pots and this order';
    const apart = standing === 'apart' ? ', as far as the paints on offer go' : '';
    return `With ${pots} ${wordReached(reached, say)} of the fresh ones are finished${apart}. Asked for: ${say.sure(promised.surePercent ?? 0)}.`;
  },
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

const wayWords = (say: NumberWords) => ({
  caption: (isHeldBack: boolean) =>
    joinSentences(
      'With postage; more orders follow when a pot runs dry.',
      isHeldBack ? 'Paints without a shop are left out.' : '',
    ),
  orders: ({ ordersAfter }: Follows) => say.tenth(ordersAfter.value),
  mean: ({ meanInAllMinor, atLeast }: Follows) =>
    (atLeast ? sharedWords.atLeast : String)(say.about(meanInAllMinor.value)),
});

const withError = ({ value, error }: Sampled, say: NumberWords): string =>
  `${say.money(Math.round(value))} ± ${say.money(Math.round(error))}`;
