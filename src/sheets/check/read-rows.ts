// Checks: one table by its schema. In: a table, a cell reader for each column. Out: rows of values; every bad cell told.
// The schema is resolved once for a table: 100,000 rows cost one loop over their cells.
import type { Place } from '../../model/problem.js';
import type { SheetName } from '../../model/words.js';
import { type Details, type ProblemCode, problem } from '../../problems/catalogue.js';
import { headerKey } from '../match-header.js';
import { cellAddress } from '../read/name-cell.js';
import type { Cell, Table } from '../table.js';
import { type Findings, useDefault } from './collect-findings.js';
import { exampleOf, findColumns, isNeeded } from './find-columns.js';
import { type CellKind, cellText, Mistake, readCell } from './read-cell/cell-kind.js';

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

interface RowBase {
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

/** A sheet whose cells are read. */
export interface OpenSheet<S extends Schema> {
  readonly rows: readonly RowOf<S>[];
  /** False where the sheet or the column is missing: then nothing can be said of what it does not hold. */
  readonly has: (key: keyof S & string) => boolean;
  readonly place: (row: RowBase, key: keyof S & string) => Place;
  /** The cell as written. */
  readonly text: (row: RowBase, key: keyof S & string) => string;
  /** Tells a problem at a cell; what is found there is the cell as written unless said otherwise. */
  readonly blame: (code: ProblemCode, row: RowBase, key: keyof S & string, details?: Details) => void;
}

interface Reader {
  readonly key: string;
  readonly index: number;
  readonly kind: CellKind<unknown>;
  readonly blank: unknown;
  readonly needed: boolean;
  /** For a blank cell that must not be. */
  readonly expected: string;
  blanks: number;
}

type Draft = { bad: readonly string[] } & Record<string, unknown>;

const nothingBad: readonly string[] = [];

/** Reads every row of a table; a sheet that is not there gives no rows and no problem. */
export function readRows<S extends Schema>(
  sheet: SheetName,
  schema: S,
  { table, findings }: { readonly table: Table | undefined; readonly findings: Findings },
): OpenSheet<S> {
  if (table === undefined) return openSheet(sheet, schema, { table, rows: [], readers: [], findings });
  const { indexes, problems } = findColumns(table);
  findings.problems.push(...problems);
  const readers = readersOf(sheet, schema, indexes);
  const open = openSheet<S>(sheet, schema, { table, rows: [], readers, findings });
  const rows = table.rows.map(({ row, cells }) => {
    const draft = { row, cells, bad: nothingBad } as unknown as Draft;
    for (const reader of readers) draft[reader.key] = readOne(reader, draft, cells, open);
    return draft as unknown as RowOf<S>;
  });
  countBlanks(sheet, schema, { readers, findings });
  return { ...open, rows };
}

function readersOf(sheet: SheetName, schema: Schema, indexes: ReadonlyMap<string, number>): Reader[] {
  return Object.entries(schema).map(([key, { header, kind, blank, mayBeBlank }]) => {
    const index = indexes.get(headerKey(header)) ?? -1;
    const needed = isNeeded(sheet, header) && mayBeBlank !== true && index !== -1;
    const expected = `${kind.noun}, such as ${exampleOf(sheet, header)}`;
    return { key, index, kind, blank, needed, expected, blanks: 0 };
  });
}

function readOne<S extends Schema>(
  reader: Reader,
  draft: Draft,
  cells: readonly Cell[],
  { blame }: OpenSheet<S>,
): unknown {
  const cell = reader.index === -1 ? '' : (cells[reader.index] ?? '');
  if (cell !== '' && (typeof cell !== 'string' || cell.trim() !== '')) {
    const value = readCell(reader.kind, cell);
    if (!(value instanceof Mistake)) return value;
    draft.bad = [...draft.bad, reader.key];
    const { code, expected, found } = value;
    blame(
      code,
      draft as unknown as RowBase,
      reader.key,
      found === undefined ? { expected } : { expected, found },
    );
    return undefined;
  }
  reader.blanks += 1;
  if (!reader.needed) return reader.blank;
  draft.bad = [...draft.bad, reader.key];
  blame('blank-cell', draft as unknown as RowBase, reader.key, { expected: reader.expected });
  return undefined;
}

function countBlanks(
  sheet: SheetName,
  schema: Schema,
  { readers, findings }: { readonly readers: readonly Reader[]; readonly findings: Findings },
): void {
  for (const { key, blanks } of readers) {
    const { header, meaning } = schema[key] ?? {};
    if (header === undefined || meaning === undefined) continue;
    useDefault(findings, { sheet, column: header, rows: blanks, meaning });
  }
}

function openSheet<S extends Schema>(
  sheet: SheetName,
  schema: S,
  of: {
    readonly table: Table | undefined;
    readonly rows: readonly RowOf<S>[];
    readonly readers: readonly Reader[];
    readonly findings: Findings;
  },
): OpenSheet<S> {
  const { table, findings } = of;
  const indexes = new Map(of.readers.map(({ key, index }) => [key, index]));
  const has = (key: string): boolean => (indexes.get(key) ?? -1) !== -1;
  const place = ({ row }: RowBase, key: string): Place => {
    const base = { file: table?.file ?? sheet, sheet, row };
    const index = indexes.get(key) ?? -1;
    if (index === -1) return { ...base, column: schema[key]?.header ?? key };
    return { ...base, column: table?.headers[index] ?? key, cell: cellAddress(index + 1, row) };
  };
  const text = ({ cells }: RowBase, key: string): string => cellText(cells[indexes.get(key) ?? -1] ?? '');
  const blame: OpenSheet<S>['blame'] = (code, row, key, details) => {
    findings.problems.push(problem(code, place(row, key), { found: text(row, key), ...details }));
  };
  return { rows: of.rows, has, place, text, blame };
}
