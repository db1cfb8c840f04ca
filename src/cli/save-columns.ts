// Command line: `halfpot check --write-columns`. In: a path to sheets, how they were read. Out: columns.csv beside them, and
// a text that says so; a file that is there is left as it is.
import { statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import type { SheetRead } from '../sheets/read-sheets.js';
import { writeColumnsCsv } from '../sheets/starter/write-columns-csv.js';
import { addFiles } from './add-files.js';

/** Throws a UsageError where there is such a file. */
export async function saveColumns(path: string, read: readonly SheetRead[]): Promise<string> {
  if (read.length === 0) return '';
  const file = writeColumnsCsv(read);
  if (file === undefined) return 'Every header is the own name of its column: there is nothing to write.\n';
  const folder = statSync(path).isDirectory() ? path : dirname(path);
  await addFiles(folder, [file], 'Rename it first, or mend its rows.');
  return `Wrote ${join(folder, file.name)}: mend its rows, and check again.\n`;
}
