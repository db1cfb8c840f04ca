// Unpacking: why a package cannot be read. Thrown here, caught by whoever reads a kind of package.

export class UnpackError extends Error {
  constructor(
    readonly fault: 'broken' | 'locked' | 'too large',
    reason: string,
    /** What would still have been read, in words; for a package that is too large. */
    readonly most = '',
  ) {
    super(reason);
  }
}
