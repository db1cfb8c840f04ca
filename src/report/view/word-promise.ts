// Report view: what the order promises, in a few sentences. In: the plan. Out: text for the answer and the promise's section.
import type { Plan } from '../../model/plan.js';
import type { NumberWords } from './word-numbers.js';
import { wordReached, wordTimes } from './word-sure.js';

/** Shares nearer to each other than this read alike. */
const sameShare = 0.0005;

/** True where paints that no shop offers keep the whole army from what holds for all others. */
export const isHeldBack = ({ promised: { metOfOffered, metOnFreshDraws } }: Plan): boolean =>
  metOfOffered.chance - metOnFreshDraws.chance > sameShare;

/** True where the offers do not reach the promise, even for the paints that are on offer. */
export const isMissed = ({ promised: { surePercent, metOfOffered } }: Plan): boolean =>
  metOfOffered.chance + 3 * metOfOffered.error < surePercent / 100;

/** In the answer: what the cash is for, how well that held, and what less would do. '' for a plan without any need. */
export function wordPromise(plan: Plan, words: NumberWords): string {
  const { promised, ranges, order } = plan;
  if (ranges.paints.size === 0) return '';
  const sure = words.percent(promised.surePercent / 100);
  const asked = words.count(promised.surePercent);
  const reached = wordReached(promised.metOfOffered, words);
  const apart = isHeldBack(plan) ? ', leaving out paints that no shop offers' : '';
  const promise = isMissed(plan)
    ? ` Asked for was ${sure}: the offers reach only ${reached} on fresh draws${apart}.`
    : ` Sure ${sure}: in ${asked} of ${words.count(100)} armies like this nothing runs out (on fresh draws ${reached})${apart}.`;
  return order.lines.length === 0 ? promise : `${promise}${wordLikely(plan, words)}`;
}

/** What just the likely needs would cost, and how rarely that does. */
function wordLikely({ promised: { likely } }: Plan, words: NumberWords): string {
  return ` Just the likely needs would cost ${words.money(likely.cashMinor)}, and do in ${wordTimes(likely.met, words)}.`;
}
