// Report view: what the page shows of time, as part of the contract in report-view.ts. Plain text and shares.
import type { TrustView } from './trust-view.js';

export interface TimeView {
  readonly lead: string;
  readonly trust: TrustView;
  /** Sums over the army, the main ones first. */
  readonly sums: readonly TimeSum[];
  /** Said where the army's last evenings are reckoned, not spelled out; else ''. */
  readonly reckoned: string;
  readonly layers: readonly { readonly key: string; readonly layer: string }[];
  /** True where some evening waits. */
  readonly waits: boolean;
  /** Evenings shown at once, and folded away. */
  readonly first: readonly EveningRow[];
  readonly folded: readonly EveningRow[];
  /** Said where more evenings are spelled out than listed; else ''. */
  readonly more: string;
  /** What the plan of evenings claims and what not. */
  readonly claim: string;
  readonly units: readonly UnitTimeRow[];
  readonly batches: readonly BatchRow[];
  /** Said where more units are there than listed; else ''. */
  readonly moreUnits: string;
  /** Where step by step is proved shortest. */
  readonly proof: string;
}

export interface TimeSum {
  readonly title: string;
  /** True for a part of the sum above. */
  readonly within: boolean;
  readonly figure: string;
  readonly says: string;
}

export interface EveningRow {
  readonly no: string;
  readonly minutes: string;
  /** What is painted, unit by unit. */
  readonly says: readonly { readonly unit: string; readonly what: string }[];
  /** Units that are finished on it; '' where none is. */
  readonly finished: string;
  readonly bar: EveningBar;
}

/** Shares are of a whole evening. */
export interface EveningBar {
  /** Unique within the page, letters, digits and hyphens only. */
  readonly id: string;
  readonly title: string;
  readonly says: string;
  readonly pieces: readonly {
    /** A layer's key, or `waiting`. */
    readonly key: string;
    readonly share: number;
    readonly title: string;
  }[];
}

export interface UnitTimeRow {
  readonly unit: string;
  readonly figures: string;
  readonly perFigure: string;
  readonly perFigureRange: string;
  /** Still to be done; '' where the unit is finished. */
  readonly brush: string;
  readonly setup: string;
  readonly done: string;
}

export interface BatchRow {
  readonly unit: string;
  /** `2 batches of 12` */
  readonly batches: string;
  /** Of one such batch. */
  readonly elapsed: string;
  readonly waiting: string;
  readonly atLeast: string;
  readonly shortest: string;
  readonly noWaiting: string;
  readonly betweenLong: string;
}
