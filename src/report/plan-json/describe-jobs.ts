// plan.json: units, and the jobs that they share. In: units with job, cost and time. Out: entries with rounded numbers.
import type { JobBench } from '../../model/bench.js';
import { type Amount, exactMinor } from '../../model/money.js';
import type { Plan, UnitCost } from '../../model/plan.js';
import type { Range } from '../../model/ranges.js';
import { remember } from '../../model/remember.js';
import type { JobSummary } from '../../model/summary.js';
import type { Job, Line } from '../../model/work.js';
import { describeReason } from './describe-colour.js';
import { describeCostRange } from './describe-sure.js';
import { describeJobTime } from './describe-time.js';
import type { PlanDocument } from './plan-document.js';
import { type Money, roundNumber, roundNumbers } from './write-values.js';

type DocumentUnit = PlanDocument['units'][number];
type DocumentJob = PlanDocument['jobs'][number];

/** Units in the order of the army sheet, made whenever they are asked for: 100,000 never stand in memory together. */
export function describeUnits(
  { costs, estimate, time }: Plan,
  { cash, cost }: Money,
): Iterable<DocumentUnit> {
  const places = new Map([...estimate.jobs.keys()].map((job, place) => [job, place]));
  const perFigure = divideMinor(cost);
  return {
    *[Symbol.iterator]() {
      for (const [at, { unit, job, cashMinor }] of costs.units.entries())
        yield {
          unit: unit.unit,
          ...(unit.army === undefined ? {} : { army: unit.army }),
          job: places.get(job) ?? 0,
          cash: cash(cashMinor),
          cashPerFigure: perFigure({ minor: cashMinor, count: unit.count }),
          doneOnEvening: time.units[at]?.doneOnEvening ?? null,
        };
    },
  };
}

/** Whole minor units over a whole count, as a decimal of six digits rounded half up. */
const divideMinor = (write: Money['cost']) =>
  remember(
    ({ minor, count }: { readonly minor: number; readonly count: number }) =>
      write(exactMinor(minor).div(count)),
    ({ minor, count }) => `${minor}/${count}`,
  );

/** Jobs in the order in which they are met. */
export function describeJobs(plan: Plan, money: Money): DocumentJob[] {
  const { costs, estimate, summary, time, ranges } = plan;
  const costOf = new Map(costs.units.map((unit) => [unit.job, unit]));
  const timeOf = new Map(time.units.map((unit) => [unit.time.job, unit.time]));
  return [...estimate.jobs].flatMap(([job, units]) => {
    const [cost, sums, minutes] = [costOf.get(job), summary.jobs.get(job), timeOf.get(job)];
    if (cost === undefined || sums === undefined || minutes === undefined) return [];
    const range = ranges.perFigure.get(job);
    return {
      ...describeJob({ job, units, cost, sums, range }, money),
      time: describeJobTime(minutes),
      bench: describeBench(summary.bench.jobs.get(job)),
      lines: describeLines(cost, money),
    };
  });
}

interface CountedJob {
  readonly job: Job;
  /** How many units share it. */
  readonly units: number;
  readonly cost: UnitCost;
  readonly sums: JobSummary;
  /** Cost of use of one figure; undefined where it is sure. */
  readonly range: Range | undefined;
}

/** Units of one job have one figure and count, so the price of their figures is the job's too. */
function describeJob(
  { job, units, cost: { use, figuresPriceMinor }, sums, range }: CountedJob,
  money: Money,
): Omit<DocumentJob, 'time' | 'bench' | 'lines'> {
  const { figure, scheme, count, batch, done, unfinished, notPainted } = job;
  const { steps, stepsFinished, begun, trust } = sums;
  const likely = use.perFigure.exactMinor.toNumber();
  const { low, high } = range ?? { low: likely, high: likely };
  const each = describeCostRange({ low, high }, money);
  const all = describeCostRange({ low: low * count, high: high * count }, money);
  const split = (amounts: ReadonlyMap<string, Amount>) =>
    [...amounts].map(([name, amount]) => ({ name, ...money.useCost(amount) }));
  return {
    ...{ figure, scheme, count, batch, done, units, unfinished, steps, stepsFinished, begun },
    areaCm2: roundNumber(job.areaCm2),
    putOutMl: roundNumber(sums.wholeMl),
    putOutRemainingMl: roundNumber(sums.remainingMl),
    useCostPerFigure: money.cost(use.perFigure.exactMinor),
    ...{ useCostPerFigureLow: each.low, useCostPerFigureHigh: each.high },
    extrasPerFigure: money.cost(use.extrasPerFigure.exactMinor),
    layers: split(sums.costByLayer),
    zones: split(sums.costByZone),
    useCost: money.cost(use.whole.exactMinor),
    ...{ useCostLow: all.low, useCostHigh: all.high, atLeast: use.whole.atLeast },
    useCostRemaining: money.cost(use.remaining.exactMinor),
    remainingAtLeast: use.remaining.atLeast,
    figuresPrice: money.maybeCash(figuresPriceMinor),
    ...{ notPainted, mark: trust.mark, biggestDoubt: trust.biggestDoubt },
  };
}

const describeBench = (bench: JobBench | undefined): DocumentJob['bench'] =>
  bench === undefined
    ? null
    : {
        ...{ batch: bench.batch, batches: bench.batches, figures: bench.figures },
        steps: bench.steps.map(({ step, zone, layer, figures, coats, driesMin, startNext, paints }) => ({
          ...{ step, zone, layer, figures, coats, driesMin, startNext },
          paints: paints.map(({ paint, isSwap, coatMl, coatHighMl, drops, highDrops }) => ({
            ...roundNumbers({ paint, isSwap, coatMl, coatHighMl }),
            ...{ drops: drops ?? null, highDrops: highDrops ?? null },
          })),
        })),
      };

function describeLines({ job, use }: UnitCost, { useCost }: Money): DocumentJob['lines'] {
  const unpriced: Amount = { exactMinor: exactMinor(0), atLeast: true };
  return job.remaining.map((line, at) => {
    const { mark, biggestDoubt } = line;
    return { ...describeOwn(line), ...useCost(use.remainingLines[at] ?? unpriced), mark, biggestDoubt };
  });
}

/** All of a line but its cost and what it is doubted for. */
function describeOwn(line: Line) {
  const { step, figures, zone, layer, method, paint, areaCm2, areaShare, coats, coatsBecause } = line;
  const { thin, mixShare, sittings, onFigureMl, leftoverMl, putOutMl } = line;
  return {
    ...{ step, figures, zone, layer, method, paint },
    ...roundNumbers({ areaCm2, areaShare }),
    coats,
    ...(coatsBecause !== undefined && { coatsBecause: describeReason(coatsBecause) }),
    ...{ thin, ...roundNumbers({ mixShare, sittings, onFigureMl, leftoverMl, putOutMl }) },
  };
}
