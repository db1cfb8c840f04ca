// Report view: what the page shows of money, as part of the contract in report-view.ts. Plain text and shares.
import type { TrustView } from './trust-view.js';

export interface CostsView {
  readonly sums: readonly {
    readonly title: string;
    readonly figure: string;
    /** Low to high; '' where the sum is exact. */
    readonly range: string;
    readonly says: string;
    /** True for a part of the sum above it. */
    readonly within: boolean;
    readonly trust: TrustView;
  }[];
  readonly unpriced: string;
  /** Layers that cost anything, in painting order, then extras. */
  readonly parts: readonly CostPart[];
  readonly units: readonly CostUnit[];
  /** Said where not every unit has a row of its own; else ''. */
  readonly more: string;
  /** One for each unit, then one that sums those without a row of their own. */
  readonly rows: readonly UnitSums[];
  readonly total: UnitSums;
}

export interface CostPart {
  readonly part: string;
  /** For colours: `base-coat`. */
  readonly key: string;
}

export interface CostUnit {
  readonly unit: string;
  readonly figures: string;
  readonly figure: string;
  readonly scheme: string;
  readonly perFigure: string;
  /** Low to high of it; '' where nothing of it has a price. */
  readonly range: string;
  /** One for each of `parts`; they add up to `perFigure`. */
  readonly split: readonly string[];
  readonly bar: CostBar;
  readonly trust: TrustView;
}

/** Ends of a range as shares of what is drawn. */
export interface LowHigh {
  readonly low: number;
  readonly high: number;
}

export interface CostBar {
  readonly id: string;
  readonly title: string;
  readonly says: string;
  /** Low to high of the whole bar; undefined where nothing of it has a price. */
  readonly range: LowHigh | undefined;
  /** Shares of what the dearest figure may cost at most. */
  readonly pieces: readonly (CostPart & { readonly share: number; readonly text: string })[];
}

export interface UnitSums {
  readonly name: string;
  readonly figures: string;
  readonly whole: string;
  /** Low to high of it; '' for several units in one row. */
  readonly wholeRange: string;
  readonly remaining: string;
  readonly cash: string;
  readonly cashPerFigure: string;
  readonly figuresPrice: string;
}
