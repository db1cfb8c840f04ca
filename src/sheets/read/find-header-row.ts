// Readers: where the header row of a grid stands. In: its non-blank rows and the header keys of its sheet.
// Out: the index of the header row, and headers as text.
import type { Cell } from '../table.js';
import { countKnown } from './find-delimiter.js';
import type { GridRow } from './grid.js';

const WITHIN_ROWS = 10;

/**
 * Index in `rows` of the row among the sheet's first ten that shows most known headers, the upper one of
 * equals; of the first non-blank row where none shows any. No rows give 0.
 */
export function findHeaderRow(rows: readonly GridRow[], knownHeaders: ReadonlySet<string>): number {
  let best = 0;
  let most = 0;
  for (const [index, { row, cells }] of rows.slice(0, WITHIN_ROWS).entries()) {
    const known = row > WITHIN_ROWS ? 0 : countKnown(cells.map(headerText), knownHeaders);
    if (known > most) [best, most] = [index, known];
  }
  return best;
}

/** A header cell as text; a year or a date may be the painter's own header. */
export function headerText(cell: Cell): string {
  if (typeof cell !== 'object') return String(cell);
  return cell.kind === 'date' ? cell.iso : cell.shown;
}
