// Summary: what the army costs, unit by unit and a figure on average. In: costs and ranges. Out: sums, not yet rounded.

import { type CostSums, mostUnitRows, type UnitSums } from '../model/cost-sums.js';
import { type Amount, addAmounts, addPrices, roundMinor, timesAmount, zeroMinor } from '../model/money.js';
import type { Costs, JobCost, UnitCost } from '../model/plan.js';
import type { Range, Ranges } from '../model/ranges.js';
import type { Estimate } from '../model/work.js';
import { type Doubts, noDoubts, trustOf } from './doubts.js';
import { doubtCost } from './sum-jobs.js';

interface Inputs {
  readonly costs: Costs;
  readonly ranges: Ranges;
  readonly estimate: Pick<Estimate, 'jobs'>;
  readonly figureCount: number;
}

export function sumCosts({ costs, ranges, estimate, figureCount }: Inputs): CostSums {
  const shown = costs.units.slice(0, mostUnitRows);
  const each = (minor: number): number => (figureCount === 0 ? 0 : minor / figureCount);
  return {
    perFigure: {
      exactMinor: figureCount === 0 ? zeroMinor : costs.useWhole.exactMinor.div(figureCount),
      atLeast: costs.useWhole.atLeast,
    },
    perFigureRange: { low: each(ranges.useWhole.low), high: each(ranges.useWhole.high) },
    spread: spreadUnits(costs),
    trust: trustOf(doubtCosts(costs, estimate)),
    units: [...shown.map((unit) => sumUnit(unit, ranges)), ...sumRest(costs.units.slice(mostUnitRows))],
    army: settle({
      unit: undefined,
      figures: figureCount,
      whole: costs.useWhole,
      wholeRange: ranges.useWhole,
      remaining: costs.useRemaining,
      cashMinor: costs.cashMinor,
      figuresPrice: costs.figuresPrice,
    }),
    dearestMinor: Math.max(
      0,
      ...shown.map(({ use, job }) =>
        Math.max(use.perFigure.exactMinor.toNumber(), ranges.perFigure.get(job)?.high ?? 0),
      ),
    ),
  };
}

function spreadUnits({ units }: Costs): CostSums['spread'] {
  if (units.some(({ use }) => use.perFigure.atLeast && use.perFigure.exactMinor.isZero())) return undefined;
  const figures = units.map(({ unit, use }) => ({
    unit: unit.unit,
    exactMinor: use.perFigure.exactMinor,
  }));
  let [least, most] = [figures[0], figures[0]];
  for (const one of figures) {
    if (least === undefined || one.exactMinor.lt(least.exactMinor)) least = one;
    if (most === undefined || one.exactMinor.gte(most.exactMinor)) most = one;
  }
  if (least === undefined || most === undefined || most.exactMinor.eq(least.exactMinor)) return undefined;
  return { least, most };
}

/** Doubts of all units' costs; a job that several units share is walked once. */
function doubtCosts({ units }: Costs, { jobs }: Pick<Estimate, 'jobs'>): Doubts {
  const doubts = noDoubts();
  const seen = new Map(units.map(({ job, use }) => [job, use]));
  for (const [job, use] of seen) doubtCost({ job, use }, doubts, jobs.get(job) ?? 0);
  return doubts;
}

function sumUnit(
  { unit, job, use, cashMinor, figuresPriceMinor }: UnitCost,
  { perFigure }: Ranges,
): UnitSums {
  return settle({
    unit,
    figures: unit.count,
    whole: use.whole,
    wholeRange: timesFigures(perFigure.get(job), unit.count),
    remaining: use.remaining,
    cashMinor,
    figuresPrice: addPrices([figuresPriceMinor]),
  });
}

const timesFigures = (range: Range | undefined, count: number): Range | undefined =>
  range === undefined || range.low === range.high
    ? undefined
    : { low: range.low * count, high: range.high * count };

/** All units without a row of their own as one; none of none. Each job's cost is multiplied, not added up. */
function sumRest(units: readonly UnitCost[]): UnitSums[] {
  if (units.length === 0) return [];
  const jobs = new Map<JobCost, number>();
  for (const { use } of units) jobs.set(use, (jobs.get(use) ?? 0) + 1);
  const add = (of: 'whole' | 'remaining'): Amount =>
    addAmounts([...jobs].map(([use, times]) => timesAmount(use[of], times)));
  return [
    settle({
      unit: undefined,
      figures: units.reduce((sum, { unit }) => sum + unit.count, 0),
      whole: add('whole'),
      wholeRange: undefined,
      remaining: add('remaining'),
      cashMinor: units.reduce((sum, one) => sum + one.cashMinor, 0),
      figuresPrice: addPrices(units.map(({ figuresPriceMinor }) => figuresPriceMinor)),
    }),
  ];
}

/** Adds what follows from the sums: what is done already, and the cash for one figure. */
function settle(sums: Omit<UnitSums, 'done' | 'cashPerFigureMinor'>): UnitSums {
  const { figures, whole, remaining, cashMinor } = sums;
  const rest = whole.exactMinor.minus(remaining.exactMinor);
  return {
    ...sums,
    done: { exactMinor: rest.gt(0) ? rest : zeroMinor, atLeast: whole.atLeast },
    cashPerFigureMinor: figures === 0 ? 0 : roundMinor(zeroMinor.plus(cashMinor).div(figures)),
  };
}
