// Summary: the next batch of each unit, step by step. In: jobs with ml and passes, swaps. Out: cards by evening.
import { likely } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import { at } from '../model/at.js';
import {
  type BatchMl,
  type BenchCard,
  type BenchPaint,
  type BenchStep,
  type BenchSums,
  type JobBench,
  listBench,
} from '../model/bench.js';
import type { SwapTaken } from '../model/colour.js';
import { groupBy } from '../model/group-by.js';
import type { PlanResults } from '../model/plan.js';
import type { JobTime, Pass } from '../model/time.js';
import type { Job, Line } from '../model/work.js';

type Inputs = Pick<PlanResults, 'estimate' | 'ranges' | 'time' | 'swaps'> & {
  readonly assumptions: Assumptions;
};

/** A finished army has no cards. */
export function sumBench({ estimate, ranges, time, swaps, assumptions }: Inputs): BenchSums {
  const { unfinished, withCard } = listBench(estimate);
  const times = new Map(time.units.map((one) => [one.time.job, one.time]));
  const evenings = new Map(time.units.map((one) => [one.unit, one.doneOnEvening]));
  const places = new Map(estimate.units.map(({ unit }, place) => [unit, place + 1]));
  const jobs = new Map<Job, JobBench>();
  const benchOf = (job: Job): JobBench => {
    const ml = ranges.batches.get(job) ?? [];
    const passes = times.get(job)?.passes ?? [];
    const bench = jobs.get(job) ?? sumJobBench(job, { ml, passes, swaps, assumptions });
    jobs.set(job, bench);
    return bench;
  };
  const cards = withCard
    .filter(({ job }) => ranges.batches.has(job))
    .map(
      ({ unit, job }): BenchCard => ({
        ...{ no: places.get(unit) ?? 0, unit },
        ...{ doneOnEvening: evenings.get(unit), bench: benchOf(job) },
      }),
    )
    .sort((a, b) => (a.doneOnEvening ?? Infinity) - (b.doneOnEvening ?? Infinity) || 0);
  return { jobs, cards, more: unfinished.length - cards.length };
}

interface JobInputs {
  /** In the order of `job.remaining`. */
  readonly ml: readonly BatchMl[];
  readonly passes: JobTime['passes'];
  readonly swaps: readonly SwapTaken[];
  readonly assumptions: Assumptions;
}

/** Batches are counted from the first of the whole job, though some may be done. */
function sumJobBench(job: Job, inputs: JobInputs): JobBench {
  const left = Math.max(...job.remaining.map(({ figures }) => figures));
  const batches = Math.ceil(job.count / job.batch);
  const figures = Math.min(job.batch, left);
  const parted = findParted(job, inputs.ml);
  return {
    batch: batches - Math.ceil(left / job.batch) + 1,
    ...{ batches, figures },
    steps: groupMixes(job.remaining).map((mix) => sumStep(mix, { ...inputs, job, parted, batchOf: figures })),
  };
}

/** Steps of which the batch lacks some paints on other figures than the rest, or has some already. */
function findParted({ lines, remaining }: Job, ml: readonly BatchMl[]): ReadonlySet<number> {
  const all = groupBy(lines, ({ step }) => step);
  const left = groupBy(remaining.keys(), (place) => at(remaining, place).step);
  const isParted = ([step, places]: [number, number[]]): boolean =>
    places.length < (all.get(step) ?? []).length ||
    new Set(places.map((place) => at(ml, place).figures)).size > 1;
  return new Set([...left].filter(isParted).map(([step]) => step));
}

interface Mixed {
  readonly line: Line;
  /** Its place in `job.remaining`. */
  readonly place: number;
}

/** Paints of a mix go on together. */
function groupMixes(lines: readonly Line[]): Mixed[][] {
  const placed = lines.map((line, place) => ({ line, place }));
  const mixes = groupBy(placed, ({ line }) => [line.step, line.zone, line.layer, line.method].join('\n'));
  return [...mixes.values()];
}

interface StepInputs extends JobInputs {
  readonly job: Job;
  readonly parted: ReadonlySet<number>;
  /** Figures of the batch. */
  readonly batchOf: number;
}

function sumStep(mix: readonly Mixed[], inputs: StepInputs): BenchStep {
  const { ml, passes, parted, assumptions, batchOf } = inputs;
  const { step, zone, layer, method, coats, thin } = at(mix, 0).line;
  const isMine = (pass: Pass) => pass.step === step && pass.layer === layer && pass.zones.includes(zone);
  const last = passes.findLastIndex(isMine);
  const pass = passes[last];
  const waits = pass !== undefined && isWaiting(pass, passes[last + 1], { batchOf, assumptions });
  const spray = pass?.spray ?? false;
  return {
    ...{ step, zone, layer, method, coats, thin },
    figures: Math.max(...mix.map(({ place }) => at(ml, place).figures)),
    driesMin: pass?.driesMin ?? 0,
    startNext: waits,
    isParted: parted.has(step),
    paints: mix.map(({ line, place }) => sumPaint(line, at(ml, place), { ...inputs, spray })),
  };
}

/** What dries long, and is not dry on the first figure when the last one is done and the next paint is out. */
function isWaiting(
  { driesMin, brushMinPerFigure }: Pass,
  next: Pass | undefined,
  { batchOf, assumptions }: Pick<StepInputs, 'batchOf' | 'assumptions'>,
): boolean {
  if (next === undefined || driesMin < likely(assumptions, 'long drying')) return false;
  return driesMin > (batchOf - 1) * brushMinPerFigure + next.setupMin;
}

/** A coat is as much as any other of the line; a coat that leaves some figures out as much as its share. */
function sumPaint(
  { paint, step, coats, method }: Line,
  { figures, likelyMl, highMl }: BatchMl,
  { job, swaps, assumptions, spray }: StepInputs & { readonly spray: boolean },
): BenchPaint {
  const dropMl = likely(assumptions, 'drop');
  const isSwap = swaps.some(
    ({ scheme, steps, by }) => scheme === job.scheme && by === paint && steps.includes(step),
  );
  // A can has no drops, a paste is no liquid.
  const isPoured = !spray && method !== 'spread';
  const [coatMl, coatHighMl] = [likelyMl / coats, highMl / coats];
  const drops = Math.max(1, Math.round(coatMl / dropMl));
  const highDrops = Math.max(drops, Math.ceil(coatHighMl / dropMl - 1e-9));
  return {
    ...{ paint, figures, isSwap, coatMl, coatHighMl },
    ...(isPoured ? { drops, highDrops } : { drops: undefined, highDrops: undefined }),
  };
}
