// Readers: why a workbook cannot be read. Thrown and caught within the readers only.
import { UnpackError } from '../../unpack/unpack-error.js';

/** Each is a problem code. */
type WorkbookFault = 'broken-workbook' | 'locked-workbook' | 'not-a-workbook' | 'too-large-file';

export class WorkbookError extends Error {
  constructor(
    readonly fault: WorkbookFault,
    reason: string,
    /** What would still have been read, in words; for a workbook that is too large. */
    readonly most = '',
  ) {
    super(reason);
  }
}

const faults = {
  broken: 'broken-workbook',
  locked: 'locked-workbook',
  'too large': 'too-large-file',
} as const;

/** An error of a workbook, or of the package that it is; undefined for any other. */
export function workbookErrorOf(error: unknown): WorkbookError | undefined {
  if (error instanceof UnpackError) return new WorkbookError(faults[error.fault], error.message, error.most);
  return error instanceof WorkbookError ? error : undefined;
}

/** `found` and `most` in words: `300 MB unpacked`, `256 MB`. */
export const tooLarge = (found: string, most: string): WorkbookError =>
  new WorkbookError('too-large-file', found, most);
