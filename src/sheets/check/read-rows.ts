// Checks: rows by their columns. In: an open sheet. Out: rows of values; every bad or missing cell told, every default
// counted. A sheet may have 100,000 rows, so nothing is looked up, made or compiled for a row that could be for a table.
import type { SheetName } from '../../model/words.js';
import type { Columns } from '../columns/column.js';
import type { Tables } from '../columns/columns.js';
import type { Cell } from '../table.js';
import { type From, type OpenSheet, openSheet, type RowBase, type RowOf } from './open-sheet.js';
import { type CellKind, Mistake, readCell } from './read-cell/cell-kind.js';

/** A sheet with all its rows. */
interface ReadSheet<C extends Columns> extends OpenSheet<C> {
  readonly rows: readonly RowOf<C>[];
}

export type RowIn<N extends SheetName> = RowOf<Tables[N]>;
export type SheetOf<N extends SheetName> = ReadSheet<Tables[N]>;

/** Reads every row of a table; a sheet that is not there gives no rows and no problem. */
export function readRows<N extends SheetName>(sheet: N, from: From): SheetOf<N> {
  const open = openSheet(sheet, from);
  const rows: RowIn<N>[] = [];
  visitRows(open, (row) => rows.push({ ...row }));
  return { ...open, rows };
}

type Part<C extends Columns> = OpenSheet<C>['parts'][number];

interface Reader {
  readonly key: string;
  readonly index: number;
  readonly kind: CellKind<unknown>;
  readonly blank: unknown;
  readonly needed: boolean;
  /** Where the column stands that may be filled in its place. */
  readonly unless: number;
  /** For a blank cell that must not be. */
  readonly expected: string;
  blanks: number;
}

type Draft = { row: number; part: number; cells: readonly Cell[]; bad: readonly string[] } & Record<
  string,
  unknown
>;

const nothingBad: readonly string[] = [];

/**
 * Reads row after row and hands each to `visit` with its place among the rows, from 0. The row is good until `visit`
 * returns: the next one is written over it, which keeps a long sheet from filling the memory.
 */
export function visitRows<C extends Columns>(
  open: OpenSheet<C>,
  visit: (row: RowOf<C>, place: number) => void,
): void {
  let before = 0;
  for (const [at, part] of open.parts.entries()) {
    const readers = readersOf(part);
    const keys = Object.fromEntries(readers.map(({ key }) => [key, undefined]));
    // A copy: an object that grows by more than twelve keys is a slow one, and so is every row made of it.
    const draft: Draft = { ...keys, row: 0, part: at, cells: [], bad: nothingBad };
    for (const [place, { row, cells }] of (part.table?.rows ?? []).entries()) {
      draft.row = row;
      draft.cells = cells;
      draft.bad = nothingBad;
      for (const reader of readers) draft[reader.key] = readOne(reader, draft, part);
      visit(draft as unknown as RowOf<C>, before + place);
    }
    before += part.table?.rows.length ?? 0;
    if (part.table !== undefined) countBlanks(part, readers);
  }
}

function readersOf<C extends Columns>({ columns, kindOf, indexOf }: Part<C>): Reader[] {
  return Object.entries(columns).map(([key, column]) => {
    const [index, kind] = [indexOf(key), kindOf(key)];
    const needed = column.needed && column.isShared !== true && index !== -1;
    const expected = `${kind.noun}, such as ${column.example}`;
    const unless = column.unless === undefined ? -1 : indexOf(column.unless);
    return { key, index, kind, blank: column.blank?.value, needed, unless, expected, blanks: 0 };
  });
}

function readOne<C extends Columns>(reader: Reader, draft: Draft, { blame }: Part<C>): unknown {
  const cell = draft.cells[reader.index] ?? '';
  if (!isBlank(cell)) {
    const value = readCell(reader.kind, cell);
    if (value instanceof Mistake) tellMistake(reader, draft, { blame, mistake: value });
    return value instanceof Mistake ? undefined : value;
  }
  reader.blanks += 1;
  if (!reader.needed || !isBlank(draft.cells[reader.unless] ?? '')) return reader.blank;
  tellMistake(reader, draft, { blame, mistake: new Mistake('blank-cell', reader.expected) });
  return undefined;
}

const isBlank = (cell: Cell): boolean => cell === '' || (typeof cell === 'string' && cell.trim() === '');

function tellMistake(
  { key }: Reader,
  draft: Draft,
  { blame, mistake }: { readonly blame: Part<Columns>['blame']; readonly mistake: Mistake },
): void {
  const { code, expected, found } = mistake;
  blame(code, draft satisfies RowBase, key, found === undefined ? { expected } : { expected, found });
  draft.bad = [...draft.bad, key];
}

function countBlanks<C extends Columns>({ columns, useBlank }: Part<C>, readers: readonly Reader[]): void {
  for (const { key, blanks } of readers) if (columns[key]?.blank?.isCounted === true) useBlank(key, blanks);
}
