// Model: how sure. What the draws say of needs, shelf, cost and cash, what the order promises, what weighings taught.
// Volumes ml of usable paint; `...Minor` minor units, unrounded where a range.
import type { BatchMl } from './bench.js';
import type { IsoDate } from './sheets.js';
import type { Job } from './work.js';

/** One time in ten less than `low` (P10), one time in ten more than `high` (P90); a likely value beyond takes its place. */
export interface Range {
  readonly low: number;
  readonly high: number;
}

/** A share of draws, 0 to 1, and its standard error. */
export interface Chance {
  readonly chance: number;
  readonly error: number;
}

/** An assumption or a pot's reading, and the share (0 to 1) of some spread that it causes by itself. */
export interface Doubt {
  readonly name: string;
  readonly share: number;
}

export interface PaintRange {
  readonly needMl: Range;
  readonly haveMl: Range;
  /** That today's pots do not last. */
  readonly chanceShort: Chance;
  /** What causes the spread of what is missing of it, the greatest first; empty where nothing is in doubt. */
  readonly doubts: readonly Doubt[];
}

/** What would settle most of the doubt, as something to do. */
export interface Remedy {
  /** `weigh`: before and after the next batch done by a method; `measure`: a figure; `read`: weigh a pot; `count`: look into one. */
  readonly how: 'weigh' | 'measure' | 'read' | 'count';
  /** The method, the figure, or the paint. */
  readonly what: string;
  /** For `weigh`: the paint of which that method puts out most; for the others blank. */
  readonly paint: string;
  /** Share of the spread of the cash that goes, 0 to 1. */
  readonly share: number;
}

/** Cash for one level of promise. */
export interface PromiseLevel {
  readonly surePercent: number;
  readonly cashMinor: number;
  /** That its order lets the whole army finish. */
  readonly met: Chance;
  /** False where a search for its order ended early. */
  readonly proved: boolean;
}

/** How often the order is enough for the army as a whole. */
export interface Promised {
  /** Undefined where the order is made for no promise. */
  readonly surePercent: number | undefined;
  /** Share of the draws, from which the order was made, in which nothing runs out once the order has come. */
  readonly met: Chance;
  /** The same on draws that the order has not seen. */
  readonly metOnFreshDraws: Chance;
  /** `metOnFreshDraws` for the paints that shops offer; higher where the army needs others too. */
  readonly metOfOffered: Chance;
  /** Cash for the likely needs alone, each paint by itself, and how often that would do. */
  readonly likely: { readonly cashMinor: number; readonly met: Chance };
  /** Ascending. */
  readonly levels: readonly PromiseLevel[];
}

/** A log row held against the estimate. */
export interface Weighing {
  readonly row: number;
  /** A count: the unit and the figures are those of all the work since the one before. */
  readonly isCount?: true;
  readonly date: IsoDate;
  readonly paint: string;
  readonly unit: string;
  readonly figures: number;
  readonly usedMl: number;
  /** What the assumptions expect without any weighing. */
  readonly expectedMl: number;
  /** Standard deviation of `usedMl`: the scale twice, and the difference between one batch and the next. */
  readonly errorMl: number;
}

/** What the log teaches: use against the estimate, as a line through the origin. */
export interface Learned {
  readonly weighings: readonly Weighing[];
  /** Used over expected; 1: just as expected. */
  readonly slope: number;
  readonly slopeError: number;
  /** How many times wider than thought the errors of the rows are, since they contradict one another; 1 where they do not. */
  readonly widened: number;
}

export interface Ranges {
  readonly draws: number;
  readonly seed: number;
  /** Every paint that the remaining work needs. */
  readonly paints: ReadonlyMap<string, PaintRange>;
  /** That today's pots last for the whole army. */
  readonly chanceAllLast: Chance;
  /** Cost of use of the army, extras included. */
  readonly useWhole: Range;
  readonly useRemaining: Range;
  /** Cost of use of one figure of a job, whole scheme with extras. */
  readonly perFigure: ReadonlyMap<Job, Range>;
  /** What the next batch takes, in the order of `job.remaining`; only of units with a card for the bench. */
  readonly batches: ReadonlyMap<Job, readonly BatchMl[]>;
  /**
   * What causes the spread of what the paint is worth that today's pots lack, at the prices of the order or the cheapest offer; the
   * greatest first. Empty where no draw lacks anything.
   */
  readonly doubts: readonly Doubt[];
  readonly remedies: readonly Remedy[];
}
