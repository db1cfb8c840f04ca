// Starter: the sheets that a newcomer gets. In: the columns of every sheet and the example rows. Out: plain tables.
import { type SheetName, sheetNames } from '../../model/words.js';
import type { Column } from '../columns/column.js';
import { columns } from '../columns/columns.js';
import { exampleRows } from './example-rows.js';

export interface StarterSheet {
  readonly sheet: SheetName;
  readonly columns: readonly Column[];
  /** Cells as text, in the order of the columns; '' for a blank. */
  readonly rows: readonly (readonly string[])[];
}

/**
 * Every sheet with all its columns and the rows of the example; only the pots sheet leaves columns to paints. Headers that are
 * their columns' own need no columns sheet.
 */
export function listStarterSheets(): StarterSheet[] {
  return sheetNames
    .filter((sheet) => sheet !== 'columns')
    .map((sheet) => {
      const shown = columns[sheet].filter((column) => isShown(sheet, column));
      const rows = exampleRows[sheet].map((row) => shown.map(({ header }) => row.get(header) ?? ''));
      return { sheet, columns: shown, rows };
    });
}

/** The pots sheet takes the columns of paints too, which would only stand in a newcomer's way. */
function isShown(sheet: SheetName, { header, needed }: Column): boolean {
  return sheet !== 'pots' || needed || !columns.paints.some((column) => column.header === header);
}
