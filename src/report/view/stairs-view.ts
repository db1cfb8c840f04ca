// Report view: what the page shows of cash against figures, as part of the contract in report-view.ts. Texts are worded,
// drawn things are shares: across, 1 is twice the army; upwards, 1 is the most cash.

export interface StairsView {
  readonly lead: string;
  /** What one more figure costs right now. */
  readonly next: { readonly figure: string; readonly says: string };
  /** Undefined where nothing has to be bought up to twice the army. */
  readonly chart: StairsChart | undefined;
  readonly caption: string;
  readonly rows: readonly StairRow[];
  /** True where some rows are not proved, so that each says how it stands. */
  readonly showProved: boolean;
  /** Steps not looked for, steps not proved. */
  readonly notes: readonly string[];
}

export interface StairRow {
  /** The number of the step in the chart. */
  readonly no: string;
  readonly figures: string;
  readonly cash: string;
  readonly rise: string;
  readonly paints: readonly { readonly paint: string; readonly hex: string }[];
  /** Paints beyond those: `and 3 more`; '' for none. */
  readonly others: string;
  readonly proved: string;
}

export interface StairsChart {
  readonly title: string;
  readonly says: string;
  readonly risers: readonly Riser[];
  readonly army: {
    readonly across: number;
    readonly up: number;
    readonly label: string;
    /** Where there is little room. */
    readonly short: string;
  };
  readonly currency: string;
  readonly cashTicks: readonly Tick[];
  readonly figureTicks: readonly Tick[];
}

/** Where the cash rises, and the tread that follows it. */
export interface Riser {
  readonly no: number;
  /** The paint that causes it, short; more than one: the first and how many more. */
  readonly name: string;
  readonly title: string;
  /** One colour for each paint that causes it; '' where no sheet gives it. */
  readonly hexes: readonly string[];
  readonly across: number;
  readonly fromUp: number;
  readonly up: number;
  readonly proved: boolean;
}

export interface Tick {
  readonly share: number;
  readonly text: string;
}
