// Readers: rows that add up those above them, headings and notes between the rows and below. In: a grid under its headers.
// Out: the same without them, and problems that say so.
import type { SheetName } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import { Mistake } from '../check/read-cell/cell-kind.js';
import { parseNumber } from '../check/read-cell/parse-number.js';
import { columns } from '../columns/columns.js';
import { headerKey, nameKey } from '../match-header.js';
import { columnKey } from '../spell-headers.js';
import type { Cell } from '../table.js';
import { headerText } from './find-header-row.js';
import { type FoundProblem, type GridRow, type HeadedGrid, startOf } from './grid.js';

/** Sheets of things; the others hold rules, which nobody adds up. */
const summed: readonly SheetName[] = [
  'pots',
  'paints',
  'offers',
  'shops',
  'figures',
  'army',
  'extras',
  'log',
];

/** What painters call such a row, in some languages. */
const words: ReadonlySet<string> = new Set(
  (
    'total totals subtotal sum sums altogether summe summen gesamt gesamtsumme insgesamt zusammen somme totaux totale ' +
    'somma suma sumatoria soma totaal som totalt summa razem celkem összesen yhteensä итого всего ' +
    'average durchschnitt mittelwert moyenne promedio media gemiddelde gemiddeld średnia średnio'
  ).split(' '),
);

/** A total and what it is a total of; only a sheet gone wrong ends in more. */
const most = 3;

/**
 * Sums between the rows go, and a text by itself below a blank row or a sum; then the last rows, one by one, as far as each is
 * a sum. What is left may be nothing.
 */
export function dropTotals(grid: HeadedGrid): {
  readonly grid: HeadedGrid;
  readonly problems: FoundProblem[];
} {
  // Below the last row of a log in CSV the next one is written, and then its sum is the last no more.
  const isGrowing = grid.sheet === 'log' && grid.delimiterName !== undefined;
  if (!summed.includes(grid.sheet) || isGrowing) return { grid, problems: [] };
  const { kept, problems } = dropBetween(grid);
  const ofLast: FoundProblem[] = [];
  let body = kept;
  while (ofLast.length < most) {
    const last = body.at(-1);
    const above = body.slice(0, -1);
    if (last === undefined || !isTotal(last.cells, above, grid)) break;
    ofLast.unshift(tell('totals-row', last, grid));
    body = above;
  }
  const all = [...problems, ...ofLast];
  return { grid: all.length === 0 ? grid : { ...grid, body }, problems: all };
}

function dropBetween(grid: HeadedGrid): {
  readonly kept: readonly GridRow[];
  readonly problems: FoundProblem[];
} {
  const places = namePlaces(grid);
  const kept: GridRow[] = [];
  const problems: FoundProblem[] = [];
  let blockFrom = 0;
  let before = grid.header.row;
  let isBelow = false;
  for (const row of grid.body) {
    const isAside: boolean = (isBelow || row.row > before + 1) && kept.length > 0 && isLoneText(row, places);
    const isSum: boolean = !isAside && isSubtotal(row, kept, blockFrom);
    isBelow = isAside || isSum;
    before = row.row;
    if (isAside) problems.push(tell('note-row', row, grid));
    else if (isSum) problems.push(tell('totals-row', row, grid));
    else kept.push(row);
    if (isBelow) blockFrom = kept.length;
  }
  return { kept, problems };
}

/** One text where the row needs two names or more. */
function isLoneText({ cells }: GridRow, places: readonly number[]): boolean {
  if (places.length < 2) return false;
  const filled = cells.filter((cell) => cell !== '');
  return filled.length === 1 && typeof filled[0] === 'string' && numberIn(filled[0]) === undefined;
}

/** Called a sum by its first cell, and one of the rows above, or of those from `blockFrom` on. */
function isSubtotal({ cells }: GridRow, above: readonly GridRow[], blockFrom: number): boolean {
  const label = cells.findIndex((cell) => cell !== '');
  if (label === -1 || !startsInWord(cells[label] ?? '')) return false;
  const blocks = [above.slice(blockFrom), above];
  return cells.some((cell, index) => index !== label && blocks.some((block) => sums(cell, block, index)));
}

