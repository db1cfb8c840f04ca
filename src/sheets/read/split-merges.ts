// Readers: merged cells of a workbook. In: a grid under its headers, merged ranges. Out: problems; the grid's
// rows filled down. A merge hides blanks: only its first cell holds anything, and a blank price or share
// means something.
import { problem } from '../../problems/catalogue.js';
import { columns } from '../columns/columns.js';
import { headerKey } from '../match-header.js';
import { columnMeant } from '../spell-headers.js';
import type { Cell } from '../table.js';
import { headerText } from './find-header-row.js';
import type { FoundProblem, GridRow, HeadedGrid } from './grid.js';
import { columnNumber } from './name-cell.js';

/** Numbers from 1, both ends counted. */
interface Range {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  /** `A3:A7` */
  readonly name: string;
}

/**
 * Reports each merge that blanks cells of a known column, and fills its value down the rows of its first
 * column, so that the same merge is not reported again as so many blank cells. Merged titles above the header
 * and merges within the painter's own columns are left alone, and so is what is filled down with the other blanks of its column. Without merges there is nothing to report.
 */
export function splitMerges(grid: HeadedGrid): FoundProblem[] {
  const { header, headers, merges = [] } = grid;
  const known = headers.flatMap((text, index) => (columnMeant(grid, text) ? [index] : []));
  const ranges = merges.flatMap((name) => readRange(name) ?? []).sort((a, b) => a.top - b.top);
  const lastRow = new Map<number, number>();
  return ranges.flatMap((range) => {
    const column = known.find((index) => index >= range.left - 1 && index < range.right);
    if (range.bottom < header.row || column === undefined) return [];
    // Merged ranges lie apart (ECMA-376 18.3.1.55); of those that do not, the upper one counts.
    if (range.top <= (lastRow.get(column) ?? 0)) return [];
    lastRow.set(column, range.bottom);
    return splitMerge(range, headers[column] ?? '', grid);
  });
}

function splitMerge(range: Range, column: string, grid: HeadedGrid): FoundProblem[] {
  const { header, body, sheet, file } = grid;
  const { top, left, bottom, right, name } = range;
  const covered = body.slice(firstFrom(body, top), firstFrom(body, bottom + 1));
  const [first] = top === header.row ? [header] : covered;
  const value = first?.row === top ? (first.cells[left - 1] ?? '') : '';
  const below = covered.filter(({ row }) => row > top);
  if (value === '' || (left === right && below.length === 0)) return [];
  if (left === right && top > header.row && fillsDown(grid, column)) return [];
  if (top > header.row) fillDown(below, left - 1, value);
  return [
    problem('merged-cells', { file, sheet, row: top, column, cell: name }, { found: headerText(value) }),
  ];
}

/** Whether its blanks are as the row above has it, merged or not. */
function fillsDown(grid: HeadedGrid, header: string): boolean {
  const key = columnMeant(grid, header)?.key;
  return columns[grid.sheet].some((one) => headerKey(one.header) === key && one.fillsDown === 'always');
}

function fillDown(rows: readonly GridRow[], index: number, value: Cell): void {
  for (const { cells } of rows) {
    while (cells.length <= index) cells.push('');
    if (cells[index] === '') cells[index] = value;
  }
}

function readRange(name: string): Range | undefined {
  const [, left, top, right, bottom] = /^\$?([A-Z]+)\$?(\d+):\$?([A-Z]+)\$?(\d+)$/i.exec(name) ?? [];
  if (left === undefined || right === undefined) return undefined;
  return {
    top: Number(top),
    left: columnNumber(left),
    bottom: Number(bottom),
    right: columnNumber(right),
    name,
  };
}

/** Index of the first row with that number or a higher one; rows ascend. */
function firstFrom(rows: readonly GridRow[], row: number): number {
  let low = 0;
  let high = rows.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rows[middle]?.row ?? row) < row) low = middle + 1;
    else high = middle;
  }
  return low;
}
