// Checks: a table under the columns of its sheet. In: a table. Out: where each column stands, how it is read, and a way to
// tell a problem at a cell.
import type { Place } from '../../model/problem.js';
import type { SheetName } from '../../model/words.js';
import { type Details, type ProblemCode, problem } from '../../problems/catalogue.js';
import { type Column, type Columns, kindOf, type Terms } from '../columns/column.js';
import { type Tables, tables } from '../columns/columns.js';
import { headerKey } from '../match-header.js';
import { cellAddress } from '../read/name-cell.js';
import type { Cell, Table } from '../table.js';
import { type Findings, tell, useDefault } from './collect-findings.js';
import { fillDown } from './fill-down.js';
import { findColumns } from './find-columns.js';
import { type CellKind, cellText } from './read-cell/cell-kind.js';

export interface RowBase {
  /** As a spreadsheet counts. */
  readonly row: number;
  readonly cells: readonly Cell[];
  /** Of several tables that are one sheet, the one that holds the row, from 0. */
  readonly part: number;
  /** Keys of the cells that could not be taken; they are told already. */
  readonly bad: readonly string[];
}

/** Values by key; undefined for a blank without a value and for a bad cell. */
export type RowOf<C extends Columns> = RowBase & {
  readonly [K in keyof C]: (C[K] extends Column<infer T> ? T : never) | undefined;
};

export interface OpenSheet<C extends Columns> extends OpenTable<C> {
  /** One for each of its tables, which may have other columns in another order; one without a table where none is there. */
  readonly parts: readonly OpenTable<C>[];
}

interface OpenTable<C extends Columns> {
  readonly sheet: SheetName;
  readonly columns: C;
  readonly table: Table | undefined;
  readonly findings: Findings;
  readonly kindOf: (key: keyof C & string) => CellKind<unknown>;
  /** Where the column of a key stands, from 0; -1 where it is missing. */
  readonly indexOf: (key: string) => number;
  /** False where the sheet or the column is missing, which is told: then nothing can be said of what it does not hold. */
  readonly has: (key: keyof C & string) => boolean;
  /** The cell as written. */
  readonly text: (row: RowBase, key: keyof C & string) => string;
  /** `row 5`; of several tables `row 5 of pots desk.csv`. */
  readonly rowName: (row: Pick<RowBase, 'row' | 'part'>) => string;
  /** Tells a problem at a cell; what is found there is the cell as written unless said otherwise. */
  readonly blame: (code: ProblemCode, row: RowBase, key: keyof C & string, details?: Details) => void;
  /** Records so many blanks of a column among the defaults used. */
  readonly useBlank: (key: keyof C & string, rows: number) => void;
}

/** What a sheet is opened from. */
export interface From {
  readonly table: Table | undefined;
  /** Tables of the same sheet beside that one, which are read as one with it. */
  readonly more?: readonly Table[];
  readonly terms: Terms;
  readonly findings: Findings;
}

export const tablesOf = ({ table, more = [] }: From): readonly Table[] =>
  table === undefined ? [] : [table, ...more];

/** Finds the columns of each table once, and tells what is wrong with its headers. */
export function openSheet<N extends SheetName>(sheet: N, { more = [], ...from }: From): OpenSheet<Tables[N]> {
  const first = openTable(sheet, from);
  const parts = [first, ...more.map((table) => openTable(sheet, { ...from, table }))];
  if (parts.length === 1) return { ...first, parts };
  const partOf = ({ part }: Pick<RowBase, 'part'>) => parts[part] ?? first;
  return {
    ...first,
    parts,
    has: (key) => parts.every((part) => part.has(key)),
    text: (row, key) => partOf(row).text(row, key),
    rowName: (row) => `row ${row.row} of ${partOf(row).table?.file ?? sheet}`,
    blame: (code, row, key, details) => partOf(row).blame(code, row, key, details),
  };
}

function openTable<N extends SheetName>(
  sheet: N,
  { table: written, terms, findings }: From,
): OpenTable<Tables[N]> {
  const columns: Columns = tables[sheet];
  const kinds = new Map(Object.entries(columns).map(([key, column]) => [key, kindOf(column, terms)]));
  const headerOf = (key: string): string => columns[key]?.header ?? key;
  const byHeader = new Map([...kinds].map(([key, kind]) => [headerOf(key), kind]));
  const found = written === undefined ? undefined : findColumns(written, byHeader);
  const { table, problems } = fillDown(written, found?.indexes ?? new Map());
  findings.problems.push(...(found?.problems ?? []), ...problems);
  if (table !== undefined) {
    const { file, headerRow } = table;
    findings.read.push({ sheet, file, headerRow, columns: found?.read ?? [] });
  }
  const indexes = new Map(
    [...kinds.keys()].map((key) => [key, found?.indexes.get(headerKey(headerOf(key))) ?? -1]),
  );
  const indexOf = (key: string): number => indexes.get(key) ?? -1;
  const text = ({ cells }: RowBase, key: string): string => cellText(cells[indexOf(key)] ?? '');
  const place = ({ row }: RowBase, key: string): Place => {
    const base = { file: table?.file ?? sheet, sheet, row };
    const index = indexOf(key);
    if (index === -1) return { ...base, column: headerOf(key) };
    return { ...base, column: table?.headers[index] ?? key, cell: cellAddress(index + 1, row) };
  };
  return {
    sheet,
    columns: tables[sheet],
    table,
    findings,
    kindOf: (key) => kinds.get(key) as CellKind<unknown>,
    indexOf,
    has: (key) => indexOf(key) !== -1,
    text,
    rowName: ({ row }) => `row ${row}`,
    blame: (code, row, key, details) =>
      tell(findings, problem(code, place(row, key), { found: text(row, key), ...details })),
    useBlank: (key, rows) => {
      const meaning = columns[key]?.blank?.means ?? '';
      useDefault(findings, { sheet, column: headerOf(key), rows, meaning });
    },
  };
}
