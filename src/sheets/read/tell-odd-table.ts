// Readers: tables that stand otherwise than in one table below its headers. In: a grid and its header row. Out: a problem that
// says what to do, or the rows and headers that are left alone.
import { type SheetName, sheetNames } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import { columns } from '../columns/columns.js';
import { headerKey } from '../match-header.js';
import { columnMeant, knownHeaderKeys } from '../spell-headers.js';
import type { Called } from '../table.js';
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

/** Behind a blank column the whole headers of another sheet: columns that nothing is asked about. */
export function setAside(grid: HeadedGrid): WithProblems {
  const { sheet, file, header, headers } = grid;
  const from = headers.indexOf('') + 1;
  if (from === 0) return { grid, problems: [] };
  const beside = headers.slice(from);
  const other = sheetNames.find((one) => one !== sheet && isWhole(one, beside));
  if (other === undefined || isWhole(sheet, beside)) return { grid, problems: [] };
  const cell = `${cellAddress(from + 1, header.row)}:${cellAddress(headers.length, header.row)}`;
  const place = { file, sheet, row: header.row, cell };
  const told = problem('table-beside', place, { found: show(beside), expected: other });
  const own = new Set(headers.slice(0, from).map(headerKey));
  const others = beside.map(headerKey).filter((key) => !own.has(key));
  const called: Called = new Map([...(grid.called ?? []), ...others.map((key) => [key, ''] as const)]);
  return { grid: { ...grid, called }, problems: [told] };
}

/** Whether these are two headers of a sheet or more, with all that it needs. */
function isWhole(sheet: SheetName, headers: readonly string[]): boolean {
  const meant = new Set(headers.flatMap((header) => columnMeant({ sheet }, header)?.key ?? []));
  return meant.size >= leastHeaders && neededKeys(sheet).every((key) => meant.has(key));
}
