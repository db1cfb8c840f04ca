// Command line: whether the files may go into a folder. In: the folder, the sheets, the files' names. Out: nothing, or a
// UsageError before any work is done.
import { constants } from 'node:fs';
import { access, realpath, stat } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import { UsageError } from './end-run.js';
import { nameFault } from './name-fault.js';

interface Outputs {
  /** Folder or workbook from which the plan is made. */
  readonly sheets: string;
  readonly names: readonly string[];
}

/** Throws where the folder is a file, cannot be written to, or is where the painter's sheets are. */
export async function checkOutFolder(folder: string, { sheets, names }: Outputs): Promise<void> {
  const there = await stat(folder).catch(() => undefined);
  if (there !== undefined && !there.isDirectory())
    throw new UsageError(`${folder} is a file. Name a folder with --out.`);
  await checkSheetsApart(folder, { sheets, names });
  for (const name of names) await checkNoFolder(join(folder, name));
  const nearest = await nearestPath(resolve(folder));
  // Asking for what lies under it fails where it is no folder, in the system's own words for that.
  await access(`${nearest}/.`, constants.W_OK).catch((error: unknown) => {
    throw nameFault(error, folder);
  });
}

/** The sheets are the painter's: no file of ours goes among them, let alone over them. */
async function checkSheetsApart(folder: string, { sheets, names }: Outputs): Promise<void> {
  const source = await realPath(sheets);
  if ((await realPath(folder)) === source)
    throw new UsageError(`${folder} is where your sheets are. Name another folder with --out.`);
  for (const name of names)
    if ((await realPath(join(folder, name))) === source)
      throw new UsageError(`${join(folder, name)} is your own workbook. Name another folder with --out.`);
}

async function checkNoFolder(path: string): Promise<void> {
  const there = await stat(path).catch(() => undefined);
  if (there?.isDirectory()) throw new UsageError(`${path} is a folder and stands in the way of a file.`);
}

/** Links followed; a path that is not there stays as it is. */
async function realPath(path: string): Promise<string> {
  return realpath(path).catch(() => resolve(path));
}

/** The path itself, or the nearest above it that is there. */
async function nearestPath(path: string): Promise<string> {
  const there = await stat(path).catch(() => undefined);
  return there !== undefined || dirname(path) === path ? path : nearestPath(dirname(path));
}
