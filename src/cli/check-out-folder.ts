// Command line: whether the files may go into a folder. In: the folder, the sheets, the files' names. Out: nothing, or a
// UsageError before any work is done.
import { accessSync, constants, lstatSync, realpathSync, type Stats, statSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { UsageError } from './end-run.js';
import { findForeign } from './find-foreign.js';
import { nameFault } from './name-fault.js';

interface Outputs {
  /** Folders or workbooks from which the plan is made. */
  readonly sheets: readonly string[];
  readonly names: readonly string[];
}

/** Undefined where nothing is seen there. */
function seen(path: string, look: (path: string) => Stats = statSync): Stats | undefined {
  try {
    return look(path);
  } catch {
    return undefined;
  }
}

/** At once, which takes a tenth of the time. Throws where the folder is a file, cannot be written to, is where the painter's sheets are, or holds a file not ours. */
export function checkOutFolder(folder: string, { sheets, names }: Outputs): void {
  if (folder.trim() === '') throw new UsageError('--out is blank. Name a folder, or leave it out.');
  const there = seen(folder);
  if (there !== undefined && !there.isDirectory())
    throw new UsageError(`${folder} is a file. Name a folder with --out.`);
  if (there === undefined && seen(folder, lstatSync) !== undefined)
    throw new UsageError(`${folder} is a link that leads nowhere. Name a folder with --out.`);
  for (const one of sheets) checkSheetsApart(folder, one, names);
  for (const name of names) checkNoFolder(join(folder, name));
  const foreign = findForeign(folder, names);
  if (foreign !== undefined)
    throw new UsageError(
      `${join(folder, foreign)} is there already and not of an earlier plan. Name another folder with --out, or move that file away.`,
    );
  checkWritable(folder);
}

/** Longer than any name of ours, also while a file is being written. */
const longName = 'halfpot'.padEnd(64, '-');

function checkWritable(folder: string): void {
  const whole = resolve(folder);
  const nearest = nearestPath(whole);
  // What is not there yet is asked for where it could be, since only the name matters.
  const missing = relative(nearest, whole).split(sep);
  for (const path of [...missing.map((name) => join(nearest, name)), join(whole, longName)])
    checkName(path, folder);
  // Asking for what lies under it fails where it is no folder, in the system's own words for that.
  try {
    accessSync(`${nearest}/.`, constants.W_OK);
  } catch (error) {
    throw nameFault(error, folder);
  }
}

function checkName(path: string, folder: string): void {
  try {
    statSync(path);
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'ENAMETOOLONG')
      throw nameFault(error, folder);
  }
}

/** The sheets are the painter's: no file of ours goes among them, let alone over them. */
function checkSheetsApart(folder: string, sheets: string, names: readonly string[]): void {
  const source = realPath(sheets);
  if (realPath(folder) === source)
    throw new UsageError(`${folder} is where your sheets are. Name another folder with --out.`);
  for (const name of names)
    if (realPath(join(folder, name)) === source)
      throw new UsageError(`${join(folder, name)} is your own workbook. Name another folder with --out.`);
}

function checkNoFolder(path: string): void {
  if (seen(path)?.isDirectory()) throw new UsageError(`${path} is a folder and stands in the way of a file.`);
}

/** Links followed; a path that is not there stays as it is. */
function realPath(path: string): string {
  try {
    return realpathSync.native(path);
  } catch {
    return resolve(path);
  }
}

/** The path itself, or the nearest above it that is there. */
const nearestPath = (path: string): string =>
  seen(path) !== undefined || dirname(path) === path ? path : nearestPath(dirname(path));
