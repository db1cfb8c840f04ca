// Readers: the non-blank rows of one sheet, before its header row is known; CSV and workbook readers both
// give this.
import type { Problem } from '../../model/problem.js';
import type { SheetName } from '../../model/words.js';
import type { ProblemCode } from '../../problems/catalogue.js';
import { columns } from '../columns/columns.js';
import type { Cell, Headed } from '../table.js';

export type FoundProblem = Problem<ProblemCode>;

/** Columns that are hidden, from 1, both ends counted. */
export interface HiddenColumns {
  readonly from: number;
  readonly to: number;
}

/** Mutable while the readers work on it. */
export interface GridRow {
  /** From 1, as a spreadsheet counts. */
  readonly row: number;
  readonly cells: Cell[];
}

export interface Grid extends Headed {
  readonly file: string;
  /** Ascending, blank rows left out. */
  readonly rows: readonly GridRow[];
  /** Set for CSV: `comma`, `tab` ... */
  readonly delimiterName?: string;
  /** Set for CSV: rows whose quotation marks are wrong, so that their cells may be split wrongly too. */
  readonly brokenRows?: ReadonlySet<number>;
  /** Set for workbooks: ranges such as `A3:A7`. */
  readonly merges?: readonly string[];
  /** Set for workbooks: rows that are hidden. */
  readonly hiddenRows?: ReadonlySet<number>;
  /** Set for workbooks. */
  readonly hiddenColumns?: readonly HiddenColumns[];
}

/** A grid under its header row, with every problem of the sheet as a whole. */
export interface HeadedGrid extends Grid {
  readonly header: GridRow;
  /** Without the blank ones at the end. */
  readonly headers: readonly string[];
  readonly body: readonly GridRow[];
}

/** What Office Open XML spreadsheets hold at most (Microsoft, "Excel specifications and limits"). */
export const spreadsheetLimits = { rows: 1_048_576, columns: 16_384, cellCharacters: 32_767 } as const;

/** The needed columns of a sheet in words: `paint, size ml`. */
export function neededHeaders(sheet: SheetName): string {
  return columns[sheet]
    .filter((column) => column.needed)
    .map((column) => column.header)
    .join(', ');
}

/** First letters of a long cell, for messages. */
export function startOf(text: string, letters = 20): string {
  return text.length <= letters ? text : `${text.slice(0, letters).trimEnd()} ...`;
}

/** What a folder or a workbook gives before its tables are made. */
export interface ReadGrids {
  readonly grids: readonly Grid[];
  /** Every sheet that is there, also where it could not be read: it is not missing. */
  readonly seen: ReadonlySet<SheetName>;
  readonly problems: readonly FoundProblem[];
}

/** Nothing that could be read. */
export const nothingRead = (...problems: readonly FoundProblem[]): ReadGrids => ({
  grids: [],
  seen: new Set(),
  problems,
});
