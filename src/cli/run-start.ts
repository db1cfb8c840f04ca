// Command line: `halfpot start`. In: a folder. Out: starter sheets in it; nothing that is there is touched.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { stdout } from 'node:process';
import type { StarterFile } from '../sheets/starter/write-starter-csv.js';
import { UsageError } from './end-run.js';
import { TakenError } from './put-in-place.js';
import { writeFiles } from './write-files.js';

/** Writes the sheets and says what to do next. Throws a UsageError where a file of theirs is already there. */
export async function runStart(folder: string, { workbook = false }: { workbook?: boolean }): Promise<void> {
  if (folder.trim() === '') throw new UsageError('A blank is no folder. Name one, such as my-army.');
  const files = await listFiles(workbook);
  const taken = files.map(({ name }) => join(folder, name)).find((path) => existsSync(path));
  if (taken !== undefined) throw refusal(taken);
  await writeFiles(folder, files, 'add').catch((error: unknown) => {
    throw error instanceof TakenError ? refusal(error.path) : error;
  });
  const sheets = workbook ? join(folder, files[0]?.name ?? '') : folder;
  const list = files.map(({ name }) => `  ${join(folder, name)}\n`).join('');
  stdout.write(
    `Wrote:\n${list}\nThey hold a small example; plan it with\n  halfpot plan ${quoted(sheets)}\n`,
  );
}

async function listFiles(workbook: boolean): Promise<readonly StarterFile[]> {
  if (!workbook) return (await import('../sheets/starter/write-starter-csv.js')).writeStarterCsv();
  const { writeStarterWorkbook } = await import('../sheets/starter/write-starter-workbook.js');
  return [await writeStarterWorkbook()];
}

const refusal = (path: string): UsageError =>
  new UsageError(`${path} is already there and stays as it is. Name another folder.`);

const quoted = (path: string): string => (/\s/.test(path) ? `"${path}"` : path);
