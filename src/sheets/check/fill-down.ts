// Checks: names that are written once above the rows that share them. In: a table, the places of its columns. Out: the same
// with such blanks filled, and one problem that says so.
import type { Problem } from '../../model/problem.js';
import { type ProblemCode, problem } from '../../problems/catalogue.js';
import { columns } from '../columns/columns.js';
import { headerKey } from '../match-header.js';
import type { Cell, Table } from '../table.js';

interface Filled {
  readonly index: number;
  /** Place of the column that a row has to fill; undefined where every row counts. */
  readonly where: number | undefined;
  above: Cell;
  count: number;
}

const none = -1;

/**
 * Blanks of the columns that fill down become what stands above them. Another value in one of them starts those behind it
 * anew: an offer goes no further than its shop. The table itself stays as it is.
 */
export function fillDown(
  table: Table | undefined,
  indexes: ReadonlyMap<string, number>,
): { readonly table: Table | undefined; readonly problems: Problem<ProblemCode>[] } {
  if (table === undefined) return { table, problems: [] };
  const placed = columns[table.sheet].flatMap(({ header, fillsDown }): Filled[] => {
    const index = indexes.get(headerKey(header));
    if (fillsDown === undefined || index === undefined) return [];
    const where = fillsDown === 'always' ? undefined : (indexes.get(headerKey(fillsDown.where)) ?? none);
    return [{ index, where, above: '', count: 0 }];
  });
  if (placed.length === 0) return { table, problems: [] };
  let filledRows = 0;
  const rows = table.rows.map((row) => {
    const cells = fillRow(row.cells, placed);
    if (cells === row.cells) return row;
    filledRows += 1;
    return { ...row, cells };
  });
  return filledRows === 0
    ? { table, problems: [] }
    : { table: { ...table, rows }, problems: [said(table, placed, filledRows)] };
}

/** The same cells where nothing is filled. */
function fillRow(written: readonly Cell[], placed: readonly Filled[]): readonly Cell[] {
  let cells: Cell[] | undefined;
  for (const [at, column] of placed.entries()) {
    const cell = written[column.index] ?? '';
    if (!isBlank(cell)) startAnew(cell, column, placed.slice(at + 1));
    else if (column.above !== '' && isMeant(written, column)) {
      cells ??= [...written];
      fill(cells, column);
    }
  }
  return cells ?? written;
}

function startAnew(cell: Cell, column: Filled, behind: readonly Filled[]): void {
  if (cell !== column.above) for (const one of behind) one.above = '';
  column.above = cell;
}

function fill(cells: Cell[], column: Filled): void {
  while (cells.length <= column.index) cells.push('');
  cells[column.index] = column.above;
  column.count += 1;
}

const isBlank = (cell: Cell): boolean => typeof cell === 'string' && cell.trim() === '';

const isMeant = (cells: readonly Cell[], { where }: Filled): boolean =>
  where === undefined || !isBlank(cells[where] ?? '');

function said(
  { file, sheet, headers }: Table,
  placed: readonly Filled[],
  rows: number,
): Problem<ProblemCode> {
  const names = placed.filter(({ count }) => count > 0).map(({ index }) => `"${headers[index] ?? ''}"`);
  const expected = rows === 1 ? '1 row' : `${rows} rows`;
  return problem('filled-down', { file, sheet }, { found: names.join(' and '), expected });
}
