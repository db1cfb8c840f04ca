// Command line: whether the files may go into a folder. In: the folder, the sheets, the files' names. Out: nothing, or a
// UsageError before any work is done.
import { constants } from 'node:fs';
import { access, lstat, realpath, stat } from 'node:fs/promises';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { UsageError } from './end-run.js';
import { findForeign } from './find-foreign.js';
import { nameFault } from './name-fault.js';

interface Outputs {
  /** Folders or workbooks from which the plan is made. */
  readonly sheets: readonly string[];
  readonly names: readonly string[];
}

/** Throws where the folder is a file, cannot be written to, is where the painter's sheets are, or holds a file not ours. */
export async function checkOutFolder(folder: string, { sheets, names }: Outputs): Promise<void> {
  if (folder.trim() === '') throw new UsageError('--out is blank. Name a folder, or leave it out.');
  const there = await stat(folder).catch(() => undefined);
  if (there !== undefined && !there.isDirectory())
    throw new UsageError(`${folder} is a file. Name a folder with --out.`);
  if (there === undefined && (await lstat(folder).catch(() => undefined)) !== undefined)
    throw new UsageError(`${folder} is a link that leads nowhere. Name a folder with --out.`);
  for (const one of sheets) await checkSheetsApart(folder, one, names);
  for (const name of names) await checkNoFolder(join(folder, name));
  const foreign = await findForeign(folder, names);
  if (foreign !== undefined)
    throw new UsageError(
      `${join(folder, foreign)} is there already and not of an earlier plan. Name another folder with --out, or move that file away.`,
    );
  await checkWritable(folder);
}

/** Longer than any name of ours, also while a file is being written. */
const longName = 'halfpot'.padEnd(64, '-');

async function checkWritable(folder: string): Promise<void> {
  const whole = resolve(folder);
  const nearest = await nearestPath(whole);
  // What is not there yet is asked for where it could be, since only the name matters.
  const missing = relative(nearest, whole).split(sep);
  for (const path of [...missing.map((name) => join(nearest, name)), join(whole, longName)])
    await stat(path).catch((error: NodeJS.ErrnoException) => {
      if (error.code === 'ENAMETOOLONG') throw nameFault(error, folder);
    });
  // Asking for what lies under it fails where it is no folder, in the system's own words for that.
  await access(`${nearest}/.`, constants.W_OK).catch((error: unknown) => {
    throw nameFault(error, folder);
  });
}

/** The sheets are the painter's: no file of ours goes among them, let alone over them. */
async function checkSheetsApart(folder: string, sheets: string, names: readonly string[]): Promise<void> {
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
