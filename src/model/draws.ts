// Model: what the army lacks over many draws. In: nothing. Out: its types. Volumes ml of usable paint.
import type { Container } from './words.js';

/** How many draws, and where chance begins. */
export interface Drawing {
  readonly draws: number;
  readonly seed: number;
}

/** What a ml of a bought pot gives over the likely, in each draw; undefined: just that. */
export type GainOf = (container: Container) => Float64Array | undefined;

/** What a paint lacks over all draws. */
export interface LackingPaint {
  readonly paint: string;
  /** Usable ml, need less shelf: what today's pots lack; below 0 where they last. */
  readonly lackMl: Float64Array;
  /** What it comes in: that of its first pot, else a pot. */
  readonly container: Container;
}

/** What the army lacks: all that an order is made and checked from. */
export interface DrawnLack {
  readonly drawing: Drawing;
  /** Paints that the remaining work needs, in the order of the stock. */
  readonly paints: readonly LackingPaint[];
  readonly gainOf: GainOf;
}

/** A paint over the work, stage by stage. */
export interface StagedPaint {
  readonly paint: string;
  /** Put out in each stage, over the draws. */
  readonly needMl: readonly Float64Array[];
  /** The same at the likely values. */
  readonly likelyMl: readonly number[];
  /** On the shelf when the work begins, over the draws. */
  readonly haveMl: Float64Array;
}

/** The work in the order in which it is painted, over some draws. */
export interface StagedWork {
  readonly drawing: Drawing;
  /** A unit with work to be done for each stage; the first of several where there are very many. */
  readonly units: readonly string[];
  readonly paints: readonly StagedPaint[];
  readonly gainOf: GainOf;
}
