// Command line: files beside the painter's own. In: a folder, files. Out: nothing; they are there, or none of them.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import type { StarterFile } from '../sheets/starter/write-starter-csv.js';
import { UsageError } from './end-run.js';
import { TakenError } from './put-in-place.js';
import { writeFiles } from './write-files.js';

/** Throws a UsageError, with `instead` in it, where one of them is already there. */
export async function addFiles(
  folder: string,
  files: readonly StarterFile[],
  instead: string,
): Promise<void> {
  const refusal = (path: string): UsageError =>
    new UsageError(`${path} is already there and stays as it is. ${instead}`);
  const taken = files.map(({ name }) => join(folder, name)).find((path) => existsSync(path));
  if (taken !== undefined) throw refusal(taken);
  await writeFiles(folder, files, 'add').catch((error: unknown) => {
    throw error instanceof TakenError ? refusal(error.path) : error;
  });
}
