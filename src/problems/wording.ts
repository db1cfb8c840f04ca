// Problems: how the words of a code stand in the catalogue. In: nothing. Out: the type alone.
import type { Severity } from '../model/problem.js';

/** How a code reads: `{found}` and `{expected}` are filled in. */
export interface Wording {
  readonly severity: Severity;
  /** What is wrong, without a full stop. */
  readonly says: string;
  /** What to do: a whole sentence. */
  readonly hint: string;
}
