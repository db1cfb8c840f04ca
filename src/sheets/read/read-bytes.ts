// Readers: the bytes of one file. In: its path and place. Out: bytes, or the problem of opening it.
import { readFile, stat } from 'node:fs/promises';
import type { Place } from '../../model/problem.js';
import { problem } from '../../problems/catalogue.js';
import type { FoundProblem } from './grid.js';

/** Full spreadsheets of a million rows stay below it. */
const MOST_MB = 200;
const MB = 2 ** 20;

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'it points to something that is gone',
  EACCES: 'no permission',
  EPERM: 'no permission',
  EBUSY: 'another program holds it',
  EISDIR: 'it is a folder',
};

export type ReadBytes = { readonly bytes: Buffer } | { readonly trouble: FoundProblem };

/** Reads a whole file of up to 200 MB. What the system refuses is a problem; nothing is thrown. */
export async function readBytes(path: string, place: Place): Promise<ReadBytes> {
  try {
    const { size } = await stat(path);
    if (size > MOST_MB * MB) {
      const details = { found: `${Math.ceil(size / MB)} MB`, expected: `${MOST_MB} MB` };
      return { trouble: problem('too-large-file', place, details) };
    }
    return { bytes: await readFile(path) };
  } catch (error) {
    return { trouble: unreadable(error, place) };
  }
}

/** Words for an error of the file system; only those name a system call. Throws any other. */
export function unreadable(error: unknown, place: Place): FoundProblem {
  if (!(error instanceof Error && 'code' in error && 'syscall' in error)) throw error;
  const code = String(error.code);
  return problem('unreadable-file', place, { found: reasons[code] ?? code });
}
