// Sheets, the whole stage: a folder or a workbook in; checked rows, or every problem there is with them, out.
import { type CheckedSheets, checkTables, type Known } from './check/check-tables.js';
import { listModelFiles } from './check/list-model-files.js';
import { readTables } from './read/read-tables.js';
import type { Replacement } from './read/replace-sheet.js';

export type { DefaultUsed, SheetRead } from '../model/sheets.js';
export type { CheckedSheets } from './check/check-tables.js';

/**
 * Reads a folder of CSV files or one workbook and checks all of it in one run. `sheets` is undefined where any
 * problem is an error; warnings leave it whole. Sheets that are optional and not there give empty lists.
 * `instead`: files read in the place of sheets of the path.
 */
export async function readSheets(
  path: string,
  known: Known,
  instead: readonly Replacement[] = [],
): Promise<CheckedSheets> {
  const read = await readTables(path, instead);
  const names = listModelFiles(read);
  if (names.size === 0) return checkTables(read, known);
  const { readModels } = await import('./read/models/read-models.js');
  return checkTables(read, { ...known, models: await readModels(path, names) });
}
