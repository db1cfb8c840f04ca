// Report view: what the order promises, in a few sentences. In: the plan. Out: text for the answer and the promise's section.
import type { Order } from '../../model/order.js';
import type { Plan } from '../../model/plan.js';
import type { NumberWords } from './word-numbers.js';
import { wordReached, wordTimes } from './word-sure.js';

/** In the answer: what was asked for, how well the order keeps it, and what less would do. '' for a plan without any need. */
export function wordPromise(plan: Plan, words: NumberWords): string {
  const { promised, ranges, order } = plan;
  if (ranges.paints.size === 0) return '';
  const asked = ` Asked for: ${words.sure(promised.surePercent)} sure. ${wordStanding(plan, words)}.`;
  return order.lines.length === 0 ? asked : `${asked}${wordLikely(plan, words)}`;
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
