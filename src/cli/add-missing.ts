// Command line: `halfpot start` in a folder that has sheets. In: the folder. Out: the sheets that are missing, filled as far as
// the others allow; nothing that is there is touched.
import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { stdout } from 'node:process';
import { registry } from '../assumptions/registry.js';
import { checkTables } from '../sheets/check/check-tables.js';
import { pickSheetFiles } from '../sheets/read/pick-sheet-files.js';
import { readTables } from '../sheets/read/read-tables.js';
import { listMissingSheets } from '../sheets/starter/list-missing-sheets.js';
import { writeStarterCsv } from '../sheets/starter/write-starter-csv.js';
import { addFiles } from './add-files.js';
import { today } from './choose-date.js';
import { UsageError } from './end-run.js';
import { quoted } from './quote-path.js';
import { showPlain } from './show-plain.js';
import { wordRead } from './word-read.js';

/** False where the folder has no sheets. Throws a UsageError where they stand in a workbook, which is never written to. */
export async function addMissing(folder: string): Promise<boolean> {
  const tables = await readTables(folder);
  if (tables.tables.length === 0) return false;
  const checked = checkTables(tables, { assumptions: registry, today: today() });
  stdout.write(`Already there:\n${wordRead({ ...checked, sheets: undefined }, new Map())}`);
  const sheets = listMissingSheets(tables);
  const { loneWorkbook, ofOtherType } = pickSheetFiles(readdirSync(folder));
  if (sheets.length > 0 && loneWorkbook !== undefined && ofOtherType.length === 0)
    throw new UsageError(
      `${loneWorkbook} stays as it is, and is read by itself. Missing in it: ${sheets.map(({ sheet }) => sheet).join(', ')}. ` +
        'halfpot start ANOTHER-FOLDER --workbook has them to copy.',
    );
  const files = writeStarterCsv(sheets).filter(({ name }) => !existsSync(join(folder, name)));
  if (sheets.length > 0) await addFiles(folder, files, 'Name another folder.');
  const rows = new Map(sheets.map((one) => [`${one.sheet}.csv`, one.rows.length]));
  const list = files.map(
    ({ name }) => `  ${showPlain(join(folder, name))}${wordRows(rows.get(name) ?? 0)}\n`,
  );
  stdout.write(
    sheets.length === 0
      ? 'Every sheet is there: nothing was added.\n'
      : `Added:\n${list.join('')}\nFill in what you need of them and throw the others away; then\n  halfpot check ${quoted(folder)}\n`,
  );
  return true;
}

const wordRows = (rows: number): string =>
  rows === 0 ? '' : `  ${rows === 1 ? '1 row' : `${rows} rows`} to fill in`;
