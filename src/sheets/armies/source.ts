// Armies: where sheets of several armies come from, and one of their tables with its columns known. In: tables. Out: types, cells.
import type { Place } from '../../model/problem.js';
import type { SheetName } from '../../model/words.js';
import { makeFindings } from '../check/collect-findings.js';
import { openSheet } from '../check/open-sheet.js';
import { anyPrice } from '../check/read-cell/read-price.js';
import { cellAddress } from '../read/name-cell.js';
import type { ReadTables, Table } from '../table.js';

/** A folder or workbook of an army, or the shelf's. */
export interface Source {
  /** As the painter knows it, unlike that of every other. */
  readonly name: string;
  readonly path: string;
  readonly isShelf: boolean;
  readonly read: ReadTables;
}

/** As it is named among those of all armies; a workbook has a name of its own. */
export const fileIn = (source: string, file: string): string =>
  file === source || file.startsWith(`${source},`) ? file : `${source}/${file}`;

type Row = Table['rows'][number];

export interface OpenedTable {
  /** As it was read; its rows are those of `table`. */
  readonly written: Table;
  /** Names written once above their rows stand in each. */
  readonly table: Table;
  readonly keys: readonly string[];
  /** As written; '' where there is no such column. */
  readonly text: (row: Row, key: string) => string;
  readonly indexOf: (key: string) => number;
}

/** What is wrong with the table is told when it is checked. */
export function openTable(written: Table): OpenedTable {
  const from = { table: written, terms: { price: anyPrice }, findings: makeFindings() };
  const { table = written, columns, indexOf, text } = openSheet(written.sheet, from);
  const asRow = (row: Row) => ({ ...row, part: 0, bad: [] });
  return {
    ...{ written, table, indexOf, keys: Object.keys(columns) },
    text: (row, key) => (indexOf(key) === -1 ? '' : text(asRow(row), key as keyof typeof columns & string)),
  };
}

/** Where the cell of a key stands. */
export function placeAt({ table, indexOf }: OpenedTable, { row }: Row, key: string): Place {
  const { file, sheet, headers } = table;
  const at = indexOf(key);
  return { file, sheet, row, column: headers[at] ?? key, cell: cellAddress(at + 1, row) };
}

/** The table with a column set anew, added where it is missing; undefined leaves a cell as it is. */
export function setColumn(
  { written, table, indexOf }: OpenedTable,
  key: string,
  cellOf: (row: Row) => string | undefined,
): Table {
  const found = indexOf(key);
  const at = found === -1 ? written.headers.length : found;
  const set = table.rows.map(cellOf);
  if (set.every((value) => value === undefined)) return written;
  const rows = written.rows.map((row, place) => {
    const value = set[place];
    if (value === undefined) return row;
    const width = Math.max(row.cells.length, at + 1);
    const cells = Array.from({ length: width }, (_, one) => (one === at ? value : (row.cells[one] ?? '')));
    return { ...row, cells };
  });
  return { ...written, headers: found === -1 ? [...written.headers, key] : written.headers, rows };
}

/** The source with the tables of one sheet put through `change`; a table that is left without rows goes. */
export function changeTables(source: Source, sheet: SheetName, change: (table: Table) => Table): Source {
  const tables = source.read.tables.flatMap((table) => {
    if (table.sheet !== sheet) return [table];
    const changed = change(table);
    return changed.rows.length === 0 ? [] : [changed];
  });
  return { ...source, read: { ...source.read, tables } };
}
