// Checks: a pots sheet without a left column, in which another column may be meant for it. In: the sheet. Out: a warning
// at the header of a column that reads like what is left, as every pot counts as full without one.
import { problem } from '../../problems/catalogue.js';
import { cellAddress } from '../read/name-cell.js';
import { columnMeant } from '../spell-headers.js';
import type { Cell, Table } from '../table.js';
import type { Findings } from './collect-findings.js';
import { Mistake, readCell } from './read-cell/cell-kind.js';
import { leftKind } from './read-cell/read-left.js';

/** Bare numbers up to this may be a shelf, a price or a rating; from here on they look like percent or ml. */
const leastTelling = 10;

/** Columns of the painter's own that are looked into; only a table gone wrong has more. */
const mostAsked = 100;

/** Says nothing where a header near `left` is questioned already. The painter's other columns are not spoken of. */
export function questionLeft(table: Table, findings: Findings): void {
  const isAsked = findings.problems.some(
    ({ code, sheet, expected }) => code === 'near-column' && sheet === 'pots' && expected === 'left',
  );
  if (isAsked) return;
  let asked = 0;
  for (const [index, header] of table.headers.entries()) {
    if (header === '' || columnMeant('pots', header) !== undefined) continue;
    asked += 1;
    if (asked > mostAsked) return;
    if (!readsAsLeft(table, index)) continue;
    const { file, sheet, headerRow: row } = table;
    const place = { file, sheet, row, column: header, cell: cellAddress(index + 1, row) };
    findings.problems.push(problem('left-maybe-meant', place));
  }
}

/** Whether every cell that is not blank could say what is left, and any says less than full. */
function readsAsLeft({ rows }: Table, index: number): boolean {
  const bare: number[] = [];
  let isTelling = false;
  for (const { cells } of rows) {
    const cell = cells[index] ?? '';
    if (typeof cell === 'string' && cell.trim() === '') continue;
    const reading = readCell(leftKind, cell);
    if (!(reading instanceof Mistake)) isTelling ||= reading.how !== 'by eye' || reading.share < 1;
    else if (reading.code === 'left-without-unit') bare.push(bareNumber(cell));
    else return false;
  }
  return bare.every((value) => value <= 100) && (isTelling || (looksMeasured(bare) && !isNumbering(bare)));
}

const bareNumber = (cell: Cell): number => Number(String(cell).replace(',', '.'));

const looksMeasured = (bare: readonly number[]): boolean => bare.some((value) => value > leastTelling);

/** 1, 2, 3 ... down the sheet. */
const isNumbering = (bare: readonly number[]): boolean =>
  bare.length > 1 && bare.every((value, at) => at === 0 || value === (bare[at - 1] ?? 0) + 1);
