// Command line: `halfpot start`. In: a folder. Out: starter sheets in it; nothing that is there is touched.
import { existsSync } from 'node:fs';
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { stdout } from 'node:process';
import type { StarterFile } from '../sheets/starter/write-starter-csv.js';
import { UsageError } from './end-run.js';
import { nameFault } from './name-fault.js';

/** Writes the sheets and says what to do next. Throws a UsageError where a file of theirs is already there. */
export async function runStart(folder: string, { workbook = false }: { workbook?: boolean }): Promise<void> {
  const files = await listFiles(workbook);
  const taken = files.map(({ name }) => join(folder, name)).find((path) => existsSync(path));
  if (taken !== undefined) refuse(taken);
  await writeAll(folder, files);
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

/** All files or none: what was written before a fault is taken away again. */
async function writeAll(folder: string, files: readonly StarterFile[]): Promise<void> {
  const written: string[] = [];
  try {
    await mkdir(folder, { recursive: true });
    for (const { name, content } of files) {
      await writeNew(join(folder, name), content);
      written.push(join(folder, name));
    }
  } catch (error) {
    for (const path of written) await rm(path, { force: true });
    throw nameFault(error, folder);
  }
}

/** The flag makes the system itself refuse a file that has come into being since the check. */
async function writeNew(path: string, content: string | Uint8Array): Promise<void> {
  await writeFile(path, content, { flag: 'wx' }).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'EEXIST') refuse(path);
    throw error;
  });
}

function refuse(path: string): never {
  throw new UsageError(`${path} is already there and stays as it is. Name another folder.`);
}

const quoted = (path: string): string => (/\s/.test(path) ? `"${path}"` : path);
