// Model: the shelf, pot by pot and paint by paint. Volumes ml of usable paint unless said otherwise.
import type { Mark } from './assumption.js';
import type { Container } from './words.js';
import type { Line } from './work.js';

export type StockState = 'none owned' | 'short' | 'tight' | 'enough';

/** One pot on the shelf, in the order in which pots are used up. */
export interface ShelfPot {
  readonly row: number;
  /** The row is one of the log. */
  readonly fromLog?: true;
  readonly sizeMl: number;
  readonly container: Container;
  /** Usable paint left in it. */
  readonly usableMl: number;
  /** Usable paint in a full one of its kind: what its price pays for. */
  readonly fullUsableMl: number;
  readonly priceMinor?: number;
  readonly ordered: boolean;
  /** Standard deviation of the reading, ml of the labelled volume; 0 for a pot that is full for sure. */
  readonly readingErrorMl: number;
  readonly mark: Mark;
  readonly place?: string;
}

/** Work of which the log says that it was done, and not how much it took: lines as if for its figures. */
export interface PastWork {
  readonly lines: readonly Line[];
  readonly figure: string;
  readonly likelyMl: number;
}

/** What uses in doubt have left: each draw reckons it anew, since their doubt is that of the need. */
export interface DoubtfulUse {
  /** Before the first of those uses; those that are gone since among them. */
  readonly pots: readonly (ShelfPot & { readonly isGone: boolean })[];
  /** One after the other. */
  readonly takes: readonly Take[];
}

/** Uses that came out of the same pots, the first of them first. */
export interface Take {
  readonly from: readonly number[];
  /** Measured in ml, or by a density that the painter knows. */
  readonly ml: number;
  /** Weighed, at the likely density. */
  readonly weighedMl: number;
  /** Name of that density. */
  readonly density: string;
  /** Of all that was measured, one standard deviation. */
  readonly errorMl: number;
  readonly work: readonly PastWork[];
}

/** Stock as counted: one entry for each paint that is owned or needed. */
export interface CountedStock {
  readonly paint: string;
  readonly pots: readonly ShelfPot[];
  /** Absent where all uses since the last counts were measured. */
  readonly unmeasured?: DoubtfulUse;
  /** Where they were, and some by a weight of which nobody knows how many ml it is. */
  readonly weighed?: DoubtfulUse;
  readonly needMl: number;
  readonly haveMl: number;
  /** Part of `haveMl` that is on its way. */
  readonly orderedMl: number;
  /** From what is owned today, before buying; never below 0. */
  readonly leftAfterMl: number;
  /** What the likely need takes beyond what is there. */
  readonly toBuyMl: number;
  readonly keepMl: number;
  /** `leftAfterMl` is under `keepMl`; a paint without a pot has a level only where the painter names one. */
  readonly runningLow: boolean;
  readonly mark: Mark;
}

/** Stock as judged by chance. */
export interface PaintStock extends CountedStock {
  /** What the promise needs beyond what is there. */
  readonly toBuyMl: number;
  readonly state: StockState;
}
