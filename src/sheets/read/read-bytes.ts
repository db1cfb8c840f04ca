// Readers: the bytes of one file. In: its path and place. Out: bytes, or the problem of opening it.
import { closeSync, fstatSync, openSync, readSync, statSync } from 'node:fs';
import type { Place } from '../../model/problem.js';
import { problem } from '../../problems/catalogue.js';
import type { FoundProblem } from './grid.js';

/** Most of a workbook may be pictures, which are passed over. */
export const MOST_BOOK_MB = 128;
/** A hundred thousand rows take a tenth of it. */
export const MOST_TEXT_MB = 64;
const MB = 2 ** 20;

const gone = 'it points to something that is gone';

const reasons: Readonly<Record<string, string>> = {
  ENOENT: gone,
  EACCES: 'no permission',
  EPERM: 'no permission',
  EBUSY: 'another program holds it',
  EISDIR: 'it is a folder',
  ELOOP: 'its links lead in a circle',
  ENAMETOOLONG: 'its name is too long',
};

export type ReadBytes = { readonly bytes: Buffer } | { readonly trouble: FoundProblem };

/**
 * Reads a whole file of up to `mostMb`, and no more than that of one that grows while it is read. What the system refuses
 * is a problem, and so is what is no ordinary file: a pipe may never end. Nothing is thrown. At once, since a dozen small sheets
 * take half as long so.
 */
export function readBytes(path: string, place: Place, mostMb: number): ReadBytes {
  try {
    const found = statSync(path);
    if (!found.isFile()) {
      const what = found.isDirectory() ? 'it is a folder' : 'it is no ordinary file';
      return { trouble: problem('unreadable-file', place, { found: what }) };
    }
    if (found.size > mostMb * MB) return { trouble: tooLarge(found.size, place, mostMb) };
    const file = openSync(path, 'r');
    try {
      return readUpTo(file, place, mostMb);
    } finally {
      closeSync(file);
    }
  } catch (error) {
    return { trouble: unreadable(error, place) };
  }
}

function tooLarge(size: number, place: Place, mostMb: number): FoundProblem {
  const details = { found: `${Math.ceil(size / MB)} MB`, expected: `${mostMb} MB` };
  return problem('too-large-file', place, details);
}

/** In memory of its own, which can be handed to another thread; twice as much of it where a file turns out longer. */
function readUpTo(file: number, place: Place, mostMb: number): ReadBytes {
  let bytes = Buffer.allocUnsafeSlow(fstatSync(file).size + 1);
  let filled = 0;
  for (;;) {
    const bytesRead = readSync(file, bytes, filled, bytes.length - filled, null);
    filled += bytesRead;
    if (bytesRead === 0) return { bytes: bytes.subarray(0, filled) };
    if (filled > mostMb * MB) return { trouble: tooLarge(filled, place, mostMb) };
    if (filled === bytes.length) bytes = Buffer.concat([bytes, Buffer.allocUnsafeSlow(filled)]);
  }
}

/** A link to nothing. */
export const deadLink = (place: Place): FoundProblem => problem('unreadable-file', place, { found: gone });

/** Words for an error of the file system; only those name a system call. Throws any other. */
export function unreadable(error: unknown, place: Place): FoundProblem {
  if (!(error instanceof Error && 'code' in error && 'syscall' in error)) throw error;
  const code = String(error.code);
  return problem('unreadable-file', place, { found: reasons[code] ?? code });
}
