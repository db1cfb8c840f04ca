// Report view: what being sure costs. In: the plan's promise. Out: what was reached on fresh draws, what 50 to 95 % cost beside
// just the likely needs, and for which paints the promise can't be kept.
import type { Plan } from '../../model/plan.js';
import type { PromiseRow, PromiseView } from './promise-view.js';
import type { ViewInputs } from './view-inputs.js';
import { nameOf } from './word-name.js';
import { countOf, listOf, type NumberWords } from './word-numbers.js';
import { isHeldBack, isMissed } from './word-promise.js';
import { wordMore } from './word-proof.js';
import { wordReached, wordTimes } from './word-sure.js';

/** Undefined where nothing is needed any more. */
export function viewPromise({ plan, words }: ViewInputs): PromiseView | undefined {
  const { promised, ranges } = plan;
  if (ranges.paints.size === 0) return undefined;
  const levels = listLevels(plan, words);
  return {
    lead: wordLead(plan, words),
    note: `An army like this is yours with other values for all that nobody knows for sure: each assumption, each pot’s reading. ${words.count(ranges.draws)} of them were drawn to make the order, and as many fresh ones to check it.`,
    reached: wordReached(promised.metOfOffered, words),
    says: `of ${words.count(ranges.draws)} fresh armies like this are finished with ${plan.order.lines.length === 0 ? 'today’s pots' : 'your pots and this order'}${isHeldBack(plan) ? ', as far as the paints on offer go' : ''}. Asked for: ${words.percent(promised.surePercent / 100)}.`,
    plainly: wordPlainly(plan, words),
    warnings: wordWarnings(plan, words),
    caption:
      'The least cash found for each promise, postage included. It is not proved that no other order keeps a promise for less.',
    levels,
    showProved: promised.levels.some(({ proved }) => !proved),
  };
}

function wordLead({ promised, ranges }: Plan, words: NumberWords): string {
  const asked = words.count(promised.surePercent);
  const paints = ranges.paints.size;
  const each =
    paints === 1
      ? ''
      : ` That is more than ${words.percent(promised.surePercent / 100)} for each paint by itself: with ${countOf(words, paints, 'paint')}, one of them would run out far more often. So it can cost much more than what is likely.`;
  return `The order is made so that in ${asked} of ${words.count(100)} armies like this nothing at all runs out.${each}`;
}

/** That a joint promise can cost much more than what is likely. */
function wordPlainly({ promised, order }: Plan, words: NumberWords): string {
  const { likely, surePercent } = promised;
  const sure = words.percent(surePercent / 100);
  const rarely = `alone ${likely.met.chance < 0.5 ? 'would do only' : 'would do'} in ${wordTimes(likely.met, words)} armies like this`;
  const extraMinor = order.totalMinor - likely.cashMinor;
  const likelyCash =
    likely.cashMinor === 0
      ? `Nothing need be bought for the likely needs, which ${rarely}.`
      : `Just the likely needs would cost ${words.money(likely.cashMinor)}, which ${rarely}.`;
  if (extraMinor === 0) return `${likelyCash} To be ${sure} sure costs no more than that.`;
  return `${likelyCash} To be ${sure} sure costs ${wordMore(extraMinor, words)}.`;
}

function wordWarnings(plan: Plan, words: NumberWords): string[] {
  const { promised, order } = plan;
  const named = listOf(
    order.unmet.map(({ paint, ml }) => `${nameOf(paint)} (${words.ml(ml)})`),
    12,
  );
  const lacking = named === '' ? 'paints that no shop offers' : `${named}, which the offers do not cover`;
  const missed = `The offers do not reach ${words.percent(promised.surePercent / 100)}: the most that they can hold is ordered.`;
  const back = `With every paint only ${wordReached(promised.metOnFreshDraws, words)} are finished: the army also hangs on ${lacking}.`;
  return [...(isMissed(plan) ? [missed] : []), ...(isHeldBack(plan) ? [back] : [])];
}

function listLevels({ promised, order }: Plan, words: NumberWords): PromiseRow[] {
  const { likely, levels, surePercent } = promised;
  const most = Math.max(likely.cashMinor, order.totalMinor, ...levels.map(({ cashMinor }) => cashMinor));
  const share = (minor: number): number => (most === 0 ? 0 : minor / most);
  const first: PromiseRow = {
    label: 'the likely needs alone',
    isOwn: false,
    cash: words.money(likely.cashMinor),
    more: '',
    met: wordReached(likely.met, words),
    proved: '',
    share: share(likely.cashMinor),
  };
  return [
    first,
    ...levels.map(
      (level): PromiseRow => ({
        label: `${words.percent(level.surePercent / 100)} sure`,
        isOwn: level.surePercent === surePercent,
        cash: words.money(level.cashMinor),
        more: wordMore(level.cashMinor - likely.cashMinor, words),
        met: wordReached(level.met, words),
        proved: level.proved ? 'proved' : 'not proved',
        share: share(level.cashMinor),
      }),
    ),
  ];
}
