// Sheets: the plain table between the readers (bytes to tables) and the checks (tables to rows).

import type { Place, Problem } from '../model/problem.js';
import type { SheetName } from '../model/words.js';
import type { ProblemCode } from '../problems/catalogue.js';
import { cellAddress } from './read/name-cell.js';

/**
 * One cell. CSV gives strings, trimmed of outer blanks; a workbook gives typed values:
 * a number in a percent format comes as text (`60%`), rich text and hyperlinks as their plain text,
 * one whose format writes a unit or currency as `MeasuredCell`, a formula as its stored result, a date as `CellDate`, what
 * cannot be used as `BrokenCell`.
 * A blank cell is ''. Cells past the end of a short row are ''.
 */
export type Cell = string | number | boolean | CellDate | MeasuredCell | BrokenCell;

export interface CellDate {
  readonly kind: 'date';
  /** `YYYY-MM-DD` */
  readonly iso: string;
}

/** A number that its cell shows with a unit or a currency, though only the number is stored. */
export interface MeasuredCell {
  readonly kind: 'measured';
  readonly value: number;
  /** `ml`, `fl oz`, `$`, `USD`; as the format has it. */
  readonly unit: string;
}

/** `#N/A` and the like, or a formula that no program has calculated yet (`shown` is then the formula). */
export interface BrokenCell {
  readonly kind: 'broken';
  readonly why: 'error value' | 'formula without result';
  readonly shown: string;
}

/** As its cell shows it, more or less. */
export function textOfObject(cell: Exclude<Cell, string | number | boolean>): string {
  if (cell.kind === 'measured') return `${Number(cell.value.toPrecision(15))} ${cell.unit}`;
  return cell.kind === 'date' ? cell.iso : cell.shown;
}

interface TableRow {
  /** As a spreadsheet counts, the header being row `headerRow`. */
  readonly row: number;
  readonly cells: readonly Cell[];
}

/** What the columns sheet says, by the key of a header: the key of its column, '' for one of the painter's own. */
export type Called = ReadonlyMap<string, string>;

/** A sheet under its headers. */
export interface Headed {
  readonly sheet: SheetName;
  readonly called?: Called | undefined;
}

/** One sheet as written. Blank rows are left out; nothing else is. */
export interface Table {
  readonly sheet: SheetName;
  /** `pots.csv`, or the workbook's file name. */
  readonly file: string;
  /** What the columns sheet says of its headers. */
  readonly called?: Called | undefined;
  readonly headerRow: number;
  /** As the painter wrote them; '' for a column without a header. */
  readonly headers: readonly string[];
  readonly rows: readonly TableRow[];
}

/** Where a header stands, counted from 0. */
export function headerPlace({ file, sheet, headerRow, headers }: Table, index: number): Place {
  return {
    file,
    sheet,
    row: headerRow,
    column: headers[index] ?? '',
    cell: cellAddress(index + 1, headerRow),
  };
}

/** What the readers give: every table found, and every problem of files and tables. */
export interface ReadTables {
  readonly tables: readonly Table[];
  readonly problems: readonly Problem<ProblemCode>[];
}
