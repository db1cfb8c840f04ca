// Report view: what being sure costs. In: the plan's promise. Out: what was reached on fresh draws, what 50 to 95 % cost beside
// just the likely needs, and for which paints the promise can't be kept.
import type { Plan } from '../../model/plan.js';
import type { PromiseRow, PromiseView } from './promise-view.js';
import type { ViewInputs } from './view-inputs.js';
import { nameOf } from './word-name.js';
import { countOf, listOf, type NumberWords } from './word-numbers.js';
import { reaches, standingOf } from './word-promise.js';
import { wordMore } from './word-proof.js';
import { wordReached, wordTimes } from './word-sure.js';

/** Undefined where nothing is needed any more, or no sureness costs anything, or none can be bought. */
export function viewPromise({ plan, words }: ViewInputs): PromiseView | undefined {
  const { promised, ranges } = plan;
  const standing = standingOf(plan);
  const isFree = promised.levels.every(({ cashMinor }) => cashMinor === 0);
  if (ranges.paints.size === 0 || isFree || standing === 'not sold') return undefined;
  const reached = standing === 'apart' ? promised.metOfOffered : promised.metOnFreshDraws;
  const levels = listLevels(plan, words);
  return {
    lead: wordLead(plan, words),
    note: `An army like this is yours with other values for all that nobody knows for sure: each assumption, each pot’s reading. ${words.count(ranges.draws)} of them were drawn to make the order, and as many fresh ones to check it.`,
    reached: wordReached(reached, words),
    says: `of ${words.count(ranges.draws)} fresh armies like this are finished with ${plan.order.lines.length === 0 ? 'today’s pots' : 'your pots and this order'}${standing === 'apart' ? ', as far as the paints on offer go' : ''}.${wordAsked(promised, words)}`,
    plainly: wordPlainly(plan, words),
    warnings: wordWarnings(plan, words),
    caption: `The least cash found for each promise, postage included. It is not proved that no other order keeps a promise for less.${isApart(promised) ? ' Paints that no shop offers are left out.' : ''}`,
    levels,
    showProved: promised.levels.some(({ proved }) => !proved),
  };
}

/** Shares nearer to each other than this read alike. */
const sameShare = 0.0005;

const isApart = ({ metOfOffered, metOnFreshDraws }: Plan['promised']): boolean =>
  metOfOffered.chance - metOnFreshDraws.chance > sameShare;

const wordAsked = ({ surePercent }: Plan['promised'], words: NumberWords): string =>
  surePercent === undefined ? '' : ` Asked for: ${words.sure(surePercent)}.`;

function wordLead(plan: Plan, words: NumberWords): string {
  const { promised, ranges } = plan;
  if (promised.surePercent === undefined)
    return 'The order is made for no promise: when a pot runs dry, another follows. To be sure that nothing at all runs out costs more at once.';
  const made = standingOf(plan) === 'missed' ? 'was to be made' : 'is made';
  const asked = words.count(promised.surePercent);
  const paints = ranges.paints.size;
  const each =
    paints === 1
      ? ''
      : ` That is more than ${words.sure(promised.surePercent)} for each paint by itself: with ${countOf(words, paints, 'paint')}, one of them would run out far more often. So it can cost much more than what is likely.`;
  return `The order ${made} so that in ${asked} of ${words.count(100)} armies like this nothing at all runs out.${each}`;
}

/** That a joint promise can cost much more than what is likely. */
function wordPlainly(plan: Plan, words: NumberWords): string {
  const { promised, order } = plan;
  const { likely, surePercent } = promised;
  const isPlain = surePercent === undefined || standingOf(plan) === 'missed';
  const what = isPlain ? 'This order' : `To be ${words.sure(surePercent)} sure`;
  const rarely = `alone ${likely.met.chance < 0.5 ? 'would do only' : 'would do'} in ${wordTimes(likely.met, words)} armies like this`;
  const extraMinor = order.totalMinor - likely.cashMinor;
  const likelyCash =
    likely.cashMinor === 0
      ? `Nothing need be bought for the likely needs, which ${rarely}.`
      : `Just the likely needs would cost ${words.money(likely.cashMinor)}, which ${rarely}.`;
  if (extraMinor === 0) return `${likelyCash} ${what} costs no more than that.`;
  return `${likelyCash} ${what} costs ${wordMore(extraMinor, words)}.`;
}

function wordWarnings(plan: Plan, words: NumberWords): string[] {
  const { promised, order } = plan;
  const named = listOf(
    order.unmet.map(({ paint, ml }) => `${nameOf(paint)} (${words.ml(ml)})`),
    12,
  );
  const lacking = named === '' ? 'paints that no shop offers' : `${named}, which the offers do not cover`;
  const back = `With every paint only ${wordReached(promised.metOnFreshDraws, words)} are finished: the army also hangs on ${lacking}.`;
  const isHeldBack = isApart(promised) && standingOf(plan) !== 'kept';
  return [...wordMissed(plan, words), ...(isHeldBack ? [back] : [])];
}

/** That the offers do not reach what was asked for, and what reaches the farthest. */
function wordMissed(plan: Plan, words: NumberWords): string[] {
  const { surePercent, metOfOffered, levels } = plan.promised;
  if (surePercent === undefined || standingOf(plan) !== 'missed') return [];
  const missed = `No order from these offers is ${words.sure(surePercent)} sure.`;
  const [surest] = [...levels].sort((a, b) => b.met.chance - a.met.chance);
  if (surest === undefined || surest.met.chance <= metOfOffered.chance) return [missed];
  return [
    `${missed} The surest found reaches ${wordReached(surest.met, words)}, for ${words.money(surest.cashMinor)}.`,
  ];
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
        label: `${words.sure(level.surePercent)} sure${reaches(level.met, level.surePercent) ? '' : ', not reached'}`,
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
