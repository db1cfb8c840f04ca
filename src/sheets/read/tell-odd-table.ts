// Readers: tables that stand otherwise than in one table below its headers. In: a grid and its header row. Out: a problem that
// says what to do, or the rows and headers that are left alone.
import { type SheetName, sheetNames } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import { columns } from '../columns/columns.js';
import { headerKey } from '../match-header.js';
import { columnMeant, knownHeaderKeys } from '../spell-headers.js';
import { listRows } from './check-shape.js';
import { startsInWord } from './drop-totals.js';
import { countKnown, HEADER_WITHIN_ROWS } from './find-delimiter.js';
import { headerText } from './find-header-row.js';
import { type FoundProblem, type Grid, type GridRow, type HeadedGrid, startOf } from './grid.js';
import { cellAddress } from './name-cell.js';

/** One header may be a word of the data; so many are not. */
const leastHeaders = 2;
/** Headers that are shown. */
const mostShown = 3;

/** Where a needed column is missing and the headers stand elsewhere, or the rows are sums of another table. */
export function tellOddTable(grid: Grid, header: GridRow): FoundProblem | undefined {
  const { sheet, file, rows } = grid;
  const texts = header.cells.map(headerText);
  const meant = new Set(texts.map((text) => columnMeant(grid, text)?.key));
  const needed = neededKeys(sheet);
  if (needed.every((key) => meant.has(key))) return undefined;
  const known = knownHeaderKeys(sheet);
  const least = Math.max(leastHeaders, countKnown(texts, known) + 1);
  const place = { file, sheet };
  const far = rows.find(
    ({ row, cells }) => row > HEADER_WITHIN_ROWS && countKnown(cells.map(headerText), known) >= least,
  );
  if (far !== undefined)
    return problem('headers-far-below', place, {
      found: String(far.row),
      expected: String(HEADER_WITHIN_ROWS),
    });
  const firsts = rows.map(({ cells }) => headerText(cells[0] ?? ''));
  if (countKnown(firsts, known) >= least) return problem('sheet-on-its-side', place, { found: show(firsts) });
  const isOfSums = startsInWord(texts.at(-1) ?? '') && startsInWord(firsts.at(-1) ?? '');
  return isOfSums && !needed.some((key) => meant.has(key)) ? problem('sheet-of-sums', place) : undefined;
}

const neededKeys = (sheet: SheetName): readonly string[] =>
  columns[sheet].filter(({ needed }) => needed).map(({ header }) => headerKey(header));

function show(headers: readonly string[]): string {
  const filled = headers.filter((header) => header !== '');
  return filled
    .slice(0, mostShown)
    .map((header) => `"${startOf(header)}"`)
    .join(', ');
}

interface WithProblems {
  readonly grid: HeadedGrid;
  readonly problems: readonly FoundProblem[];
}

/** Headers that stand once more between the rows, as on every page of a print, are no row. */
export function dropHeadersAgain(grid: HeadedGrid): WithProblems {
  const { sheet, file, headers, body } = grid;
  if (headers.filter((header) => header !== '').length < leastHeaders) return { grid, problems: [] };
  const isAgain = ({ cells }: GridRow): boolean =>
    headers.every((header, at) => headerText(cells[at] ?? '') === header) &&
    cells.slice(headers.length).every((cell) => cell === '');
  const again = body.filter(isAgain).map(({ row }) => row);
  if (again.length === 0) return { grid, problems: [] };
  const told = problem('headers-again', { file, sheet }, { found: listRows(again) });
  return { grid: { ...grid, body: body.filter((row) => !isAgain(row)) }, problems: [told] };
}

/** Behind a blank column the headers of another sheet: that table is cut off. */
export function cutBeside(grid: HeadedGrid): WithProblems {
  const { sheet, file, header, headers } = grid;
  const width = headers.indexOf('');
  const [own, beside] = [headers.slice(0, width), headers.slice(width + 1)];
  const isOwn = isWhole(sheet, beside) && !isWhole(sheet, own);
  const other = width < 1 || isOwn ? undefined : sheetNames.find((one) => isOther(sheet, one, beside));
  if (other === undefined) return { grid, problems: [] };
  const cell = `${cellAddress(width + 2, header.row)}:${cellAddress(headers.length, header.row)}`;
  const place = { file, sheet, row: header.row, cell };
  const told = problem('table-beside', place, { found: show(beside), expected: other });
  const body = grid.body
    .map(({ row, cells }) => ({ row, cells: cells.slice(0, width) }))
    .filter(({ cells }) => cells.some((one) => one !== ''));
  return { grid: { ...grid, headers: own, body }, problems: [told] };
}

/** Headers of a sheet with all that it needs, or with what it begins with and none that it does not know; not all are of `sheet`. */
function isOther(sheet: SheetName, other: SheetName, headers: readonly string[]): boolean {
  const isIn = (one: SheetName, header: string): boolean => columnMeant({ sheet: one }, header) !== undefined;
  if (other === sheet || headers.every((header) => isIn(sheet, header))) return false;
  const [first] = neededKeys(other);
  const isBegun =
    headers.length >= leastHeaders &&
    headers.every((header) => isIn(other, header)) &&
    headers.some((header) => columnMeant({ sheet: other }, header)?.key === first);
  return isBegun || isWhole(other, headers);
}

/** Whether these are two headers of a sheet or more, with all that it needs. */
function isWhole(sheet: SheetName, headers: readonly string[]): boolean {
  const meant = new Set(headers.flatMap((header) => columnMeant({ sheet }, header)?.key ?? []));
  return meant.size >= leastHeaders && neededKeys(sheet).every((key) => meant.has(key));
}
