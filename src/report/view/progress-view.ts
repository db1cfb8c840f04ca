// Report view: what the page shows of work already done, as part of the contract in report-view.ts. Plain text and shares.

export interface ProgressView {
  /** How the need has shrunk. */
  readonly lead: string;
  readonly rows: readonly ProgressRow[];
  /** True where some step is begun and not finished. */
  readonly showBegun: boolean;
  /** Said where not every unit has a row; else ''. */
  readonly more: string;
}

export interface ProgressRow {
  readonly unit: string;
  readonly figures: string;
  /** `2 of 5` */
  readonly steps: string;
  /** Steps that some figures have had: `step 3 on 6 of 10`; '' for none. */
  readonly begun: string;
  /** Paint of the whole scheme, and what of it is still to be put out. */
  readonly whole: string;
  readonly remaining: string;
  /** Paint put out already, of 1. */
  readonly doneShare: number;
}
