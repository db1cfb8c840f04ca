// Surface: why a model file cannot be measured. Thrown within this stage, caught by whoever asked.

export class ModelError extends Error {
  constructor(
    readonly fault: 'broken' | 'too large',
    /** In words, as the end of a sentence: `it is cut off`, or for what is too large what it holds: `5,000,000 triangles`. */
    reason: string,
    /** What would still have been read, in words; for a file that is too large. */
    readonly most = '',
  ) {
    super(reason);
  }
}
