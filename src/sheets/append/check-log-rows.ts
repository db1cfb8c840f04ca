// Append: new rows of the log, checked before they are written. In: tables as read, cells as typed. Out: the cells as the log
// is to hold them, or why not.
import type { Problem } from '../../model/problem.js';
import type { LogRow, Sheets } from '../../model/sheets.js';
import { type ProblemCode, problem } from '../../problems/catalogue.js';
import { checkTables, type Known } from '../check/check-tables.js';
import { columns } from '../columns/columns.js';
import { log, takesBack } from '../columns/log-columns.js';
import { columnKey } from '../spell-headers.js';
import type { Cell, ReadTables, Table } from '../table.js';
import { guardFormula } from './guard-formula.js';

type Found = Problem<ProblemCode>;

/** Cells by header, as typed; a blank one is left out. */
export type TypedCells = ReadonlyMap<string, string>;

interface Draft {
  /** The log that the rows go to, whether it is there or not. */
  readonly file: string;
  readonly typed: readonly TypedCells[];
}

export interface CheckedLogRows {
  /** Of the rows themselves; their columns are headers of the log. */
  readonly ofRows: readonly Found[];
  /** Errors elsewhere: with them nobody can tell whether the rows are right. */
  readonly elsewhere: readonly Found[];
  /** One for each row; undefined where any problem is an error, or a row is left out. */
  readonly cells: readonly TypedCells[] | undefined;
  /** With the new rows among those of the log; undefined where any problem is an error. */
  readonly sheets: Sheets | undefined;
}

/** Checks the rows as the last ones of their log, with all that the sheets say. */
export function checkLogRows(read: ReadTables, { file, typed }: Draft, known: Known): CheckedLogRows {
  const old = read.tables.find((table) => table.sheet === 'log' && table.file === file) ?? newLog(file);
  const first = Math.max(old.headerRow, ...old.rows.slice(-1).map((last) => last.row)) + 1;
  const added = typed.map((cells, at) => ({ row: first + at, cells: placeCells(old, cells) }));
  const tables = [...read.tables.filter((table) => table !== old), { ...old, rows: [...old.rows, ...added] }];
  const { sheets, problems } = checkTables({ tables, problems: read.problems }, known);
  const isNew = (one: { readonly file?: string; readonly row?: number }): boolean =>
    one.file === file && one.row !== undefined && one.row >= first;
  const ofRows = problems.filter((one) => one.sheet === 'log' && isNew(one));
  const errors = problems.filter((one) => one.severity === 'error' && !ofRows.includes(one));
  const elsewhere = [...errors, ...missingColumns(old, typed)];
  const rowAt = new Map(sheets?.log.filter(isNew).map((one) => [one.row, one]));
  const isTaken = (cells: TypedCells, at: number): boolean =>
    rowAt.has(first + at) || cells.get(log.what.header)?.startsWith(takesBack) === true;
  if (elsewhere.length > 0 || !typed.every(isTaken))
    return { ofRows, elsewhere, cells: undefined, sheets: undefined };
  const mark = decimalMark(read.tables);
  const cells = typed.map((one, at) => cellsOf(rowAt.get(first + at), one, mark));
  return { ofRows, elsewhere, sheets, cells };
}

function newLog(file: string): Table {
  return { sheet: 'log', file, headerRow: 1, headers: columns.log.map(({ header }) => header), rows: [] };
}

/** Cells in the order of a log's own columns; '' for a column that the row says nothing of. */
export function placeCells(
  { headers }: Pick<Table, 'headers'>,
  cells: ReadonlyMap<string, string>,
): string[] {
  const byKey = new Map([...cells].map(([header, cell]) => [columnKey({ sheet: 'log' }, header), cell]));
  const placed = new Set<string>();
  return headers.map((header) => {
    const key = columnKey({ sheet: 'log' }, header);
    if (placed.has(key)) return '';
    placed.add(key);
    return byKey.get(key) ?? '';
  });
}

const missingColumns = (old: Table, typed: readonly TypedCells[]): Found[] =>
  lackingColumns(old, typed).map((column) =>
    problem('missing-column', { file: old.file, sheet: 'log', column }),
  );

/** Columns that the rows need and the log lacks; when it was written a row need not say. */
export function lackingColumns(
  { headers }: Pick<Table, 'headers'>,
  typed: readonly TypedCells[],
): readonly string[] {
  const known = new Set(headers.map((header) => columnKey({ sheet: 'log' }, header)));
  const written = new Set(typed.flatMap((cells) => [...cells.keys()]));
  written.delete(log.written.header);
  return [...written].filter((header) => !known.has(columnKey({ sheet: 'log' }, header)));
}

/** Names as the other sheets spell them, and harmless to a spreadsheet; numbers as typed, with the log's decimal mark. */
function cellsOf(row: LogRow | undefined, typed: TypedCells, mark: string): TypedCells {
  const { date, paint, unit, shop } = row ?? {};
  const names: Readonly<Record<string, string | undefined>> = { date, paint, unit, shop };
  return new Map(
    [...typed].map(([header, text]) => {
      const name = header in nameColumns ? guardFormula(names[header] ?? text.trim()) : undefined;
      return [header, name ?? text.trim().replace(/^\+?(\d+)[.,](\d+)( ml| g|%)?$/, `$1${mark}$2$3`)];
    }),
  );
}

const nameColumns = { date: 1, paint: 1, unit: 1, shop: 1 };

const decimals = [
  ['.', /^\d+\.\d+$/],
  [',', /^\d+,\d+$/],
] as const;

/** What the logs write before a fraction, else the pots sheet; a point unless they write commas alone. */
function decimalMark(tables: readonly Table[]): '.' | ',' {
  for (const sheet of ['log', 'pots'] as const) {
    const written = tables.filter((table) => table.sheet === sheet);
    const isThere = (decimal: RegExp) => (cell: Cell) => typeof cell === 'string' && decimal.test(cell);
    const found = decimals.find(([, decimal]) =>
      written.some(({ rows }) => rows.some(({ cells }) => cells.some(isThere(decimal)))),
    );
    if (found !== undefined) return found[0];
  }
  return '.';
}
