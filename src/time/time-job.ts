// Time: one job. In: a job with its lines, assumptions. Out: minutes per figure, its passes and its batches.
import { likely } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import type { BatchTime, JobTime, MinuteRange, Pass } from '../model/time.js';
import type { Job } from '../model/work.js';
import { findSmallestBatch } from './find-smallest-batch.js';
import { listPasses } from './list-passes.js';
import { rangeMinutes } from './range-minutes.js';
import { type Round, timeBatch } from './time-batch.js';

/** A pass over some figures of a batch. */
export interface BatchRound extends Round {
  readonly pass: Pass;
}

/** Batches of a job, one after the other, that have the same work before them. */
export interface AlikeBatches {
  readonly batches: number;
  readonly rounds: readonly BatchRound[];
}

/** What jobs of one figure, scheme and progress share, however many figures they have. */
interface Recipe {
  readonly brushPerFigure: MinuteRange;
  readonly passes: readonly Pass[];
}

/** A job's time, and its batches as the evenings take them up. */
export interface TimedJob {
  readonly time: JobTime;
  readonly alike: readonly AlikeBatches[];
}

/**
 * Times jobs. What a job still takes, and what one of its figures takes in all: a finished job has no passes and takes
 * nothing, its minutes per figure stay.
 */
export function timeJobs(jobs: Iterable<Job>, assumptions: Assumptions): ReadonlyMap<Job, TimedJob> {
  const recipeOf = rememberRecipes(assumptions);
  const longMin = likely(assumptions, 'long drying');
  return new Map([...jobs].map((job) => [job, timeJob(job, recipeOf(job), longMin)]));
}

/** The log may have taken a job's figures apart; else only their number tells it from others of its recipe. */
function rememberRecipes(assumptions: Assumptions): (job: Job) => Recipe {
  const known = new Map<string, Recipe>();
  return (job) => {
    const { figure, scheme, done, count, lines, remaining } = job;
    const toDo = lines.reduce((sum, { step }) => (step > done ? sum + 1 : sum), 0);
    const isWhole = remaining.length === toDo && remaining.every(({ figures }) => figures === count);
    const key = `${figure}\n${scheme}\n${done}`;
    const same = isWhole ? known.get(key) : undefined;
    if (same !== undefined)
      return { ...same, passes: same.passes.map((pass) => ({ ...pass, figures: count })) };
    const brushPerFigure = rangeMinutes([{ lines, times: () => 1 }], assumptions);
    const recipe = { brushPerFigure, passes: listPasses(remaining, assumptions) };
    if (isWhole) known.set(key, recipe);
    return recipe;
  };
}

function timeJob(job: Job, { brushPerFigure, passes }: Recipe, longMin: number): TimedJob {
  const alike = cutBatches(passes, job.batch);
  const batches: readonly BatchTime[] = alike.map(({ batches, rounds }) => ({
    batches,
    ...timeBatch(rounds),
  }));
  const sum = (of: (batch: BatchTime) => number): number =>
    batches.reduce((total, batch) => total + of(batch) * batch.batches, 0);
  const time = {
    job,
    brushMinPerFigure: brushPerFigure.likely,
    brushPerFigure,
    brushMin: sum(({ brushMin }) => brushMin),
    setupMin: sum(({ setupMin }) => setupMin),
    waitingMin: sum(({ waitingMin }) => waitingMin),
    elapsedMin: sum(({ elapsedMin }) => elapsedMin),
    passes,
    batches,
    smallestBatchWithoutWaiting: findSmallestBatch(passes),
    smallestBatchBetweenLongDrying: findSmallestBatch(passes, longMin),
  };
  return { time, alike };
}

/**
 * Full batches and one for the rest, alike ones counted together. Where the log has passes done on some figures, the
 * figures left of each pass fill the batches from the first, as sittings are counted for paint.
 */
export function cutBatches(passes: readonly Pass[], batch: number): AlikeBatches[] {
  const most = passes.reduce((figures, pass) => Math.max(figures, pass.figures), 0);
  const cuts = passes.flatMap(({ figures }) => [Math.floor(figures / batch), Math.ceil(figures / batch)]);
  const ends = [...new Set([...cuts, Math.ceil(most / batch)])]
    .filter((end) => end > 0)
    .sort((a, b) => a - b);
  return ends.map((end, index) => {
    const first = ends[index - 1] ?? 0;
    return { batches: end - first, rounds: roundsOf(passes, batch, first) };
  });
}

function roundsOf(passes: readonly Pass[], batch: number, first: number): BatchRound[] {
  return passes.flatMap((pass) => {
    const figures = Math.min(batch, pass.figures - first * batch);
    if (figures <= 0) return [];
    const { brushMinPerFigure, setupMin, driesMin } = pass;
    return [{ pass, figures, brushMinPerFigure, setupMin, driesMin }];
  });
}
