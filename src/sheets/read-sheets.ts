// Sheets, the whole stage: a folder or a workbook in; checked rows, or every problem there is with them, out.
import { type CheckedSheets, checkTables, type Known } from './check/check-tables.js';
import { listModelFiles } from './check/list-model-files.js';
import { readTables } from './read/read-tables.js';

export type { DefaultUsed, SheetRead } from '../model/sheets.js';
export type { CheckedSheets } from './check/check-tables.js';

/**
 * Reads a folder of CSV files or one workbook and checks all of it in one run. `sheets` is undefined where any
 * problem is an error; warnings leave it whole. Sheets that are optional and not there give empty lists.
 */
export async function readSheets(path: string, known: Known): Promise<CheckedSheets> {
  const read = await readTables(path);
  const names = listModelFiles(read);
  if (names.size === 0) return checkTables(read, known);
  const { readModels } = await import('./read/models/read-models.js');
  return checkTables(read, { ...known, models: await readModels(path, names) });
}
