// Command line: faults of the file system in plain words. In: an error and the folder. Out: a UsageError where the
// caller can mend it, else the error itself.
import { UsageError } from './end-run.js';

const words: Readonly<Record<string, string>> = {
  EACCES: 'you may not write there',
  EPERM: 'you may not write there, or another program holds the file',
  EBUSY: 'another program holds the file',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  EDQUOT: 'your share of the disk is full',
  ENOTDIR: 'part of the path is a file, not a folder',
  EEXIST: 'a file of that name is in the way',
  EISDIR: 'a folder of that name is in the way',
  EFBIG: 'a file would become larger than is allowed there',
  EIO: 'the disk has a fault',
  EMFILE: 'too many files are open',
  ENAMETOOLONG: 'the name is too long',
  ENOENT: 'part of the path is not there, or a link that leads nowhere',
  ELOOP: 'the links on the way go round in a circle',
  EINVAL: 'that is not a name for a folder',
};

/** Says which folder, why, and that nothing was left half done. */
export function nameFault(error: unknown, folder: string): unknown {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  const why = words[code];
  return why === undefined ? error : new UsageError(`Cannot write to ${folder}: ${why}.`);
}
