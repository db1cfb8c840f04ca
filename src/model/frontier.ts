// Model: cash against colour. In: nothing. Out: types of what may serve a need, and of the choices that follow.
import type { OrderNeed } from './order.js';

/** A paint that may serve a need in place of the paint asked for: on the shelf or on offer, and of the same kind. */
export interface Candidate {
  readonly by: string;
  /** CIEDE2000 to the paint asked for. */
  readonly dE00: number;
}

/** The whole need of a paint is served by another. */
export interface FrontierSwap {
  readonly paint: string;
  readonly by: string;
  readonly dE00: number;
}

/** Which paint serves each need, and what that takes. */
export interface FrontierChoice {
  /** Goods and postage, whole minor units. */
  readonly cashMinor: number;
  /** Pots bought; those of a set all count. */
  readonly pots: number;
  /**
   * `proved`: no choice within the difference costs less. `not proved`: none costs less than `cashMinor` less
   * `aboveBestMinor`. `can't be met`: no paint within the difference can serve what stands in `unmet`; the rest is
   * served, and `aboveBestMinor` is that of the rest.
   */
  readonly status: 'proved' | 'not proved' | "can't be met";
  readonly aboveBestMinor: number;
  /** In the order of the needs; needs that their own paint serves are left out. */
  readonly swaps: readonly FrontierSwap[];
  readonly unmet: readonly OrderNeed[];
}

export interface FrontierPoint extends FrontierChoice {
  /** The largest colour difference allowed, CIEDE2000; the swaps may all be nearer. */
  readonly dE00: number;
}

export interface FewestPots extends FrontierPoint {
  /** At most so many pots above the fewest; 0: proved. `aboveBestMinor` then compares choices of as many pots. */
  readonly abovePots: number;
}

/** Cash against the largest colour difference allowed. */
export interface Frontier {
  /**
   * By rising difference. More difference never leaves more unmet, and never costs more where it leaves as much
   * unmet; where it neither costs nor leaves less, the nearer swaps stay.
   */
  readonly points: readonly FrontierPoint[];
  /** Larger differences, for which there are too many paints to choose among. */
  readonly notDrawn: readonly number[];
  /** The fewest pots bought within the largest difference drawn, then the least cash. */
  readonly fewestPots: FewestPots;
}
