// Readers: why a workbook cannot be read. Thrown and caught within the readers only.

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

/** `found` and `most` in words: `300 MB unpacked`, `256 MB`. */
export const tooLarge = (found: string, most: string): WorkbookError =>
  new WorkbookError('too-large-file', found, most);
