// Command line: `halfpot start`. In: a folder. Out: starter sheets in it; nothing that is there is touched.
import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import { stdout } from 'node:process';
import type { StarterFile } from '../sheets/starter/write-starter-csv.js';
import { addFiles } from './add-files.js';
import { UsageError } from './end-run.js';
import { quoted } from './quote-path.js';

/**
 * Writes the sheets and says what to do next; beside sheets of the painter's own those that are missing. Throws a UsageError
 * where a file of theirs is already there.
 */
export async function runStart(folder: string, { workbook = false }: { workbook?: boolean }): Promise<void> {
  if (folder.trim() === '') throw new UsageError('A blank is no folder. Name one, such as my-army.');
  if (!workbook && (await isFolder(folder))) {
    const { addMissing } = await import('./add-missing.js');
    if (await addMissing(folder)) return;
  }
  const files = await listFiles(workbook);
  await addFiles(folder, files, 'Name another folder.');
  const sheets = workbook ? join(folder, files[0]?.name ?? '') : folder;
  const list = files.map(({ name }) => `  ${join(folder, name)}\n`).join('');
  stdout.write(
    `Wrote:\n${list}\nThey hold a small example; plan it with\n  halfpot plan ${quoted(sheets)}\n`,
  );
}

/** What cannot be looked at is none; writing there says why. */
const isFolder = async (path: string): Promise<boolean> =>
  (await stat(path).catch(() => undefined))?.isDirectory() === true;

async function listFiles(workbook: boolean): Promise<readonly StarterFile[]> {
  if (!workbook) return (await import('../sheets/starter/write-starter-csv.js')).writeStarterCsv();
  const { writeStarterWorkbook } = await import('../sheets/starter/write-starter-workbook.js');
  return [await writeStarterWorkbook()];
}
