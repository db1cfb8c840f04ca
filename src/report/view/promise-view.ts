// Report view: what the page shows of the promise, as part of the contract in report-view.ts. Plain text and shares.

export interface PromiseView {
  readonly lead: string;
  /** How the draws are made, and what is proved. */
  readonly note: string;
  /** `81.8% ± 0.4%` */
  readonly reached: string;
  readonly says: string;
  /** What it costs against just the likely needs. */
  readonly plainly: string;
  /** Where the offers do not reach the promise, or some paint is not on offer. */
  readonly warnings: readonly string[];
  readonly caption: string;
  readonly levels: readonly PromiseRow[];
  /** True where some rows are not proved, so that each says how it stands. */
  readonly showProved: boolean;
}

/** Cash for one level; the first row is that of the likely needs. */
export interface PromiseRow {
  readonly label: string;
  /** True for the level that the order keeps. */
  readonly isOwn: boolean;
  readonly cash: string;
  /** Against the likely needs; '' for these. */
  readonly more: string;
  /** `81.8% ± 0.4%` */
  readonly met: string;
  readonly proved: string;
  /** The bar, as a share of the most cash; the text beside it says the same. */
  readonly share: number;
}
