// Checks: rows by their schema. In: an open sheet. Out: rows of values; every bad or missing cell told, every default
// counted. A sheet may have 100,000 rows, so nothing is looked up, made or compiled for a row that could be for a table.
import type { SheetName } from '../../model/words.js';
import type { Cell, Table } from '../table.js';
import { type Findings, useDefault } from './collect-findings.js';
import { exampleOf, isNeeded } from './find-columns.js';
import { type OpenSheet, openSheet, type RowBase, type RowOf, type Schema } from './open-sheet.js';
import { type CellKind, Mistake, readCell } from './read-cell/cell-kind.js';

/** A sheet with all its rows. */
export interface ReadSheet<S extends Schema> extends OpenSheet<S> {
  readonly rows: readonly RowOf<S>[];
}

/** Reads every row of a table; a sheet that is not there gives no rows and no problem. */
export function readRows<S extends Schema>(
  sheet: SheetName,
  schema: S,
  from: { readonly table: Table | undefined; readonly findings: Findings },
): ReadSheet<S> {
  const open = openSheet(sheet, schema, from);
  const rows: RowOf<S>[] = [];
  visitRows(open, (row) => rows.push({ ...row }));
  return { ...open, rows };
}

interface Reader {
  readonly key: string;
  readonly index: number;
  readonly kind: CellKind<unknown>;
  readonly blank: unknown;
  readonly needed: boolean;
  /** For a blank cell that must not be. */
  readonly expected: string;
  blanks: number;
}

type Draft = { row: number; cells: readonly Cell[]; bad: readonly string[] } & Record<string, unknown>;

const nothingBad: readonly string[] = [];

/**
 * Reads row after row and hands each to `visit` with its place among the rows, from 0. The row is good until `visit`
 * returns: the next one is written over it, which keeps a long sheet from filling the memory.
 */
export function visitRows<S extends Schema>(
  open: OpenSheet<S>,
  visit: (row: RowOf<S>, place: number) => void,
): void {
  if (open.table === undefined) return;
  const readers = readersOf(open);
  const draft: Draft = { row: 0, cells: [], bad: nothingBad };
  for (const { key } of readers) draft[key] = undefined;
  for (const [place, { row, cells }] of open.table.rows.entries()) {
    draft.row = row;
    draft.cells = cells;
    draft.bad = nothingBad;
    for (const reader of readers) draft[reader.key] = readOne(reader, draft, open);
    visit(draft as unknown as RowOf<S>, place);
  }
  countBlanks(open, readers);
}

function readersOf<S extends Schema>({ sheet, schema, indexOf }: OpenSheet<S>): Reader[] {
  return Object.entries(schema).map(([key, { header, kind, blank, mayBeBlank }]) => {
    const index = indexOf(key);
    const needed = isNeeded(sheet, header) && mayBeBlank !== true && index !== -1;
    const expected = `${kind.noun}, such as ${exampleOf(sheet, header)}`;
    return { key, index, kind, blank, needed, expected, blanks: 0 };
  });
}

function readOne<S extends Schema>(reader: Reader, draft: Draft, { blame }: OpenSheet<S>): unknown {
  const cell = reader.index === -1 ? '' : (draft.cells[reader.index] ?? '');
  if (cell !== '' && (typeof cell !== 'string' || cell.trim() !== '')) {
    const value = readCell(reader.kind, cell);
    if (value instanceof Mistake) tellMistake(reader, draft, { blame, mistake: value });
    return value instanceof Mistake ? undefined : value;
  }
  reader.blanks += 1;
  if (!reader.needed) return reader.blank;
  tellMistake(reader, draft, { blame, mistake: new Mistake('blank-cell', reader.expected) });
  return undefined;
}

function tellMistake(
  { key }: Reader,
  draft: Draft,
  { blame, mistake }: { readonly blame: OpenSheet<Schema>['blame']; readonly mistake: Mistake },
): void {
  const { code, expected, found } = mistake;
  blame(code, draft satisfies RowBase, key, found === undefined ? { expected } : { expected, found });
  draft.bad = [...draft.bad, key];
}

function countBlanks<S extends Schema>(
  { sheet, schema, findings }: OpenSheet<S>,
  readers: readonly Reader[],
): void {
  for (const { key, blanks } of readers) {
    const { header, meaning } = schema[key] ?? {};
    if (header === undefined || meaning === undefined) continue;
    useDefault(findings, { sheet, column: header, rows: blanks, meaning });
  }
}
