// Checks: a table under its schema. In: a table, a cell reader for each column. Out: where each column stands, and a way
// to tell a problem at a cell.
import type { Place } from '../../model/problem.js';
import { neededSheets, type SheetName } from '../../model/words.js';
import { type Details, type ProblemCode, problem } from '../../problems/catalogue.js';
import { headerKey } from '../match-header.js';
import { cellAddress } from '../read/name-cell.js';
import type { Cell, Table } from '../table.js';
import { type Findings, tell, tellLeftAlone } from './collect-findings.js';
import { findColumns } from './find-columns.js';
import { type CellKind, cellText } from './read-cell/cell-kind.js';

/** How one column is read. */
export interface ColumnCheck<T> {
  readonly header: string;
  readonly kind: CellKind<T>;
  /** The value that a blank takes; without one it stays undefined. */
  readonly blank?: T;
  /** What a blank means, for the list of defaults used; without it a blank is not worth a word. */
  readonly meaning?: string;
  /** A needed column whose cells may be blank, since the rows of a group share one. */
  readonly mayBeBlank?: true;
}

/** Declares a column of a schema. */
export function column<T>(
  header: string,
  kind: CellKind<T>,
  blank: Omit<ColumnCheck<T>, 'header' | 'kind'> = {},
): ColumnCheck<T> {
  return { header, kind, ...blank };
}

export type Schema = Readonly<Record<string, ColumnCheck<unknown>>>;

export interface RowBase {
  /** As a spreadsheet counts. */
  readonly row: number;
  readonly cells: readonly Cell[];
  /** Keys of the cells that could not be taken; they are told already. */
  readonly bad: readonly string[];
}

/** Values by key; undefined for a blank without a default and for a bad cell. */
export type RowOf<S extends Schema> = RowBase & {
  readonly [K in keyof S]: (S[K] extends ColumnCheck<infer T> ? T : never) | undefined;
};

export interface OpenSheet<S extends Schema> {
  readonly sheet: SheetName;
  readonly schema: S;
  readonly table: Table | undefined;
  readonly findings: Findings;
  /** Where the column of a key stands, from 0; -1 where it is missing. */
  readonly indexOf: (key: string) => number;
  /**
   * False where the sheet or the column is missing, or a needed sheet has no rows, which is told: then nothing can be said
   * of what it does not hold.
   */
  readonly has: (key: keyof S & string) => boolean;
  /** The cell as written. */
  readonly text: (row: RowBase, key: keyof S & string) => string;
  /** Tells a problem at a cell; what is found there is the cell as written unless said otherwise. */
  readonly blame: (code: ProblemCode, row: RowBase, key: keyof S & string, details?: Details) => void;
}

/** Finds the columns of a table once, and tells what is wrong with its headers. */
export function openSheet<S extends Schema>(
  sheet: SheetName,
  schema: S,
  { table, findings }: { readonly table: Table | undefined; readonly findings: Findings },
): OpenSheet<S> {
  const kinds = new Map(Object.values(schema).map(({ header, kind }) => [header, kind]));
  const found = table === undefined ? undefined : findColumns(table, kinds);
  findings.problems.push(...(found?.problems ?? []));
  if (table !== undefined) tellLeftAlone(findings, table, found?.leftAlone ?? []);
  const indexes = new Map(
    Object.entries(schema).map(([key, { header }]) => [key, found?.indexes.get(headerKey(header)) ?? -1]),
  );
  const indexOf = (key: string): number => indexes.get(key) ?? -1;
  const text = ({ cells }: RowBase, key: string): string => cellText(cells[indexOf(key)] ?? '');
  const place = ({ row }: RowBase, key: string): Place => {
    const base = { file: table?.file ?? sheet, sheet, row };
    const index = indexOf(key);
    if (index === -1) return { ...base, column: schema[key]?.header ?? key };
    return { ...base, column: table?.headers[index] ?? key, cell: cellAddress(index + 1, row) };
  };
  const blame: OpenSheet<S>['blame'] = (code, row, key, details) => {
    tell(findings, problem(code, place(row, key), { found: text(row, key), ...details }));
  };
  const isBlank = table?.rows.length === 0 && (neededSheets as readonly SheetName[]).includes(sheet);
  const has = (key: string): boolean => !isBlank && indexOf(key) !== -1;
  return { sheet, schema, table, findings, indexOf, has, text, blame };
}
