// Report view: what weighings have shown. In: the plan's weighings. Out: use against the estimate, row by row and in all.
import type { Weighing } from '../../../model/ranges.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { type NumberWords, wordDate } from '../../words/word-numbers.js';
import type { WeighWords } from './words.js';

export interface LearnedView {
  /** What the weighings say together, or how to begin. */
  readonly says: string;
  readonly rows: readonly WeighingRow[];
  /** How many there are where only the latest are listed; else what the error is. */
  readonly note: string;
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

type LearnedWords = WeighWords['learned'];

/** Also without a weighing: then it says how to begin. */
export function viewLearned({ plan, words, lang }: ViewInputs, texts: LearnedWords): LearnedView {
  const { weighings } = plan.learned;
  const times = plan.summary.doubts.times.slice(-shownRows);
  return {
    says: weighings.length === 0 ? texts.begin : texts.says(plan.learned),
    rows: weighings
      .slice(-shownRows)
      .map((weighing, at) => viewWeighing(weighing, { texts, words, lang, times: times[at] })),
    note: weighings.length > shownRows ? texts.more(shownRows, weighings.length) : texts.error,
  };
}

interface RowInputs {
  readonly texts: LearnedWords;
  readonly words: NumberWords;
  readonly lang: string;
  /** Used over expected. */
  readonly times: number | undefined;
}

function viewWeighing(weighing: Weighing, { texts, words, lang, times }: RowInputs): WeighingRow {
  const { date, paint, unit, figures, expectedMl } = weighing;
  return {
    date: wordDate(date, lang),
    paint,
    unit,
    figures: words.count(figures),
    used: texts.used(weighing),
    expected: words.ml(expectedMl),
    times: times === undefined ? '' : texts.usedTimes(times),
  };
}
