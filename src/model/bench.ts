// Model: what lies ready at the bench. In: nothing. Out: types of the next batch's paint, step by step, and who comes first.
import type { Pass } from './time.js';
import type { Estimate, Job, Line } from './work.js';

/** What all coats of one line take for the next batch. */
export interface BatchMl {
  /** Of the batch, those that still lack it. */
  readonly figures: number;
  readonly likelyMl: number;
  /** Enough nine times in ten (P90), from one batch to the next. */
  readonly highMl: number;
}

/** One paint of a step, for one coat on the next batch. */
export interface BenchPaint extends Pick<BatchMl, 'figures'> {
  readonly paint: string;
  /** True where it goes on instead of the paint that the scheme names. */
  readonly isSwap: boolean;
  readonly coatMl: number;
  readonly coatHighMl: number;
  /** Whole drops of the same, at least one; undefined for what is sprayed or spread. */
  readonly drops: number | undefined;
  readonly highDrops: number | undefined;
}

/** One layer of one zone: a mix has several paints. */
export interface BenchStep
  extends Pick<Line, 'step' | 'zone' | 'layer' | 'method' | 'coats' | 'thin' | 'figures'>,
    Pick<Pass, 'driesMin'> {
  readonly paints: readonly BenchPaint[];
  /** Some paints of this number are done on more figures than others. */
  readonly isParted: boolean;
  /** It dries long, and the batch has nothing else to be painted meanwhile. */
  readonly startNext: boolean;
}

/** The next batch of a job. */
export interface JobBench {
  /** From 1. */
  readonly batch: number;
  readonly batches: number;
  readonly figures: number;
  readonly steps: readonly BenchStep[];
}

export interface BenchCard {
  /** Its unit's place in the army, from 1. */
  readonly no: number;
  readonly unit: Estimate['units'][number]['unit'];
  readonly doneOnEvening: number | undefined;
  readonly bench: JobBench;
}

export interface BenchSums {
  /** Jobs of the units with a card. */
  readonly jobs: ReadonlyMap<Job, JobBench>;
  /** By the evening on which they are finished; those without one last. */
  readonly cards: readonly BenchCard[];
  /** Unfinished units without a card. */
  readonly more: number;
}

/** Units that get a card; the others wait longest. */
const mostCards = 100;

/** Unfinished units in painting order; all of them, and those with a card. */
export function listBench({ units }: Pick<Estimate, 'units'>) {
  const unfinished = units
    .filter(({ job }) => job.remaining.length > 0)
    .sort((a, b) => a.unit.priority - b.unit.priority || a.unit.row - b.unit.row);
  return { unfinished, withCard: unfinished.slice(0, mostCards) };
}
