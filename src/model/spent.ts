// Model: where the money went. In: nothing. Out: its types. Cash is whole minor units; what paint is worth, exact ones.
import type { ExactMinor } from './money.js';

/** What was bought at a shop in a month, by the log. */
export interface Spent {
  /** `2026-03` */
  readonly month: string;
  /** Blank where the log names none. */
  readonly shop: string;
  readonly minor: number;
}

/** What a paint took, and what the work it went into should have taken; ml. */
export interface UseBeside {
  readonly usedMl: number;
  /** Above 0. */
  readonly estimatedMl: number;
}

/**
 * Pots with a price, by what of them is left: begun with and bought is used, standing and on its way. What was thrown away is used.
 */
export interface ShelfMoney {
  /** By month, then by shop, with postage. */
  readonly spent: readonly Spent[];
  /** What the pots of those rows cost. */
  readonly boughtMinor: number;
  /** The pots of the pots sheet, as it says that they are filled. */
  readonly begunWith: ExactMinor;
  readonly standing: ExactMinor;
  readonly onWay: ExactMinor;
  readonly used: ExactMinor;
  /** Pots on the shelf or on their way that have no price, and are in none of these sums. */
  readonly unpricedPots: number;
  /** Of the paints of which both can be told. */
  readonly useBeside: ReadonlyMap<string, UseBeside>;
}
