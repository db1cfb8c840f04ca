// Report view: what being sure costs. In: the plan's promise. Out: what was reached on fresh draws, what 50 to 95 % cost beside
// just the likely needs, and for which paints the promise can't be kept.
import type { Plan } from '../../../model/plan.js';
import { shareOf } from '../../drawing/scale.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { wordMore } from '../../words/word-proof.js';
import { isRather, wordReached, wordTimes } from '../../words/word-sure.js';

export interface PromiseView {
  readonly lead: string;
  /** How the draws are made, and what is proved. */
  readonly note: string;
  /** `81.8% ± 0.4%` */
  readonly reached: string;
  readonly says: string;
  /** What it costs against just the likely needs. */
  readonly plainly: string;
  /** Where the offers do not reach the promise, or some paint is not on offer. */
  readonly warnings: readonly string[];
  readonly caption: string;
  readonly levels: readonly PromiseRow[];
  /** True where some rows are not proved, so that each says how it stands. */
  readonly showProved: boolean;
}

/** Cash for one level; the first row is that of the likely needs. */
interface PromiseRow {
  readonly label: string;
  /** True for the level that the order keeps. */
  readonly isOwn: boolean;
  readonly cash: string;
  /** Against the likely needs; '' for these. */
  readonly more: string;
  /** `81.8% ± 0.4%` */
  readonly met: string;
  readonly proved: string;
  /** The bar, as a share of the most cash; the text beside it says the same. */
  readonly share: number;
}

/** Undefined where nothing is needed any more, or no sureness costs anything, or none can be bought. */
export function viewPromise({ plan, words }: ViewInputs): PromiseView | undefined {
  const { promised, ranges, summary } = plan;
  const { standing, reached, isFree, isHeldBack, levels } = summary.promise;
  if (ranges.paints.size === 0 || isFree || standing === 'not sold') return undefined;
  return {
    lead: wordLead(plan, words),
    note: `An army like this is yours with other values for all that nobody knows for sure: each assumption, each pot’s reading. ${words.count(ranges.draws)} of them were drawn to make the order, and as many fresh ones to check it.`,
    reached: wordReached(reached, words),
    says: `of ${words.count(ranges.draws)} fresh armies like this are finished with ${plan.order.lines.length === 0 ? 'today’s pots' : 'your pots and this order'}${standing === 'apart' ? ', as far as the paints on offer go' : ''}.${wordAsked(promised, words)}`,
    plainly: wordPlainly(plan, words),
    warnings: wordWarnings(plan, words),
    caption: `The least cash found for each promise, postage included. It is not proved that no other order keeps a promise for less.${isHeldBack ? ' Paints that no shop offers are left out.' : ''}`,
    levels: listLevels(plan, words),
    showProved: levels.some(({ proved }) => !proved),
  };
}

const wordAsked = ({ surePercent }: Plan['promised'], words: NumberWords): string =>
  surePercent === undefined ? '' : ` Asked for: ${words.sure(surePercent)}.`;

function wordLead(plan: Plan, words: NumberWords): string {
  const { promised, ranges, summary } = plan;
  if (promised.surePercent === undefined)
    return 'The order is made for no promise: when a pot runs dry, another follows. To be sure that nothing at all runs out costs more at once.';
  const made = summary.promise.standing === 'missed' ? 'was to be made' : 'is made';
  const asked = words.count(promised.surePercent);
  const paints = ranges.paints.size;
  const each =
    paints === 1
      ? ''
      : ` That is more than ${words.sure(promised.surePercent)} for each paint by itself: with ${countOf(words, paints, 'paint')}, one of them would run out far more often. So it can cost much more than what is likely.`;
  return `The order ${made} so that in ${asked} of ${words.count(100)} armies like this nothing at all runs out.${each}`;
}

/** That a joint promise can cost much more than what is likely. */
function wordPlainly({ promised, summary }: Plan, words: NumberWords): string {
  const { likely, surePercent } = promised;
  const { standing, extraMinor } = summary.promise;
  const isPlain = surePercent === undefined || standing === 'missed';
  const what = isPlain ? 'This order' : `To be ${words.sure(surePercent)} sure`;
  const rarely = `alone ${isRather(likely.met) ? 'would do' : 'would do only'} in ${wordTimes(likely.met, words)} armies like this`;
  const likelyCash =
    likely.cashMinor === 0
      ? `Nothing need be bought for the likely needs, which ${rarely}.`
      : `Just the likely needs would cost ${words.money(likely.cashMinor)}, which ${rarely}.`;
  if (extraMinor === 0) return `${likelyCash} ${what} costs no more than that.`;
  return `${likelyCash} ${what} costs ${wordMore(extraMinor, words)}.`;
}

function wordWarnings(plan: Plan, words: NumberWords): string[] {
  const { promised, order, summary } = plan;
  const named = listOf(
    order.unmet.map(({ paint, ml }) => `${nameOf(paint)} (${words.ml(ml)})`),
    12,
  );
  const lacking = named === '' ? 'paints that no shop offers' : `${named}, which the offers do not cover`;
  const back = `With every paint only ${wordReached(promised.metOnFreshDraws, words)} are finished: the army also hangs on ${lacking}.`;
  const isHeldBack = summary.promise.isHeldBack && summary.promise.standing !== 'kept';
  return [...wordMissed(plan, words), ...(isHeldBack ? [back] : [])];
}

/** That the offers do not reach what was asked for, and what reaches the farthest. */
function wordMissed({ promised, summary }: Plan, words: NumberWords): string[] {
  const { surePercent } = promised;
  const { standing, surer } = summary.promise;
  if (surePercent === undefined || standing !== 'missed') return [];
  const missed = `No order from these offers is ${words.sure(surePercent)} sure.`;
  if (surer === undefined) return [missed];
  return [
    `${missed} The surest found reaches ${wordReached(surer.met, words)}, for ${words.money(surer.cashMinor)}.`,
  ];
}

function listLevels({ promised, summary }: Plan, words: NumberWords): PromiseRow[] {
  const { likely, surePercent } = promised;
  const { levels, mostMinor } = summary.promise;
  const first: PromiseRow = {
    label: 'the likely needs alone',
    isOwn: false,
    cash: words.money(likely.cashMinor),
    more: '',
    met: wordReached(likely.met, words),
    proved: '',
    share: shareOf(likely.cashMinor, mostMinor),
  };
  return [
    first,
    ...levels.map(
      (level): PromiseRow => ({
        label: `${words.sure(level.surePercent)} sure${level.isReached ? '' : ', not reached'}`,
        isOwn: level.surePercent === surePercent,
        cash: words.money(level.cashMinor),
        more: wordMore(level.extraMinor, words),
        met: wordReached(level.met, words),
        proved: level.proved ? 'proved' : 'not proved',
        share: shareOf(level.cashMinor, mostMinor),
      }),
    ),
  ];
}
