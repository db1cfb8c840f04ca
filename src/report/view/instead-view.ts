// Report view: what the page shows of substitutes and of cash against colour, as part of the contract in report-view.ts.
// Plain text, shares, and colours as `#rrggbb` or '' where no sheet gives one.
import type { Tick } from './stairs-view.js';

export interface InsteadView {
  readonly lead: string;
  /** What colour differences mean. */
  readonly meaning: string;
  /** What the swaps sheet changed already. */
  readonly taken: readonly TakenRow[];
  /** Said where more swaps hold than are listed; else ''. */
  readonly moreTaken: string;
  /** What may stand in for paints to buy. */
  readonly paints: readonly InsteadPaint[];
  readonly morePaints: string;
  /** Said where something is to be bought and nothing owned comes near; else ''. */
  readonly none: string;
  /** The header of the swaps sheet, for the rows given here. */
  readonly header: string;
  /** Undefined where nothing has to be bought, or nothing could be swapped. */
  readonly frontier: FrontierView | undefined;
}

/** Two paints side by side. */
export interface Pair {
  readonly paint: string;
  readonly hex: string;
  readonly by: string;
  readonly byHex: string;
  /** `3.6, just visible`; '' without hex on both. */
  readonly differs: string;
}

interface TakenRow extends Pair {
  readonly where: string;
}

export interface InsteadPaint {
  readonly paint: string;
  readonly hex: string;
  readonly toBuy: string;
  readonly by: readonly SubstituteRow[];
  /** Said where more stand ready than are listed; else ''. */
  readonly more: string;
}

export interface SubstituteRow extends Pair {
  /** True where the names say that both are one colour. */
  readonly sameByName: boolean;
  /** What the army leaves over of it, and whether that does. */
  readonly spare: string;
  /** The row to write into the swaps sheet. */
  readonly row: string;
}

export interface FrontierView {
  readonly lead: string;
  /** Undefined where every difference costs the same. */
  readonly chart: FrontierChart | undefined;
  readonly caption: string;
  readonly rows: readonly FrontierRow[];
  /** What is not proved, or can't be met; one of a kind. */
  readonly notes: readonly string[];
}

export interface FrontierRow {
  /** The number of the level in the chart; '' for the choice of fewest pots. */
  readonly no: string;
  /** `2 to 3`, or `fewest pots`. */
  readonly allowed: string;
  readonly cash: string;
  readonly pots: string;
  readonly swaps: readonly Pair[];
  /** `proved`, or how far from it. */
  readonly status: string;
  /** Rows for the swaps sheet. */
  readonly sheetRows: readonly string[];
  /** Said where rows of the swaps sheet can't tell this choice; else ''. */
  readonly noRows: string;
}

/** Across, 1 is the largest difference drawn; upwards, 1 is the most cash and 0 where the scale begins. */
export interface FrontierChart {
  readonly title: string;
  readonly says: string;
  readonly levels: readonly Level[];
  readonly cashTicks: readonly Tick[];
  readonly differenceTicks: readonly Tick[];
  readonly currency: string;
}

/** Cash from one difference on, till the next level begins. */
export interface Level {
  readonly no: string;
  /** What is swapped here and was not before, short. */
  readonly name: string;
  readonly title: string;
  readonly across: number;
  readonly up: number;
  /** True where it is proved and everything is met. */
  readonly firm: boolean;
}
