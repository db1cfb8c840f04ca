// Estimate: what one more figure of each unit asks for. In: the estimate. Out: ml per figure and per sitting by paint.
import { likely } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import { remember } from '../model/remember.js';
import type { Estimate, Job, Line, UnitDemand } from '../model/work.js';
import { countSittings } from './estimate-film.js';

/** What a job's figures and sittings take of each paint. */
type Demand = Pick<UnitDemand, 'perFigureMl' | 'perSittingMl'>;

/**
 * Each unit's demand in the order in which figures are painted: by priority, then by row; steps already done ask for
 * nothing. Paint put out for n figures in batches of b is `n x per figure + ceil(n / b) x per sitting`, exactly; what is
 * left of a unit that the log calls half done is spread evenly over its figures.
 */
export function listDemands(estimate: Estimate, assumptions: Assumptions): UnitDemand[] {
  return inPaintingOrder(estimate, (job) => demandOfJob(job, job.remaining, assumptions));
}

/** The same for figures started anew: the whole scheme. */
export function listDemandsAnew(estimate: Estimate, assumptions: Assumptions): UnitDemand[] {
  return inPaintingOrder(estimate, (job) => demandOfJob(job, job.lines, assumptions));
}

function inPaintingOrder({ units }: Estimate, demandOf: (job: Job) => Demand): UnitDemand[] {
  // A job has one count and batch, so units that share it share the very same maps.
  const sharedDemand = remember(demandOf);
  return [...units]
    .sort((a, b) => a.unit.priority - b.unit.priority || a.unit.row - b.unit.row)
    .map(({ unit: { unit, priority, count, batch }, job }) => ({
      ...{ unit, priority, figures: count, batch },
      ...sharedDemand(job),
    }));
}

function demandOfJob(job: Job, lines: readonly Line[], assumptions: Assumptions): Demand {
  const painter = likely(assumptions, 'painter');
  const perFigureMl = new Map<string, number>();
  const perSittingMl = new Map<string, number>();
  const add = (to: Map<string, number>, paint: string, ml: number): unknown =>
    to.set(paint, (to.get(paint) ?? 0) + ml);
  const sittings = countSittings(job.count, job.batch);
  for (const { paint, putOutMl, leftoverMl } of lines) {
    const kept = leftoverMl * painter;
    add(perFigureMl, paint, (putOutMl - kept) / job.count);
    add(perSittingMl, paint, kept / sittings);
  }
  return { perFigureMl, perSittingMl };
}
