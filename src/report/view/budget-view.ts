// Report view: what the page shows of a budget, as part of the contract in report-view.ts. Plain text and shares.

export interface BudgetView {
  /** `What €30.00 finishes` */
  readonly title: string;
  readonly lead: string;
  /** `107 of 109 figures` */
  readonly figure: string;
  readonly says: string;
  /** How sure the order is; '' where nothing is bought. */
  readonly proof: string;
  /** Searches that ended early, units not tried, paint that no offer covers. */
  readonly notes: readonly string[];
  /** Units that are not wholly finished, in the order of priority. */
  readonly open: readonly OpenUnit[];
  /** Said where more units are open than are listed; else ''. */
  readonly more: string;
  /** Units finished whole, in one sentence; '' for none. */
  readonly whole: string;
  /** The order in short: each shop with its offers. */
  readonly shops: readonly { readonly shop: string; readonly offers: string; readonly cash: string }[];
  readonly total: string;
}

export interface OpenUnit {
  readonly unit: string;
  /** `6 of 10` */
  readonly finished: string;
  readonly share: number;
  readonly left: string;
  /** Beyond the order shown; '' where it was not priced. */
  readonly extra: string;
  /** How much the budget lacks for it; '' where it was not priced, or lacks nothing. */
  readonly short: string;
}
