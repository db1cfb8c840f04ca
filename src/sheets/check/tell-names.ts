// Checks: names in rows. In: a row's name, the rows or names met so far. Out: whether it is a repeat, or as whom it is known;
// told where it must not be so.

import type { ProblemCode } from '../../problems/catalogue.js';
import type { Columns } from '../columns/column.js';
import type { NameBook } from './keep-names.js';
import type { OpenSheet, RowOf } from './open-sheet.js';

interface Named {
  readonly key: string;
  /** Spelled as it is everywhere. */
  readonly name: string;
  /** By name, the row in which it stands, in words; the function adds to it. */
  readonly first: Map<string, string>;
}

/** True, with a problem at the cell, where the name has a row already. */
export function tellRepeat<C extends Columns>(
  sheet: OpenSheet<C>,
  row: RowOf<C>,
  { key, name, first }: Named,
): boolean {
  const before = first.get(name);
  if (before === undefined) first.set(name, sheet.rowName(row));
  else sheet.blame('repeated-name', row, key, { expected: before });
  return before !== undefined;
}

interface LookedUp {
  readonly key: string;
  readonly name: string | undefined;
  /** Undefined where names cannot be looked up. */
  readonly book: NameBook | undefined;
  readonly code: ProblemCode;
}

/** The first spelling of a name that has to be known: another is told, with those near it. */
export function findKnown<C extends Columns>(
  sheet: OpenSheet<C>,
  row: RowOf<C>,
  { key, name, book, code }: LookedUp,
): string | undefined {
  if (name === undefined || book === undefined) return undefined;
  const known = book.find(name);
  if (known === undefined) sheet.blame(code, row, key, { expected: book.nearest(name) });
  return known;
}
