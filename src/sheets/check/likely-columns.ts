// Checks: which column that is not there a column of the painter's own may be meant for, by what stands in it. In: cells, what
// is wanted. Out: own columns, each with the column that it could be.
import { opacities } from '../../model/words.js';
import type { Column } from '../columns/column.js';
import type { Cell, Table } from '../table.js';
import { wordsOf } from './near-headers.js';
import { isNumbering, readsAsLeft } from './read-as-left.js';
import { readsAsMoney } from './read-as-money.js';
import { type CellKind, Mistake, readCell } from './read-cell/cell-kind.js';
import { choiceKind } from './read-cell/read-choice.js';

/** A column without which an answer may change, and how its cells are read. */
export interface Wanted {
  readonly column: Column;
  readonly kind: CellKind<unknown>;
  /** It is there, and blank on every row. */
  readonly isThere: boolean;
}

/** Cells of an own column that hold something, and whether its header speaks for the column. */
interface Own {
  readonly cells: readonly Cell[];
  readonly isCalledSo: boolean;
}

type Judge = (own: Own, kind: CellKind<unknown>) => boolean;

/** Larger numbers in an offer may be pages, and points in an army. */
const mostPots = 100;
const mostSteps = 30;

const ownOpacity = choiceKind('an opacity', opacities);

/** By header. Any other column can be done without, or its cells could be too many other things. */
const judges: ReadonlyMap<string, Judge> = new Map<string, Judge>([
  ['left', readsAsLeft],
  ['price', readsAsMoney],
  ['postage', readsAsMoney],
  ['free from', (own) => own.isCalledSo && readsAsMoney(own)],
  ['size ml', areNumbers],
  ['count', areNumbers],
  ['pots', (own, kind) => areNumbers(own, kind) && reach(own.cells, { over: 1, most: mostPots })],
  ['done', (own, kind) => areNumbers(own, kind) && reach(own.cells, { over: 0, most: mostSteps })],
  // What else opacities are called may be the state of a pot.
  ['opacity', (own, kind) => areMostRead(own, own.isCalledSo ? kind : ownOpacity)],
  ...['kind', 'container', 'build', 'dress', 'method', 'layer', 'base'].map((header): [string, Judge] => [
    header,
    areMostRead,
  ]),
  ['hex', (own, kind) => areMostRead(own, kind) && own.cells.some((cell) => /[#a-f]/i.test(String(cell)))],
  ['area %', arePercents],
  ['share', arePercents],
]);

/** Words of a header that speak for a column, where its cells may be several things. */
const callings: Readonly<Record<string, readonly string[]>> = {
  left: ['left', 'full', 'fill', 'level', 'remaining', 'rest'],
  price: ['price', 'paid', 'cost', 'costs', 'spent'],
  'free from': ['free'],
  postage: ['postage', 'shipping', 'delivery'],
  opacity: ['opacity', 'opaque', 'coverage', 'covers', 'covering', 'hides', 'hiding'],
  count: ['count', 'number', 'quantity', 'qty', 'models', 'figures'],
  pots: ['pots', 'count', 'number', 'quantity', 'qty', 'pieces', 'pcs'],
  done: ['done', 'painted', 'finished', 'progress', 'stage', 'step'],
};

/** Where these are there, though blank, only a header that speaks for them is asked about: numbers are so many things. */
const manyThings: readonly string[] = ['price', 'postage', 'pots', 'done', 'area %', 'share'];

/** Blank, or as good as. */
const nothing = /^(?:none|no|n\/a|[-\u2013?]|)$/i;

/** Of a longer column the first cells tell enough. */
const mostCells = 1000;
/** Columns of the painter's own that are looked into; only a table gone wrong has more. */
const mostAsked = 100;

export const isWanted = ({ header }: Column): boolean => judges.has(header);

/** The own columns at `own` that could be meant for a wanted one, in their order. */
export function likelyColumns(
  table: Table,
  own: readonly number[],
  wanted: readonly Wanted[],
): readonly { readonly index: number; readonly column: Column }[] {
  if (wanted.length === 0) return [];
  return own.slice(0, mostAsked).flatMap((index) => {
    const cells = filledCells(table, index);
    const words = wordsOf(table.headers[index] ?? '');
    const isCalled = ({ column }: Wanted): boolean =>
      callings[column.header]?.some((word) => words.includes(word)) ?? false;
    const others = wanted.filter(
      (one) => !isCalled(one) && !(one.isThere && manyThings.includes(one.column.header)),
    );
    const ranked = [...wanted.filter(isCalled), ...others];
    const meant = ranked.find((one) =>
      judges.get(one.column.header)?.({ cells, isCalledSo: isCalled(one) }, one.kind),
    );
    return meant === undefined ? [] : [{ index, column: meant.column }];
  });
}

function filledCells({ rows }: Table, index: number): readonly Cell[] {
  const cells: Cell[] = [];
  for (const row of rows) {
    const cell = row.cells[index] ?? '';
    if (typeof cell !== 'string' || !nothing.test(cell.slice(0, 10).trim())) cells.push(cell);
    if (cells.length === mostCells) break;
  }
  return cells;
}

/** Two of three: a sheet has its slips. */
function areMostRead({ cells }: Own, kind: CellKind<unknown>): boolean {
  const read = cells.filter((cell) => !(readCell(kind, cell) instanceof Mistake)).length;
  return read > 0 && read * 3 >= cells.length * 2;
}

/** But for those that only count the rows. */
function areNumbers(own: Own, kind: CellKind<unknown>): boolean {
  return areMostRead(own, kind) && !isNumbering(own.cells.map(Number));
}

function reach(cells: readonly Cell[], { over, most }: Readonly<Record<'over' | 'most', number>>): boolean {
  const highest = Math.max(...cells.map(Number).filter((value) => !Number.isNaN(value)));
  return highest > over && highest <= most;
}

function arePercents(own: Own, kind: CellKind<unknown>): boolean {
  return areMostRead(own, kind) && own.cells.some((cell) => typeof cell === 'string' && cell.endsWith('%'));
}
