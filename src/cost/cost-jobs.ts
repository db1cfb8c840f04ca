// Cost: the cost of use of each job. In: a job, prices per ml, extras. Out: exact amounts per line, figure and job.
import { type Amount, addAmounts, type ExactMinor, exactMinor, sumMinor, zeroMinor } from '../model/money.js';
import type { JobCost } from '../model/plan.js';
import { remember } from '../model/remember.js';
import type { Extra } from '../model/sheets.js';
import type { Job, Line } from '../model/work.js';
import type { PaintPrice } from './price-paints.js';

/** What the extras cost per figure: the price of each over the figures that one serves. */
export function extrasPerFigure(extras: readonly Extra[]): ExactMinor {
  return sumMinor(extras.map(({ priceMinor, serves }) => exactMinor(priceMinor).div(serves)));
}

/** Cost of paint put out at a paint's price; what has no price counts nothing and makes the amount `at least`. */
export function costOfPaint(ml: number, price: PaintPrice | undefined): Amount {
  const perMl = price?.perMl;
  const pricedShare = price?.pricedShare ?? 0;
  const exact = perMl === undefined ? zeroMinor : perMl.times(ml).times(pricedShare);
  return { exactMinor: exact, atLeast: ml > 0 && pricedShare < 1 };
}

/** What jobs that have the same lines share, whatever of them is done. */
type SchemeCost = Pick<JobCost, 'lines' | 'extrasPerFigure' | 'whole' | 'perFigure'>;

/**
 * For each job every line, one figure, the whole job and what is still to be done; extras while a step remains. Lines
 * that jobs share are priced once.
 */
export function costJobs(
  jobs: Iterable<Job>,
  prices: ReadonlyMap<string, PaintPrice>,
  extras: ExactMinor,
): Map<Job, JobCost> {
  const costOf = remember((line: Line) => costOfPaint(line.putOutMl, prices.get(line.paint)));
  const schemeOf = remember(
    (job: Job) => costScheme(job, job.lines.map(costOf), extras),
    ({ lines }) => lines,
  );
  return new Map(
    [...jobs].map((job) => {
      const remainingLines = job.remaining.map(costOf);
      const left = job.unfinished ? [...remainingLines, extrasOf(job, extras)] : remainingLines;
      return [job, { ...schemeOf(job), remainingLines, remaining: addAmounts(left) }];
    }),
  );
}

function costScheme(job: Job, lines: readonly Amount[], extras: ExactMinor): SchemeCost {
  const whole = addAmounts([...lines, extrasOf(job, extras)]);
  return {
    lines,
    extrasPerFigure: { exactMinor: extras, atLeast: false },
    whole,
    perFigure: { exactMinor: whole.exactMinor.div(job.count), atLeast: whole.atLeast },
  };
}

const extrasOf = ({ count }: Job, extras: ExactMinor): Amount => ({
  exactMinor: extras.times(count),
  atLeast: false,
});
