// Readers: what is wrong with a sheet as a whole. In: a grid under its header row. Out: problems, no cell's
// meaning.
import { neededSheets, type SheetName } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import { columnMeant } from '../spell-headers.js';
import type { Cell } from '../table.js';
import { headerText } from './find-header-row.js';
import { type FoundProblem, type GridRow, type HeadedGrid, spreadsheetLimits, startOf } from './grid.js';
import { cellAddress, columnLetters } from './name-cell.js';

/**
 * Size, rows above the header, headers given twice, hidden rows and columns, cells without a header.
 */
export function shapeProblems(grid: HeadedGrid): FoundProblem[] {
  return [
    ...sizeProblems(grid),
    ...rowsAbove(grid),
    ...duplicateHeaders(grid),
    ...hiddenRows(grid),
    ...hiddenColumns(grid),
    ...extraCells(grid),
    ...columnsWithoutHeader(grid),
  ];
}

/** Whether there is an answer that the sheet is needed for. */
export function isNeededSheet(sheet: SheetName): boolean {
  return (neededSheets as readonly SheetName[]).includes(sheet);
}

function sizeProblems({ sheet, file, rows, headers }: HeadedGrid): FoundProblem[] {
  const most = spreadsheetLimits;
  const last = rows.at(-1)?.row ?? 0;
  const tooLarge = (
    code: 'too-many-rows' | 'too-many-columns',
    found: number,
    limit: number,
  ): FoundProblem[] =>
    found > limit ? [problem(code, { file, sheet }, { found: String(found), expected: String(limit) })] : [];
  return [
    ...tooLarge('too-many-rows', last, most.rows),
    ...tooLarge('too-many-columns', headers.length, most.columns),
  ];
}

/** Titles, or rows that were sorted there. */
function rowsAbove({ sheet, file, rows, header }: HeadedGrid): FoundProblem[] {
  const above = rows.slice(0, rows.indexOf(header));
  if (above.length === 0) return [];
  const title = above.flatMap(({ cells }) => cells.filter((cell) => cell !== ''))[0] ?? '';
  const begins = above.length === 1 ? ` ("${startOf(headerText(title))}")` : '';
  const found = `${listRows(above.map(({ row }) => row))}${begins}`;
  return [problem('rows-above-header', { file, sheet }, { found })];
}

/**
 * Only headers that the sheet knows: the painter's own columns may be called alike, and so may one beside the column's own name. A price in another currency may
 * stand beside the one that counts.
 */
function duplicateHeaders(grid: HeadedGrid): FoundProblem[] {
  const { sheet, file, header, headers } = grid;
  const first = new Map<string, number>();
  const all = headers.map((one) => columnMeant(grid, one));
  const owned = new Set(all.flatMap((meant) => (meant?.isOwn === true ? meant.key : [])));
  return headers.flatMap((column, index) => {
    const meant = all[index];
    if (meant === undefined || meant.currency !== undefined) return [];
    if (!meant.isOwn && owned.has(meant.key)) return [];
    const before = first.get(meant.key);
    if (before === undefined) first.set(meant.key, index);
    if (before === undefined) return [];
    const place = { file, sheet, row: header.row, column, cell: cellAddress(index + 1, header.row) };
    const found = cellAddress(before + 1, header.row);
    return [problem('duplicate-header', place, { found, expected: headers[before] ?? '' })];
  });
}

function hiddenRows({ sheet, file, body, hiddenRows: hidden }: HeadedGrid): FoundProblem[] {
  if (hidden === undefined) return [];
  const numbers = body.filter(({ row }) => hidden.has(row)).map(({ row }) => row);
  return numbers.length === 0 ? [] : [problem('hidden-rows', { file, sheet }, { found: listRows(numbers) })];
}

/** Only those that are read; the painter's own may be hidden. */
function hiddenColumns(grid: HeadedGrid): FoundProblem[] {
  const { sheet, file, headers, hiddenColumns: hidden = [] } = grid;
  const found = headers.flatMap((header, index) => {
    const isHidden = hidden.some(({ from, to }) => from <= index + 1 && index + 1 <= to);
    return isHidden && columnMeant(grid, header)
      ? [`${columnLetters(index + 1)} ("${startOf(header)}")`]
      : [];
  });
  if (found.length === 0) return [];
  const which = found.length === 1 ? 'column' : 'columns';
  return [problem('hidden-columns', { file, sheet }, { found: `${which} ${found.join(', ')}` })];
}

/** `3 rows (4, 5, 9)`, the first five named. */
export function listRows(numbers: readonly number[]): string {
  const named = numbers.slice(0, 5).join(', ') + (numbers.length > 5 ? ' ...' : '');
  return numbers.length === 1 ? `row ${named}` : `${numbers.length} rows (${named})`;
}

/**
 * A CSV row with more cells than the header row was split where it should not be: an error in each such row.
 */
function extraCells({ sheet, file, header, body, delimiterName, brokenRows }: HeadedGrid): FoundProblem[] {
  if (delimiterName === undefined) return [];
  const width = header.cells.length;
  const problems: FoundProblem[] = [];
  for (const { row, cells } of body) {
    if (cells.length <= width || brokenRows?.has(row) === true) continue;
    const extra = cells.findIndex((cell, index) => index >= width && cell !== '');
    if (extra === -1) continue;
    const place = { file, sheet, row, cell: cellAddress(extra + 1, row) };
    const found = startOf(headerText(cells[extra] ?? ''));
    problems.push(problem('extra-cell', place, { found, expected: delimiterName }));
  }
  return problems;
}

/** Cells under a blank header are likely notes: one warning for their column. */
function columnsWithoutHeader(grid: HeadedGrid): FoundProblem[] {
  const { sheet, file, header, headers, body, delimiterName } = grid;
  const blank = headers.flatMap((text, index) => (text === '' ? [index] : []));
  const end = delimiterName === undefined ? Number.POSITIVE_INFINITY : header.cells.length;
  const counts = new Map<number, number>();
  const count = (index: number, cells: readonly Cell[]): void => {
    if (cells[index] !== '') counts.set(index, (counts.get(index) ?? 0) + 1);
  };
  for (const { cells } of body) {
    for (const index of blank) {
      if (index >= cells.length) break;
      count(index, cells);
    }
    for (let index = headers.length; index < Math.min(cells.length, end); index += 1) count(index, cells);
  }
  return [...counts]
    .sort(([a], [b]) => a - b)
    .map(([index, cells]) => {
      const found = cells === 1 ? '1 cell' : `${cells} cells`;
      return problem('column-without-header', { file, sheet }, { found, expected: columnLetters(index + 1) });
    });
}

/** Cells that no spreadsheet holds, the first of each row. */
export function longCells(
  rows: readonly GridRow[],
  place: { readonly file: string; readonly sheet: SheetName },
): FoundProblem[] {
  const most = spreadsheetLimits.cellCharacters;
  const isLong = (cell: Cell): boolean => typeof cell === 'string' && cell.length > most;
  const problems: FoundProblem[] = [];
  for (const { row, cells } of rows) {
    const index = cells.findIndex(isLong);
    if (index === -1) continue;
    const at = { ...place, row, cell: cellAddress(index + 1, row) };
    problems.push(problem('long-cell', at, { found: startOf(String(cells[index])), expected: String(most) }));
  }
  return problems;
}
