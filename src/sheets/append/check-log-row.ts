// Append: a new row of the log, checked before it is written. In: tables as read, the row's cells as typed. Out: its cells
// as the log is to hold them, or why not.
import type { Problem } from '../../model/problem.js';
import type { LogRow } from '../../model/sheets.js';
import { type ProblemCode, problem } from '../../problems/catalogue.js';
import { checkTables, type Known } from '../check/check-tables.js';
import { columns } from '../columns/columns.js';
import { columnKey } from '../spell-headers.js';
import type { Cell, Headed, ReadTables, Table } from '../table.js';
import { guardFormula } from './guard-formula.js';

type Found = Problem<ProblemCode>;

const ofLog: Headed = { sheet: 'log' };

interface Draft {
  /** The log that the row goes to, whether it is there or not. */
  readonly file: string;
  /** Cells by header, as typed; a blank one is left out. */
  readonly typed: ReadonlyMap<string, string>;
}

export interface CheckedLogRow {
  /** Of the row itself; its columns are headers of the log. */
  readonly ofRow: readonly Found[];
  /** Errors elsewhere: with them nobody can tell whether the row is right. */
  readonly elsewhere: readonly Found[];
  /** By header; undefined where any problem is an error. */
  readonly cells: ReadonlyMap<string, string> | undefined;
}

/** Checks the row as the last one of its log, with all that the sheets say. */
export function checkLogRow(read: ReadTables, { file, typed }: Draft, known: Known): CheckedLogRow {
  const old = read.tables.find((table) => table.sheet === 'log' && table.file === file) ?? newLog(file);
  const row = Math.max(old.headerRow, ...old.rows.slice(-1).map((last) => last.row)) + 1;
  const log = { ...old, rows: [...old.rows, { row, cells: placeCells(old, typed) }] };
  const tables = [...read.tables.filter((table) => table !== old), log];
  const { sheets, problems } = checkTables({ tables, problems: read.problems }, known);
  const isOfRow = (one: Found): boolean => one.sheet === 'log' && one.file === file && one.row === row;
  const ofRow = problems.filter(isOfRow);
  const errors = problems.filter((one) => one.severity === 'error' && !isOfRow(one));
  const elsewhere = [...errors, ...missingColumns(old, typed)];
  const right =
    elsewhere.length > 0 ? undefined : sheets?.log.find((one) => one.file === file && one.row === row);
  return { ofRow, elsewhere, cells: right && cellsOf(right, typed, decimalMark(read.tables)) };
}

function newLog(file: string): Table {
  return { sheet: 'log', file, headerRow: 1, headers: columns.log.map(({ header }) => header), rows: [] };
}

/** Cells in the order of a log's own columns; '' for a column that the row says nothing of. */
export function placeCells(
  { headers }: Pick<Table, 'headers'>,
  cells: ReadonlyMap<string, string>,
): string[] {
  const byKey = new Map([...cells].map(([header, cell]) => [columnKey(ofLog, header), cell]));
  const placed = new Set<string>();
  return headers.map((header) => {
    const key = columnKey(ofLog, header);
    if (placed.has(key)) return '';
    placed.add(key);
    return byKey.get(key) ?? '';
  });
}

function missingColumns({ file, headers }: Table, typed: ReadonlyMap<string, string>): Found[] {
  const known = new Set(headers.map((header) => columnKey(ofLog, header)));
  return [...typed.keys()]
    .filter((header) => !known.has(columnKey(ofLog, header)))
    .map((header) => problem('missing-column', { file, sheet: 'log', column: header }));
}

/** Names as the other sheets spell them, and harmless to a spreadsheet; numbers as typed, with the log's decimal mark. */
function cellsOf({ date, paint, unit }: LogRow, typed: ReadonlyMap<string, string>, mark: string) {
  const names = {
    date,
    paint: guardFormula(paint),
    unit: unit === undefined ? undefined : guardFormula(unit),
  };
  return new Map(
    [...typed].map(([header, text]) => {
      const name = header in names ? names[header as keyof typeof names] : undefined;
      return [header, name ?? text.trim().replace(/^\+?(\d+)[.,](\d+)$/, `$1${mark}$2`)];
    }),
  );
}

const isDecimal = (mark: string) => (cell: Cell) =>
  typeof cell === 'string' && new RegExp(`^\\d+[${mark}]\\d+$`).test(cell);

/** What the logs write before a fraction, else the pots sheet; a point unless they write commas alone. */
function decimalMark(tables: readonly Table[]): '.' | ',' {
  for (const sheet of ['log', 'pots'] as const) {
    const cells = tables
      .filter((table) => table.sheet === sheet)
      .flatMap(({ rows }) => rows.flatMap((row) => row.cells));
    if (cells.some(isDecimal('.'))) return '.';
    if (cells.some(isDecimal(','))) return ',';
  }
  return '.';
}
