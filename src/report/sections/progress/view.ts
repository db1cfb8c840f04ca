// Report view: what is finished. In: the plan, its sums. Out: per unit steps finished and begun, and how its need has shrunk.
import type { Plan } from '../../../model/plan.js';
import type { Job, Line } from '../../../model/work.js';
import type { WorkSums } from '../../words/sum-work.js';
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

export interface ProgressRow {
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

/** Units that get a row of their own, as in the costs. */
const unitRows = 1000;

/** Undefined where nothing is done yet. */
export function viewProgress({ plan, sums, words }: ViewInputs): ProgressView | undefined {
  const { units, jobs } = plan.estimate;
  if (![...jobs.keys()].some(isBegun)) return undefined;
  const viewOf = viewOnce(words);
  const rows = units.slice(0, unitRows).map(({ unit, job }) => ({ unit: unit.unit, ...viewOf(job) }));
  return {
    lead: wordLead(plan, sums, words),
    rows,
    showBegun: rows.some(({ begun }) => begun !== ''),
    more:
      units.length > unitRows
        ? `The first ${words.count(unitRows)} units are listed; plan.json tells how far each of the others is.`
        : '',
  };
}

const isBegun = ({ done, count, remaining, unfinished }: Job): boolean =>
  done > 0 || !unfinished || remaining.some(({ figures }) => figures < count);

function wordLead({ estimate }: Plan, { wholeMl, remainingMl }: WorkSums, words: NumberWords): string {
  const finished = estimate.units.filter(({ job }) => !job.unfinished);
  const digits = mlDigits(wholeMl);
  const shrunk = `What the army needs has shrunk from ${words.ml(wholeMl, digits)} to ${words.ml(remainingMl, digits)}.`;
  const whole = ` ${countOf(words, finished.length, 'unit')} of ${words.count(estimate.units.length)} ${finished.length === 1 ? 'is' : 'are'} finished.`;
  return finished.length === 0 ? shrunk : `${shrunk}${whole}`;
}

/** A job that many units share is worded once. */
function viewOnce(words: NumberWords): (job: Job) => Omit<ProgressRow, 'unit'> {
  const known = new Map<Job, Omit<ProgressRow, 'unit'>>();
  return (job) => {
    const row = known.get(job) ?? viewJob(job, words);
    known.set(job, row);
    return row;
  };
}

function viewJob(job: Job, words: NumberWords): Omit<ProgressRow, 'unit'> {
  const steps = new Set(job.lines.map(({ step }) => step));
  const left = leftByStep(job.remaining);
  const [wholeMl, remainingMl] = [sumMl(job.lines), sumMl(job.remaining)];
  const digits = mlDigits(wholeMl);
  return {
    figures: words.count(job.count),
    steps: `${words.count(steps.size - left.size)} of ${words.count(steps.size)}`,
    begun: wordBegun(job.count, left, words),
    whole: words.ml(wholeMl, digits),
    remaining: remainingMl === 0 ? 'nothing' : words.ml(remainingMl, digits),
    doneShare: wholeMl > 0 ? Math.max(0, 1 - remainingMl / wholeMl) : 1,
  };
}

/** Figures that still lack something of a step. */
function leftByStep(remaining: readonly Line[]): ReadonlyMap<number, number> {
  const left = new Map<number, number>();
  for (const { step, figures } of remaining) left.set(step, Math.max(figures, left.get(step) ?? 0));
  return left;
}

function wordBegun(count: number, left: ReadonlyMap<number, number>, words: NumberWords): string {
  const begun = [...left].filter(([, figures]) => figures < count);
  return listOf(
    begun.map(
      ([step, figures]) =>
        `step ${words.count(step)} on ${words.count(count - figures)} of ${words.count(count)}`,
    ),
  );
}

const sumMl = (lines: readonly Line[]): number => lines.reduce((sum, { putOutMl }) => sum + putOutMl, 0);
