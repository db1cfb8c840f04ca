// Summary: each job by itself. In: jobs with their costs. Out: cost of one figure by layer and zone, what is done.
import { type Amount, exactMinor, zeroMinor } from '../model/money.js';
import type { JobCost, UnitCost } from '../model/plan.js';
import type { JobSummary } from '../model/summary.js';
import type { Job, Line } from '../model/work.js';
import { type Doubts, noDoubts, noteDoubt, trustOf } from './doubts.js';

/** A job that many units share is summed once. */
export function sumJobs(jobs: Iterable<Job>, units: readonly UnitCost[]): Map<Job, JobSummary> {
  const uses = new Map(units.map(({ job, use }) => [job, use]));
  return new Map([...jobs].map((job) => [job, sumJob({ job, use: uses.get(job) })]));
}

interface CostedJob {
  readonly job: Job;
  /** Undefined for a job that no unit has any more. */
  readonly use: Pick<JobCost, 'lines'> | undefined;
}

function sumJob(unit: CostedJob): JobSummary {
  const { job } = unit;
  const eachLine = costEach(unit);
  const [wholeMl, remainingMl] = [sumMl(job.lines), sumMl(job.remaining)];
  const steps = new Set(job.lines.map(({ step }) => step)).size;
  const left = leftByStep(job.remaining);
  const begun = [...left].filter(([, figures]) => figures < job.count);
  return {
    wholeMl,
    remainingMl,
    costByLayer: splitCost(eachLine, ({ layer }) => layer),
    costByZone: splitCost(eachLine, ({ zone }) => zone),
    trust: trustOf(doubtCost(unit)),
    steps,
    stepsFinished: steps - left.size,
    begun: begun.map(([step, figures]) => ({ step, figures: job.count - figures })),
    isBegun: job.done > 0 || !job.unfinished || job.remaining.some(({ figures }) => figures < job.count),
    doneShare: wholeMl > 0 ? Math.max(0, 1 - remainingMl / wholeMl) : 1,
  };
}

const sumMl = (lines: readonly Line[]): number => lines.reduce((sum, { putOutMl }) => sum + putOutMl, 0);

/** Figures that still lack something of a step. */
function leftByStep(remaining: readonly Line[]): ReadonlyMap<number, number> {
  const left = new Map<number, number>();
  for (const { step, figures } of remaining) left.set(step, Math.max(figures, left.get(step) ?? 0));
  return left;
}

interface LineCost {
  readonly line: Line;
  readonly each: Amount;
}

/** What each line of the whole scheme costs on one figure. */
function costEach({ job, use }: CostedJob): LineCost[] {
  return job.lines.flatMap((line, index) => {
    const cost = use?.lines[index];
    if (cost === undefined || job.count === 0) return [];
    return { line, each: { ...cost, exactMinor: exactMinor(cost.exactMinor).div(job.count) } };
  });
}

/** The same, lines summed by what they have in common. */
function splitCost<Key>(lines: readonly LineCost[], keyOf: (line: Line) => Key): Map<Key, Amount> {
  const sums = new Map<Key, Amount>();
  for (const { line, each } of lines) {
    const sum = sums.get(keyOf(line)) ?? { exactMinor: zeroMinor, atLeast: false };
    sums.set(keyOf(line), {
      exactMinor: sum.exactMinor.plus(each.exactMinor),
      atLeast: sum.atLeast || each.atLeast,
    });
  }
  return sums;
}

/** What a unit's cost is doubted for, weighed by the money that hangs on it. */
export function doubtCost({ job, use }: CostedJob, doubts = noDoubts(), units = 1): Doubts {
  job.lines.forEach((line, index) => {
    noteDoubt(doubts, line, (use?.lines[index]?.exactMinor.toNumber() ?? 0) * units);
  });
  return doubts;
}
