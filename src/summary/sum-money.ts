// Summary: money so far. In: what was spent, real use beside its estimate, costs of use. Out: sums, not yet rounded.

import type { FinishedFigure, MoneySums } from '../model/cost-sums.js';
import { type Amount, roundMinor, sumMinor, zeroMinor } from '../model/money.js';
import type { Costs, JobCost, UnitCost } from '../model/plan.js';
import type { ShelfMoney, UseBeside } from '../model/spent.js';
import type { Job } from '../model/work.js';

export function sumMoney({ money, costs }: { readonly money: ShelfMoney; readonly costs: Costs }): MoneySums {
  const { begunWith, boughtMinor, used, spent } = money;
  return {
    isTold: spent.length > 0 || roundMinor(used) > 0,
    paid: begunWith.plus(boughtMinor),
    spentMinor: spent.reduce((sum, { minor }) => sum + minor, 0),
    finished: listFinished(costs.units, money.useBeside),
  };
}

/** By figure and scheme, each on average; only where some paint of it was measured. */
function listFinished(
  units: readonly UnitCost[],
  useBeside: ReadonlyMap<string, UseBeside>,
): FinishedFigure[] {
  const jobs = new Map<Job, { use: JobCost; figures: number }>();
  for (const { job, use, unit } of units) {
    const isTold = !job.unfinished && job.lines.some(({ paint }) => useBeside.has(paint));
    if (isTold) jobs.set(job, { use, figures: (jobs.get(job)?.figures ?? 0) + unit.count });
  }
  const sums = new Map<string, FinishedFigure>();
  for (const [job, { use, figures }] of jobs) {
    const { figure, scheme } = job;
    const really = reallyCost(job, use, useBeside);
    const one = { figure, scheme, figures, estimated: use.perFigure, really };
    const key = `${figure}\n${scheme}`;
    const before = sums.get(key);
    sums.set(key, before === undefined ? one : together(before, one));
  }
  return [...sums.values()];
}

/** Each line's cost times what its paint took over what it should have taken. */
function reallyCost(
  { lines, count }: Job,
  { lines: costs, perFigure, extrasPerFigure }: JobCost,
  useBeside: ReadonlyMap<string, UseBeside>,
): Amount {
  const each = lines.map(({ paint }, at) => {
    const { usedMl, estimatedMl } = useBeside.get(paint) ?? asEstimated;
    return (costs[at]?.exactMinor ?? zeroMinor).times(usedMl).div(estimatedMl).div(count);
  });
  return { exactMinor: sumMinor([...each, extrasPerFigure.exactMinor]), atLeast: perFigure.atLeast };
}

const asEstimated: UseBeside = { usedMl: 1, estimatedMl: 1 };

function together(a: FinishedFigure, b: FinishedFigure): FinishedFigure {
  const figures = a.figures + b.figures;
  const average = (of: 'estimated' | 'really'): Amount => ({
    exactMinor: a[of].exactMinor.times(a.figures).plus(b[of].exactMinor.times(b.figures)).div(figures),
    atLeast: a[of].atLeast || b[of].atLeast,
  });
  return { ...a, figures, estimated: average('estimated'), really: average('really') };
}
