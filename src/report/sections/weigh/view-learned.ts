// Report view: what weighings have shown. In: the plan's weighings. Out: use against the estimate, row by row and in all.
import type { Learned, Weighing } from '../../../model/ranges.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { countOf, type NumberWords, wordDate } from '../../words/word-numbers.js';

export interface LearnedView {
  /** What the weighings say together, or how to begin. */
  readonly says: string;
  readonly rows: readonly WeighingRow[];
  /** Said where only the latest are listed; else ''. */
  readonly more: string;
}

interface WeighingRow {
  readonly date: string;
  readonly paint: string;
  readonly unit: string;
  readonly figures: string;
  readonly used: string;
  readonly expected: string;
  /** Used over expected: `1.2 times`. */
  readonly times: string;
}

/** The latest weighings that are listed. */
const shownRows = 20;

/** Also without a weighing: then it says how to begin. */
export function viewLearned({ plan, words, lang }: ViewInputs): LearnedView {
  const { weighings } = plan.learned;
  const latest = weighings.slice(-shownRows);
  const times = plan.summary.doubts.times.slice(-shownRows);
  return {
    says: wordLearned(plan.learned, words),
    rows: latest.map((weighing, at) => viewWeighing(weighing, { words, lang, times: times[at] })),
    more:
      weighings.length > shownRows
        ? `The latest ${words.count(shownRows)} of ${words.count(weighings.length)}; plan.json lists each.`
        : '',
  };
}

function wordLearned({ weighings, slope, slopeError, widened }: Learned, words: NumberWords): string {
  if (weighings.length === 0)
    return 'Nothing yet. Weigh a pot before and after a batch and write both into the log sheet, with unit and figures: the film, transfer and leftover of its method get a value of your own, and every range here narrows.';
  const times = `${tenths(slope, words)} times what is expected (± ${tenths(Math.max(0.1, slopeError), words)})`;
  const from = countOf(words, weighings.length, 'weighing');
  const apart =
    widened > 1
      ? ` They contradict one another: each counts as ${tenths(widened, words)} times less exact than it is written. Something changed between them, or one is wrong.`
      : '';
  return `You use ${times}, by ${from}, all methods together. What they teach is in every number of this report; expected is what would be without them.${apart}`;
}

const tenths = (value: number, words: NumberWords): string => words.bareMl(value, 1);

interface RowInputs {
  readonly words: NumberWords;
  readonly lang: string;
  /** Used over expected. */
  readonly times: number | undefined;
}

function viewWeighing(
  { date, paint, unit, figures, ...ml }: Weighing,
  { words, lang, times }: RowInputs,
): WeighingRow {
  const { usedMl, expectedMl, errorMl } = ml;
  return {
    date: wordDate(date, lang),
    paint,
    unit,
    figures: words.count(figures),
    used: `${words.ml(usedMl)} ± ${words.ml(errorMl)}`,
    expected: words.ml(expectedMl),
    times: times === undefined ? '' : `${tenths(times, words)} times`,
  };
}
