// Ranges: what the draws say of the army. In: drawn army, estimate, prices. Out: ranges, chances, doubts for the plan.
import type { Assumptions } from '../model/assumption.js';
import { rangeAbout } from '../model/quantiles.js';
import type { Chance, PaintRange, Range, Ranges } from '../model/ranges.js';
import type { Estimate, Job } from '../model/work.js';
import type { DrawnArmy, SummedPaint } from './draw-army.js';
import { drawBatches } from './draw-batches.js';
import { chanceMet } from './fill-shelf.js';
import { sumTerms } from './list-terms.js';
import { openRanking, type Ranking } from './rank-doubts.js';

/** Between these chances of running short a paint's own doubts are worth knowing. */
const tight = { from: 0.01, to: 0.99 };

export interface SumUpInputs {
  readonly drawn: DrawnArmy;
  readonly estimate: Estimate;
  readonly assumptions: Assumptions;
  /** Minor units a ml of paint used; 0 where unpriced. */
  readonly usePerMl: (paint: string) => number;
  /** Minor units a ml of paint bought; undefined where nobody knows. */
  readonly buyPerMl: (paint: string) => number | undefined;
  /** Minor units of extras: on one figure, for the army, and for what is unfinished. */
  readonly extras: { readonly perFigure: number; readonly whole: number; readonly remaining: number };
}

/** Ranges of every need, cost and total, and what they are in doubt for. */
export function sumUpArmy(inputs: SumUpInputs): Ranges {
  const { drawn, estimate, extras } = inputs;
  const ranking = openRanking(drawn, estimate);
  const paints = new Map(drawn.paints.map((one) => [one.paint, rangeOfPaint(one, ranking)]));
  const lack = valueLack(inputs);
  const hasLack = lack.some((minor) => minor > 0);
  return {
    ...drawn.drawing,
    paints,
    chanceAllLast: chanceMet(drawn, { lines: [] }),
    useWhole: shift(rangeOfCost(inputs, 'lines'), extras.whole),
    useRemaining: shift(rangeOfCost(inputs, 'remaining'), extras.remaining),
    perFigure: rangeFigures(inputs),
    batches: drawBatches(estimate, inputs),
    doubts: hasLack ? ranking.doubtsOf(lack) : [],
    remedies: hasLack ? ranking.remediesFor(lack) : [],
  };
}

const shift = ({ low, high }: Range, by: number): Range => ({ low: low + by, high: high + by });

function rangeOfPaint(one: SummedPaint, ranking: Ranking): PaintRange {
  const { chance } = one.range.chanceShort;
  const isTight = chance > tight.from && chance < tight.to;
  return { ...one.range, doubts: isTight ? ranking.doubtsOfPaint(one) : [] };
}

/** That today's pots do not last, for every paint that is needed. */
export function chancesShort({ paints }: DrawnArmy): ReadonlyMap<string, Chance> {
  return new Map(paints.map(({ paint, range }) => [paint, range.chanceShort]));
}

/** What today's pots lack in each draw, at what it costs to buy. */
function valueLack({ drawn, buyPerMl }: SumUpInputs): Float64Array {
  const value = new Float64Array(drawn.drawing.draws);
  for (const { paint, lackMl } of drawn.paints) {
    const perMl = buyPerMl(paint) ?? 0;
    for (let draw = 0; draw < value.length; draw++) {
      value[draw] = (value[draw] as number) + perMl * Math.max(0, lackMl[draw] as number);
    }
  }
  return value;
}

/** The army's paint with each ml counted at its price: of whole schemes, or of what remains. */
function rangeOfCost({ drawn, estimate, usePerMl }: SumUpInputs, which: 'lines' | 'remaining'): Range {
  const sum = sumTerms();
  let likely = 0;
  for (const [job, units] of estimate.jobs) {
    for (const line of job[which]) {
      const times = units * usePerMl(line.paint);
      sum.add(line, job.figure, times);
      likely += times * line.putOutMl;
    }
  }
  return rangeAbout(likely, drawn.putOut(sum.terms));
}

/**
 * Jobs of one figure, scheme and batch differ by little but their last sitting, so one of them is drawn for all: the others
 * take its range in proportion to their own likely cost, which the report has beside it.
 */
function rangeFigures({ drawn, estimate, usePerMl, extras }: SumUpInputs): Map<Job, Range> {
  const known = new Map<string, Range>();
  const ranges = new Map<Job, Range>();
  for (const job of estimate.jobs.keys()) {
    const key = `${job.figure}\n${job.scheme}\n${job.batch}`;
    const likely = job.lines.reduce((sum, { paint, putOutMl }) => sum + putOutMl * usePerMl(paint), 0);
    const range = known.get(key) ?? rangeOfJob(job, likely, { drawn, usePerMl });
    known.set(key, range);
    const each = likely / Math.max(1, job.count);
    ranges.set(job, shift({ low: range.low * each, high: range.high * each }, extras.perFigure));
  }
  return ranges;
}

/** Low and high over likely; 1 where nothing of it has a price. */
function rangeOfJob(
  job: Job,
  likely: number,
  { drawn, usePerMl }: Pick<SumUpInputs, 'drawn' | 'usePerMl'>,
): Range {
  if (likely === 0) return { low: 1, high: 1 };
  const sum = sumTerms();
  for (const line of job.lines) sum.add(line, job.figure, usePerMl(line.paint) / likely);
  return rangeAbout(1, drawn.putOut(sum.terms));
}
