// Model: how long the work takes. Every number is minutes unless its name says otherwise; likely values.

import type { Unit } from './sheets.js';
import type { Layer } from './words.js';
import type { Job } from './work.js';

/** Minutes with their P10 and P90. */
export interface MinuteRange {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** One coat of one layer of one step: what goes over every figure of a batch before the next begins. */
export interface Pass {
  readonly step: number;
  readonly layer: Layer;
  /** 1 for the first. */
  readonly coat: number;
  /** By spray can or airbrush; else in the hand, by brush, sponge or spatula. */
  readonly spray: boolean;
  readonly zones: readonly string[];
  /** Each once, in step order. */
  readonly paints: readonly string[];
  /** What is laid and how: what one setup serves. */
  readonly palette: string;
  /** Figures of the job that still need it. */
  readonly figures: number;
  readonly brushMinPerFigure: number;
  /** Once for each batch; 0 for further coats of the same paint. */
  readonly setupMin: number;
  /** Before the next pass may begin on the same figure. */
  readonly driesMin: number;
}

/** What some figures painted together take, pass by pass over all of them. */
export interface BatchTime {
  readonly figures: number;
  /** So many batches of the job are like this one. */
  readonly batches: number;
  /** Tool in hand, on all figures of one such batch. */
  readonly brushMin: number;
  readonly setupMin: number;
  /** Nothing to do but wait for paint to dry. */
  readonly waitingMin: number;
  /** From the first setup to the last stroke; the last coat's drying is not counted. */
  readonly elapsedMin: number;
  /** No order of work whatever can be shorter. */
  readonly atLeastMin: number;
  /** `proved`: no other order of work is shorter. Else step by step is a rule of thumb, and might be beaten. */
  readonly shortest: 'proved' | 'rule of thumb';
}

/** The smallest batch at which nothing waits, and what makes it so large. */
export interface SmallestBatch {
  /** 1 or more; undefined where no batch is large enough, since a step takes no time at all. */
  readonly figures: number | undefined;
  /** The pass whose drying asks for so many; undefined where one figure alone never waits. */
  readonly becauseOf: Pass | undefined;
}

/** Time of one job; the same for every unit that shares it. */
export interface JobTime {
  readonly job: Job;
  /** The whole scheme on one figure. */
  readonly brushMinPerFigure: number;
  readonly brushPerFigure: MinuteRange;
  /** The rest is about what is still to be done, on the whole job; all 0 and empty where it is finished. */
  readonly brushMin: number;
  readonly setupMin: number;
  readonly waitingMin: number;
  /** One batch after the other. */
  readonly elapsedMin: number;
  readonly passes: readonly Pass[];
  readonly batches: readonly BatchTime[];
  readonly smallestBatchWithoutWaiting: SmallestBatch;
  /** The same where what dries long is left for the end of an evening. */
  readonly smallestBatchBetweenLongDrying: SmallestBatch;
}

/** One stretch of an evening. */
export type EveningPiece =
  | {
      readonly what: 'painting' | 'spraying';
      readonly unit: string;
      readonly pass: Pass;
      /** Not whole only where one figure takes longer than an evening. */
      readonly figures: number;
      /** Setup included. */
      readonly minutes: number;
      readonly setupMin: number;
    }
  | { readonly what: 'waiting'; readonly minutes: number };

export interface Evening {
  readonly pieces: readonly EveningPiece[];
  /** Waiting included; never more than `evening min`. */
  readonly minutes: number;
}

export interface UnitTime {
  readonly unit: Unit;
  readonly time: JobTime;
  /**
   * The evening, from 1, on which its last figure is finished; undefined where it is finished, not spelled out, or planned
   * for in part.
   */
  readonly doneOnEvening: number | undefined;
}

/** Time stage: what is still to be done, by one painter. */
export interface TimePlan {
  readonly brushMin: number;
  readonly brushRange: MinuteRange;
  readonly setupMin: number;
  readonly waitingMin: number;
  /** One batch after the other, one unit after the other, without a break. */
  readonly elapsedMin: number;
  readonly eveningMin: number;
  /** How many evenings, with batches overlapping so that little waits. */
  readonly evenings: number;
  /** The first evenings, piece by piece: all of them unless the army is very large. */
  readonly spelledOut: readonly Evening[];
  /** True where evenings past those spelled out are reckoned from the work left, at the same pace. */
  readonly eveningsReckoned: boolean;
  /** In the army sheet's order. */
  readonly units: readonly UnitTime[];
}
