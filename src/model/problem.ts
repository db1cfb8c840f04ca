// Model: a problem as data. In: nothing. Out: the type that sheets fill, problems word and report show.
import type { SheetName } from './words.js';

/** Errors stop the plan; warnings also stand in the report. */
export type Severity = 'error' | 'warning';

/** Where a problem stands. Wider places leave the narrower fields out: file, then sheet, row, column. */
export interface Place {
  /** As the painter knows it: `pots.csv`, or `army.xlsx`; of a sheet in parts `army.xlsx, sheet Pots attic`. */
  readonly file: string;
  readonly sheet?: SheetName;
  /** As a spreadsheet counts: the header is row 1. */
  readonly row?: number;
  /** The header as the painter wrote it. */
  readonly column?: string;
  /** Spreadsheet address, e.g. `B14`. */
  readonly cell?: string;
}

export interface Problem<Code extends string = string> extends Place {
  readonly code: Code;
  readonly severity: Severity;
  /** What stands there, as text; blank for nothing. */
  readonly found: string;
  /** What would be right, in a few words, e.g. `a volume`, or the nearest known names. */
  readonly expected: string;
  /** What to do, a whole sentence. */
  readonly hint: string;
}
