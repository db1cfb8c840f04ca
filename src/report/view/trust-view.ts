// Report view: what stands beside a result to say how sure it is. Part of the contract in report-view.ts.

/** Mark and biggest doubt, shown beside a result. */
export interface TrustView {
  readonly mark: string;
  /** The assumption that causes most of the doubt; '' where every input is exact. */
  readonly doubt: string;
  /** Id of its row in the registry; '' where it has none. */
  readonly doubtId: string;
}
