// Checks: names that may stand in one row only. In: a row's name, the rows met so far. Out: whether it is a repeat, told.
import type { Columns } from '../columns/column.js';
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
