// Estimate: what one more figure of each unit asks for. In: the estimate. Out: ml per figure and per sitting by paint.
import type { Estimate, Job, UnitDemand } from '../model/plan.js';

/** A job's demand, of its remaining work or of the whole scheme from the start. */
type Demand = Pick<UnitDemand, 'perFigureMl' | 'perSittingMl'>;

/**
 * Each unit's demand in the order in which figures are painted: by priority, then by row. Paint put out for n
 * figures in batches of b is `n x per figure + ceil(n / b) x per sitting`, exactly. `again` takes the whole scheme
 * for figures started anew; else steps already done ask for nothing.
 */
export function listDemands({ units }: Estimate, painter: number, again = false): UnitDemand[] {
  // A job has one count and batch, so units that share it share the very same maps.
  const demandOf = new Map<Job, Demand>();
  return [...units]
    .sort((a, b) => a.unit.priority - b.unit.priority || a.unit.row - b.unit.row)
    .map(({ unit, job }) => {
      const demand = demandOf.get(job) ?? demandOfJob(job, painter, again);
      demandOf.set(job, demand);
      const { unit: name, priority, count, batch } = unit;
      return { unit: name, priority, figures: count, batch, ...demand };
    });
}

function demandOfJob(job: Job, painter: number, again: boolean): Demand {
  const perFigureMl = new Map<string, number>();
  const perSittingMl = new Map<string, number>();
  const add = (to: Map<string, number>, paint: string, ml: number): unknown =>
    to.set(paint, (to.get(paint) ?? 0) + ml);
  for (const { paint, putOutMl, leftoverMl, sittings, remaining } of job.lines) {
    if (!remaining && !again) continue;
    const kept = leftoverMl * painter;
    add(perFigureMl, paint, (putOutMl - kept) / job.count);
    add(perSittingMl, paint, kept / sittings);
  }
  return { perFigureMl, perSittingMl };
}
