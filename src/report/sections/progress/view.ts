// Report view: what is finished. In: the plan, its sums. Out: per unit steps finished and begun, and how its need has shrunk.

import { mostUnitRows } from '../../../model/cost-sums.js';
import type { JobSummary } from '../../../model/summary.js';
import type { Job } from '../../../model/work.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { listOf, mlDigits, type NumberWords } from '../../words/word-numbers.js';
import { type ProgressWords, progressWords } from './words.js';

export interface ProgressView extends Pick<ProgressWords, 'labels'> {
  /** How the need has shrunk. */
  readonly lead: string;
  readonly rows: readonly ProgressRow[];
  /** True where some step is begun and not finished. */
  readonly showBegun: boolean;
  /** Said where not every unit has a row; else ''. */
  readonly more: string;
}

interface ProgressRow {
  readonly unit: string;
  readonly figures: string;
  /** `2 of 5` */
  readonly steps: string;
  /** Steps that some figures have had: `step 3 on 6 of 10`; '' for none. */
  readonly begun: string;
  /** Paint of the whole scheme, and what of it is still to be put out. */
  readonly whole: string;
  readonly remaining: string;
  /** Paint put out already, of 1. */
  readonly doneShare: number;
}

/** Undefined where nothing is done yet. */
export function viewProgress({ plan, words }: ViewInputs): ProgressView | undefined {
  const { units } = plan.estimate;
  const { jobs, work } = plan.summary;
  if (![...jobs.values()].some(({ isBegun }) => isBegun)) return undefined;
  const texts = progressWords(words);
  const rowOf = new Map([...jobs].map(([job, sums]) => [job, viewJob(job, sums, { texts, words })]));
  const rows = units.slice(0, mostUnitRows).flatMap(({ unit, job }) => {
    const row = rowOf.get(job);
    return row === undefined ? [] : [{ unit: unit.unit, ...row }];
  });
  const finished = units.filter(({ job }) => !job.unfinished);
  return {
    labels: texts.labels,
    lead: texts.lead(work, finished.length, units.length),
    rows,
    showBegun: rows.some(({ begun }) => begun !== ''),
    more: units.length > mostUnitRows ? texts.more(mostUnitRows) : '',
  };
}

interface Wording {
  readonly texts: ProgressWords;
  readonly words: NumberWords;
}

function viewJob({ count }: Job, sums: JobSummary, { texts, words }: Wording): Omit<ProgressRow, 'unit'> {
  const { wholeMl, remainingMl, steps, stepsFinished, begun, doneShare } = sums;
  const digits = mlDigits(wholeMl);
  return {
    figures: words.count(count),
    steps: texts.steps(stepsFinished, steps),
    begun: listOf(begun.map((step) => texts.begun(step, count))),
    whole: words.ml(wholeMl, digits),
    remaining: remainingMl === 0 ? texts.nothing : words.ml(remainingMl, digits),
    doneShare,
  };
}
