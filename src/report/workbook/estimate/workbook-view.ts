// Report view: a workbook as cells. In: nothing. Out: the types that the workbook's writer draws, with no library in sight.

/** A formula without its equals sign, and what it gives. */
export interface Formula {
  readonly formula: string;
  readonly result: number | string;
}

/** Blank, text, a plain number that may be changed, or a formula. */
export type Cell = undefined | string | number | Formula;

export interface SheetColumn {
  readonly header: string;
  /** In characters. */
  readonly width: number;
  /** Digits shown after the point; left out: as many as it takes. */
  readonly digits?: number | undefined;
  /** Plain numbers in it are there to be read, not to be changed. */
  readonly isFixed?: boolean;
}

/** One sheet: the headers stand in row 1, the first of the rows in row 2. */
export interface SheetView {
  readonly name: string;
  readonly columns: readonly SheetColumn[];
  readonly rows: readonly (readonly Cell[])[];
}

export interface WorkbookView {
  /** The plan's day, YYYY-MM-DD. */
  readonly date: string;
  readonly sheets: readonly SheetView[];
}
