// Report view: what the order promises, in a few sentences. In: the plan. Out: text for the answer and the promise's section.
import type { Order } from '../../model/order.js';
import type { Plan } from '../../model/plan.js';
import type { NumberWords } from './word-numbers.js';
import { wordReached, wordTimes } from './word-sure.js';

/** In the answer: what was asked for, how well the order keeps it, and what less would do. '' for a plan without any need. */
export function wordPromise(plan: Plan, words: NumberWords): string {
  const { promised, ranges, order } = plan;
  if (ranges.paints.size === 0) return '';
  if (promised.surePercent === undefined) return wordFollows(plan, words);
  const asked = ` Asked for: ${words.sure(promised.surePercent)} sure. ${wordStanding(plan, words)}.`;
  return order.lines.length === 0 ? asked : `${asked}${wordLikely(plan, words)}`;
}

/** Where no promise was asked for: what follows after the order. */
function wordFollows(plan: Plan, words: NumberWords): string {
  const { aim, choices, promised, order } = plan;
  const follows = choices.find(({ policy }) => policy === aim.policy)?.follows;
  const alone = order.lines.length === 0 ? 'With today’s pots' : 'With this order alone';
  const enough = ` ${alone} nothing runs out in ${wordReached(promised.metOnFreshDraws, words)} of armies like this.`;
  if (follows?.next === undefined) return enough;
  const { ordersAfter, meanInAllMinor, atLeast } = follows;
  const least = atLeast ? 'at least ' : '';
  return `${enough} On average ${words.plain(Math.round(10 * ordersAfter.value) / 10)} more orders follow, and it is ${least}${words.money(Math.round(meanInAllMinor.value))} in all.`;
}

function wordStanding(plan: Plan, words: NumberWords): string {
  const { metOnFreshDraws, metOfOffered } = plan.promised;
  const whole = wordReached(metOnFreshDraws, words);
  switch (plan.summary.promise.standing) {
    case 'kept':
      return `Nothing runs out in ${whole} of armies like this`;
    case 'apart':
      return `Of paints on offer nothing runs out in ${wordReached(metOfOffered, words)} of armies like this, of all in ${whole}`;
    case 'missed':
      return `The offers do not reach that: nothing runs out in ${whole} of armies like this`;
    case 'not sold':
      return `No offer helps to that: nothing runs out in ${whole} of armies like this`;
  }
}

/** What just the likely needs would cost, and how rarely that does. */
function wordLikely({ promised: { likely } }: Plan, words: NumberWords): string {
  return ` Just the likely needs would cost ${words.money(likely.cashMinor)}, and do in ${wordTimes(likely.met, words)}.`;
}

/** After what an order is said to reach; '' where the offers cover all of it. */
export const wordBut = ({ unmet }: Pick<Order, 'unmet'>): string =>
  unmet.length === 0 ? '' : ', but for paint that no offer covers';
