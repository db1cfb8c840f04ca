// plan.json: units, and the jobs that they share. In: units with job, cost and time. Out: entries with rounded numbers.
import type { JobBench } from '../../model/bench.js';
import { type Amount, type ExactMinor, exactMinor, toMajor } from '../../model/money.js';
import type { Plan, UnitCost } from '../../model/plan.js';
import type { JobSummary } from '../../model/summary.js';
import type { Job, Line } from '../../model/work.js';
import { describeReason } from './describe-colour.js';
import { describeCostRange } from './describe-sure.js';
import { describeJobTime } from './describe-time.js';
import type { PlanDocument } from './plan-document.js';
import { roundNumber, useDigits } from './round-number.js';

type DocumentUnit = PlanDocument['units'][number];
type DocumentJob = PlanDocument['jobs'][number];

/** Units in the order of the army sheet, made whenever they are asked for: 100,000 never stand in memory together. */
export function describeUnits({ costs: { units }, estimate, time, settings }: Plan): Iterable<DocumentUnit> {
  const { currency } = settings;
  const places = new Map([...estimate.jobs.keys()].map((job, place) => [job, place]));
  const perFigure = divideMinor(currency);
  return {
    *[Symbol.iterator]() {
      for (const [at, { unit, job, cashMinor }] of units.entries())
        yield {
          unit: unit.unit,
          ...(unit.army === undefined ? {} : { army: unit.army }),
          job: places.get(job) ?? 0,
          cash: toMajor(cashMinor, currency),
          cashPerFigure: perFigure(cashMinor, unit.count),
          doneOnEvening: time.units[at]?.doneOnEvening ?? null,
        };
    },
  };
}

/** Whole minor units over a whole count, as a decimal of six digits rounded half up. */
function divideMinor(currency: string): (minor: number, count: number) => string {
  const known = new Map<string, string>();
  return (minor, count) => {
    const key = `${minor}/${count}`;
    const text = known.get(key) ?? toMajor(exactMinor(minor).div(count), currency, useDigits);
    known.set(key, text);
    return text;
  };
}

/** Jobs in the order in which they are met. */
export function describeJobs(plan: Plan): DocumentJob[] {
  const { costs, estimate, summary, time } = plan;
  const costOf = new Map(costs.units.map((unit) => [unit.job, unit]));
  const timeOf = new Map(time.units.map((unit) => [unit.time.job, unit.time]));
  return [...estimate.jobs].flatMap(([job, units]) => {
    const [cost, sums, minutes] = [costOf.get(job), summary.jobs.get(job), timeOf.get(job)];
    if (cost === undefined || sums === undefined || minutes === undefined) return [];
    const time = describeJobTime(minutes);
    const bench = describeBench(summary.bench.jobs.get(job));
    return [
      { ...describeJob({ job, units, cost, sums }, plan), time, bench, lines: describeLines(cost, plan) },
    ];
  });
}

interface CountedJob {
  readonly job: Job;
  /** How many units share it. */
  readonly units: number;
  readonly cost: UnitCost;
  readonly sums: JobSummary;
}

/** Units of one job have one figure and count, so the price of their figures is the job's too. */
function describeJob(
  { job, units, cost: { use, figuresPriceMinor }, sums }: CountedJob,
  { ranges, settings: { currency } }: Plan,
): Omit<DocumentJob, 'time' | 'bench' | 'lines'> {
  const { figure, scheme, count, batch, done, unfinished, notPainted } = job;
  const cost = (amount: ExactMinor) => toMajor(amount, currency, useDigits);
  const likely = use.perFigure.exactMinor.toNumber();
  const { low, high } = ranges.perFigure.get(job) ?? { low: likely, high: likely };
  const each = describeCostRange({ low, high }, currency);
  const all = describeCostRange({ low: low * count, high: high * count }, currency);
  const split = (amounts: ReadonlyMap<string, Amount>) =>
    [...amounts].map(([name, { exactMinor: exact, atLeast }]) => ({ name, useCost: cost(exact), atLeast }));
  return {
    ...{ figure, scheme, count, batch, done, units, unfinished },
    steps: sums.steps,
    stepsFinished: sums.stepsFinished,
    begun: sums.begun,
    areaCm2: roundNumber(job.areaCm2),
    putOutMl: roundNumber(sums.wholeMl),
    putOutRemainingMl: roundNumber(sums.remainingMl),
    useCostPerFigure: cost(use.perFigure.exactMinor),
    useCostPerFigureLow: each.low,
    useCostPerFigureHigh: each.high,
    extrasPerFigure: cost(use.extrasPerFigure.exactMinor),
    layers: split(sums.costByLayer),
    zones: split(sums.costByZone),
    useCost: cost(use.whole.exactMinor),
    useCostLow: all.low,
    useCostHigh: all.high,
    atLeast: use.whole.atLeast,
    useCostRemaining: cost(use.remaining.exactMinor),
    remainingAtLeast: use.remaining.atLeast,
    figuresPrice: figuresPriceMinor === undefined ? null : toMajor(figuresPriceMinor, currency),
    notPainted,
    mark: sums.trust.mark,
    biggestDoubt: sums.trust.biggestDoubt,
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
            ...{ paint, isSwap, coatMl: roundNumber(coatMl), coatHighMl: roundNumber(coatHighMl) },
            ...{ drops: drops ?? null, highDrops: highDrops ?? null },
          })),
        })),
      };

function describeLines({ job, use }: UnitCost, { settings }: Plan): DocumentJob['lines'] {
  const unpriced: Amount = { exactMinor: exactMinor(0), atLeast: true };
  return job.remaining.map((line, at) => {
    const amount = use.remainingLines[at] ?? unpriced;
    return {
      ...describeOwn(line),
      useCost: toMajor(amount.exactMinor, settings.currency, useDigits),
      atLeast: amount.atLeast,
      mark: line.mark,
      biggestDoubt: line.biggestDoubt,
    };
  });
}

/** All of a line but its cost and what it is doubted for. */
const describeOwn = (line: Line) => ({
  step: line.step,
  figures: line.figures,
  zone: line.zone,
  layer: line.layer,
  method: line.method,
  paint: line.paint,
  areaCm2: roundNumber(line.areaCm2),
  areaShare: roundNumber(line.areaShare),
  coats: line.coats,
  ...(line.coatsBecause !== undefined && { coatsBecause: describeReason(line.coatsBecause) }),
  thin: line.thin,
  mixShare: roundNumber(line.mixShare),
  sittings: line.sittings,
  onFigureMl: roundNumber(line.onFigureMl),
  leftoverMl: roundNumber(line.leftoverMl),
  putOutMl: roundNumber(line.putOutMl),
});
