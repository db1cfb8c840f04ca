// Readers: a grid to a table. In: non-blank rows. Out: headers and the rows below them, problems of the
// sheet's shape.
import type { SheetName } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import { headerKey } from '../match-header.js';
import type { Called, Table } from '../table.js';
import { isNeededSheet, shapeProblems } from './check-shape.js';
import { dropTotals } from './drop-totals.js';
import { findHeaderRow, headerText } from './find-header-row.js';
import { type FoundProblem, type Grid, type GridRow, neededHeaders, startOf } from './grid.js';
import { readsAsData } from './read-as-data.js';
import { splitMerges } from './split-merges.js';
import { cutBeside, dropHeadersAgain, tellOddTable } from './tell-odd-table.js';

export interface MadeTable {
  /** Undefined for a sheet without any cell, and for one without its header row. */
  readonly table: Table | undefined;
  readonly problems: readonly FoundProblem[];
}

/** Finds the header row and makes the table; without one there is no table to make. Short rows stay short. */
export function makeTable(grid: Grid): MadeTable {
  const { sheet, file } = grid;
  const at = findHeaderRow(grid.rows, grid);
  const header = grid.rows[at];
  if (header === undefined) return { table: undefined, problems: [emptySheet(sheet, file)] };
  if (readsAsData(header.cells, grid, grid.rows.slice(at + 1)))
    return { table: undefined, problems: [noHeader(grid, header)] };
  const odd = tellOddTable(grid, header);
  if (odd !== undefined) return { table: undefined, problems: [odd] };
  const headers = headersOf(header);
  const called = calledIn(headers, grid.called);
  const whole = { ...grid, called, header, headers, body: grid.rows.slice(at + 1) };

  const { grid: alone, problems: beside } = cutBeside(whole);
  const { grid: once, problems: again } = dropHeadersAgain(alone);
  const { grid: headed, problems: ofTotals } = dropTotals(once);
  const mergeProblems = splitMerges(headed);
  const table = {
    sheet,
    file,
    called: headed.called,
    headerRow: header.row,
    headers: headed.headers,
    rows: headed.body,
  };
  return { table, problems: [...beside, ...shapeProblems(headed), ...mergeProblems, ...again, ...ofTotals] };
}

/** Of headers that are not there the columns sheet says nothing. */
function calledIn(headers: readonly string[], called: Called | undefined): Called | undefined {
  const keys = new Set(headers.map(headerKey));
  return called && new Map([...called].filter(([key]) => keys.has(key)));
}

function headersOf({ cells }: GridRow): string[] {
  const headers = cells.map(headerText);
  while (headers.at(-1) === '') headers.pop();
  return headers;
}

/** Cells of the row that are shown. */
const mostShown = 3;

function noHeader({ sheet, file }: Grid, { row, cells }: GridRow): FoundProblem {
  const texts = cells.map((cell) => startOf(headerText(cell))).filter((text) => text !== '');
  const found = texts.slice(0, mostShown).map((text) => `"${text}"`);
  const details = { found: found.join(', '), expected: neededHeaders(sheet) };
  return problem('no-header-row', { file, sheet, row }, details);
}

function emptySheet(sheet: SheetName, file: string): FoundProblem {
  const code = isNeededSheet(sheet) ? 'empty-sheet' : 'empty-optional-sheet';
  return problem(code, { file, sheet }, { expected: neededHeaders(sheet) });
}
