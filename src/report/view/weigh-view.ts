// Report view: what the page shows of doubt and weighing, as part of the contract in report-view.ts. Plain text and shares.

export interface WeighView {
  readonly lead: string;
  /** What to do, the greatest help first. */
  readonly remedies: readonly {
    readonly says: string;
    /** Of the doubt about the cash, what it settles. */
    readonly share: number;
  }[];
  /** What causes the doubt about the cash. */
  readonly doubts: readonly DoubtRow[];
  /** What each paint hangs on that may last or not. */
  readonly paints: readonly {
    readonly paint: string;
    readonly hex: string;
    readonly chance: string;
    readonly doubts: readonly DoubtRow[];
  }[];
  /** Said where more paints are in doubt than are listed; else ''. */
  readonly morePaints: string;
  readonly learned: LearnedView;
}

export interface DoubtRow {
  readonly name: string;
  /** Id of its row in the registry; '' for a pot's reading. */
  readonly id: string;
  readonly causes: string;
  readonly share: number;
}

export interface LearnedView {
  /** What the weighings say together, or how to begin. */
  readonly says: string;
  readonly rows: readonly WeighingRow[];
  /** Said where only the latest are listed; else ''. */
  readonly more: string;
}

export interface WeighingRow {
  readonly date: string;
  readonly paint: string;
  readonly unit: string;
  readonly figures: string;
  readonly used: string;
  readonly expected: string;
  /** Used over expected: `1.2 times`. */
  readonly times: string;
}
