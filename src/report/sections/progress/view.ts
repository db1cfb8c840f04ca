// Report view: what is finished. In: the plan, its sums. Out: per unit steps finished and begun, and how its need has shrunk.
import type { Plan } from '../../../model/plan.js';
import { type JobSummary, mostUnitRows } from '../../../model/summary.js';
import type { Job } from '../../../model/work.js';
import type { ViewInputs } from '../../words/view-inputs.js';
import { countOf, listOf, mlDigits, type NumberWords } from '../../words/word-numbers.js';

export interface ProgressView {
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
  const { estimate, summary } = plan;
  if (![...summary.jobs.values()].some(({ isBegun }) => isBegun)) return undefined;
  const rowOf = new Map([...summary.jobs].map(([job, sums]) => [job, viewJob(job, sums, words)]));
  const rows = estimate.units.slice(0, mostUnitRows).flatMap(({ unit, job }) => {
    const row = rowOf.get(job);
    return row === undefined ? [] : [{ unit: unit.unit, ...row }];
  });
  return {
    lead: wordLead(plan, words),
    rows,
    showBegun: rows.some(({ begun }) => begun !== ''),
    more:
      estimate.units.length > mostUnitRows
        ? `The first ${words.count(mostUnitRows)} units are listed; plan.json tells how far each of the others is.`
        : '',
  };
}

function wordLead({ estimate, summary }: Plan, words: NumberWords): string {
  const { wholeMl, remainingMl } = summary.work;
  const finished = estimate.units.filter(({ job }) => !job.unfinished);
  const digits = mlDigits(wholeMl);
  const shrunk = `What the army needs has shrunk from ${words.ml(wholeMl, digits)} to ${words.ml(remainingMl, digits)}.`;
  const whole = ` ${countOf(words, finished.length, 'unit')} of ${words.count(estimate.units.length)} ${finished.length === 1 ? 'is' : 'are'} finished.`;
  return finished.length === 0 ? shrunk : `${shrunk}${whole}`;
}

function viewJob({ count }: Job, sums: JobSummary, words: NumberWords): Omit<ProgressRow, 'unit'> {
  const { wholeMl, remainingMl, steps, stepsFinished, begun, doneShare } = sums;
  const digits = mlDigits(wholeMl);
  const wordStep = ({ step, figures }: JobSummary['begun'][number]): string =>
    `step ${words.count(step)} on ${words.count(figures)} of ${words.count(count)}`;
  return {
    figures: words.count(count),
    steps: `${words.count(stepsFinished)} of ${words.count(steps)}`,
    begun: listOf(begun.map(wordStep)),
    whole: words.ml(wholeMl, digits),
    remaining: remainingMl === 0 ? 'nothing' : words.ml(remainingMl, digits),
    doneShare,
  };
}
