// Checks: rows that come from one written row. In: their sheet. Out: the same, which tells what is wrong with them once.
import type { Columns } from '../columns/column.js';
import type { OpenSheet, RowBase } from './open-sheet.js';

/** The same code, column and words at one written row are told the first time only. */
export function tellOnce<C extends Columns, S extends OpenSheet<C>>(sheet: S & OpenSheet<C>): S {
  const told = new Map<RowBase['cells'], Set<string>>();
  const blame: OpenSheet<C>['blame'] = (code, row, key, details) => {
    const before = told.get(row.cells) ?? new Set();
    told.set(row.cells, before);
    const size = before.size;
    if (before.add(`${code}\n${key}\n${details?.found ?? ''}`).size > size)
      sheet.blame(code, row, key, details);
  };
  return { ...sheet, blame };
}