function tell(
  code: 'totals-row' | 'note-row',
  { row, cells }: GridRow,
  { sheet, file }: HeadedGrid,
): FoundProblem {
  const shown = cells.filter((cell) => cell !== '').slice(0, 2);
  const found = shown.map((cell) => `"${startOf(headerText(cell))}"`).join(', ');
  return problem(code, { file, sheet, row }, { found });
}

/**
 * A row called total by its name; or one that lacks a name, says nothing but numbers and perhaps what they are, and has a sum
 * of the numbers above or the word for it. A pot that happens to be as large as two others has all its names, and so has
 * an offer of a shop called Total.
 */
function isTotal(cells: readonly Cell[], above: readonly GridRow[], grid: HeadedGrid): boolean {
  const names = nameCells(cells, grid);
  const lacks = names.includes('');
  if (isWord(names[0] ?? '') && (lacks || names.length < 3)) return true;
  const label = cells.findIndex((cell) => cell !== '');
  if (!lacks || label === -1) return false;
  const others = cells.filter((_, index) => index !== label);
  if (startsInWord(cells[label] ?? '') || others.some(isWord)) return true;
  const isBare = [...others, ...names.slice(1)].every(
    (cell) => cell === '' || isSum(cell) || numberIn(cell) !== undefined,
  );
  return isBare && cells.some((cell, index) => isSum(cell) || sums(cell, above, index));
}

/** Of the columns that a row can't do without, and that are there: its cells, but for money. */
const nameCells = (cells: readonly Cell[], grid: HeadedGrid): readonly Cell[] =>
  namePlaces(grid).map((index) => cells[index] ?? '');

function namePlaces(grid: HeadedGrid): readonly number[] {
  const keys = grid.headers.map((header) => columnKey(grid, header));
  return columns[grid.sheet]
    .filter(({ needed, isIn }) => needed && isIn !== 'money')
    .map(({ header }) => keys.indexOf(headerKey(header)))
    .filter((index) => index !== -1);
}

const lettersOf = (cell: Cell): readonly string[] =>
  (typeof cell === 'string' && cell.length <= longest && cell.match(/\p{L}+/gu)) || [];

const isWord = (cell: Cell): boolean => {
  const [word = '', ...more] = lettersOf(cell);
  return words.has(nameKey(word)) && more.length === 0 && numberIn(cell) === undefined;
};

/** `Total pots`, `grand total`. */
export const startsInWord = (cell: Cell): boolean => lettersOf(cell).some((word) => words.has(nameKey(word)));

/** A formula that adds up, which no program has worked out yet; files have its name in English (ECMA-376 18.17.7). */
const isSum = (cell: Cell): boolean =>
  typeof cell === 'object' && cell.kind === 'broken' && /^=(?:SUM|SUBTOTAL)\(/.test(cell.shown);

/** Sums are written to the cent. */
const closeTo = 0.005;

function sums(cell: Cell, above: readonly GridRow[], index: number): boolean {
  const total = numberIn(cell) ?? 0;
  if (total <= 0) return false;
  let sum = 0;
  let addends = 0;
  for (const { cells } of above) {
    const value = numberIn(cells[index] ?? '');
    if (value === undefined || value === 0) continue;
    sum += value;
    addends += 1;
    if (sum > total + closeTo) return false;
  }
  return addends > 1 && Math.abs(sum - total) < closeTo;
}

const longest = 40;
/** With at most a sign or a unit before and behind. */
const withSigns = /^[^\d.,]*((?:\d|[.,]\d)[\d.,'’\s]*)[^\d.,]*$/;

/** Undefined for what is no number or could be two. */
function numberIn(cell: Cell): number | undefined {
  if (typeof cell === 'number') return cell;
  if (typeof cell === 'object' && cell.kind === 'measured') return cell.value;
  if (typeof cell !== 'string' || cell.length > longest) return undefined;
  const [, written] = withSigns.exec(cell) ?? [];
  const value = written === undefined ? undefined : parseNumber(written.trim());
  return value instanceof Mistake ? undefined : value;
}
