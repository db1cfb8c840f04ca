// Sheets, the whole stage: a folder or a workbook in; checked rows, or every problem there is with them, out.
import { type CheckedSheets, checkTables, type Known } from './check/check-tables.js';
import { readTables } from './read/read-tables.js';

export type { CheckedSheets } from './check/check-tables.js';

/**
 * Reads a folder of CSV files or one workbook and checks all of it in one run. `sheets` is undefined where any
 * problem is an error; warnings leave it whole. Sheets that are optional and not there give empty lists.
 */
export async function readSheets(path: string, known: Known): Promise<CheckedSheets> {
  return checkTables(await readTables(path), known);
}
