// Readers: a last row that adds up those above it. In: a grid under its headers. Out: the same without it, and a problem that
// says so.
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
    'somma suma sumatoria soma totaal som totalt summa razem celkem összesen yhteensä итого всего'
  ).split(' '),
);

/** A total and what it is a total of; only a sheet gone wrong ends in more. */
const most = 3;

/** The last rows go one by one, as far as each is a sum; what is left may be nothing. */
export function dropTotals(grid: HeadedGrid): {
  readonly grid: HeadedGrid;
  readonly problems: FoundProblem[];
} {
  const problems: FoundProblem[] = [];
  let { body } = grid;
  // Below the last row of a log in CSV the next one is written, and then its sum is the last no more.
  const isGrowing = grid.sheet === 'log' && grid.delimiterName !== undefined;
  while (problems.length < most && summed.includes(grid.sheet) && !isGrowing) {
    const last = body.at(-1);
    const above = body.slice(0, -1);
    if (last === undefined || !isTotal(last.cells, above, grid)) break;
    problems.unshift(tell(last, grid));
    body = above;
  }
  return { grid: problems.length === 0 ? grid : { ...grid, body }, problems };
}

function tell({ row, cells }: GridRow, { sheet, file }: HeadedGrid): FoundProblem {
  const shown = cells.filter((cell) => cell !== '').slice(0, 2);
  const found = shown.map((cell) => `"${startOf(headerText(cell))}"`).join(', ');
  return problem('totals-row', { file, sheet, row }, { found });
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
function nameCells(cells: readonly Cell[], { sheet, headers }: HeadedGrid): readonly Cell[] {
  const keys = headers.map((header) => columnKey(sheet, header));
  return columns[sheet]
    .filter(({ needed, isIn }) => needed && isIn !== 'money')
    .map(({ header }) => keys.indexOf(headerKey(header)))
    .flatMap((index) => (index === -1 ? [] : [cells[index] ?? '']));
}

const lettersOf = (cell: Cell): readonly string[] =>
  typeof cell === 'string' && cell.length <= longest ? cell.split(/[^\p{L}]+/u).map(nameKey) : [];

const isWord = (cell: Cell): boolean => {
  const [word = '', ...more] = lettersOf(cell);
  return words.has(word) && more.every((one) => one === '') && numberIn(cell) === undefined;
};

/** `Total pots`, `grand total`. */
const startsInWord = (cell: Cell): boolean => lettersOf(cell).some((word) => words.has(word));

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
