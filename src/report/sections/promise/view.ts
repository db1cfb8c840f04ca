// Report view: what being sure costs. In: the plan's promise. Out: what was reached on fresh draws, what 50 to 95 % cost beside
// just the likely needs, and for which paints the promise can't be kept.
import type { Plan } from '../../../model/plan.js';
import { shareOf } from '../../drawing/scale.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import type { NumberWords } from '../../words/word-numbers.js';
import { wordMore } from '../../words/word-proof.js';
import { wordReached } from '../../words/word-sure.js';
import { type PromiseWords, promiseWords } from './words.js';

export interface PromiseView {
  readonly labels: PromiseWords['labels'];
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
  const { promised, ranges, summary, order } = plan;
  const { standing, reached, isFree, isHeldBack, levels } = summary.promise;
  if (ranges.paints.size === 0 || isFree || standing === 'not sold') return undefined;
  const texts = promiseWords(words);
  return {
    labels: texts.labels,
    lead: texts.lead(promised.surePercent, standing, ranges.paints.size),
    note: texts.note(ranges.draws),
    reached: wordReached(reached, words),
    says: texts.reached(ranges.draws, order, promised, standing),
    plainly: texts.plainly(promised, summary.promise),
    warnings: listWarnings(plan, texts),
    caption: texts.caption(isHeldBack),
    levels: listLevels(plan, words, texts),
    showProved: levels.some(({ proved }) => !proved),
  };
}

function listWarnings({ promised, order, summary }: Plan, texts: PromiseWords): string[] {
  const { standing, surer, isHeldBack } = summary.promise;
  return [
    ...(standing === 'missed' ? [texts.missed(promised.surePercent, surer)] : []),
    ...(isHeldBack && standing !== 'kept' ? [texts.heldBack(promised.metOnFreshDraws, order.unmet)] : []),
  ];
}

function listLevels({ promised, summary }: Plan, words: NumberWords, texts: PromiseWords): PromiseRow[] {
  const { likely, surePercent } = promised;
  const { levels, mostMinor } = summary.promise;
  const first: PromiseRow = {
    label: texts.likely,
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
        label: texts.level(level.surePercent, level.isReached),
        isOwn: level.surePercent === surePercent,
        cash: words.money(level.cashMinor),
        more: wordMore(level.extraMinor, words),
        met: wordReached(level.met, words),
        proved: texts.proved(level.proved),
        share: shareOf(level.cashMinor, mostMinor),
      }),
    ),
  ];
}
