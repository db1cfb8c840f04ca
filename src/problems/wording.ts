// Problems: how the words of a code stand in the catalogue. In: what is wrong, what to do. Out: both, by how bad it is.
import type { Severity } from '../model/problem.js';

/** How a code reads: `{found}` and `{expected}` are filled in. */
export interface Wording {
  readonly severity: Severity;
  /** What is wrong, without a full stop. */
  readonly says: string;
  /** What to do: a whole sentence. */
  readonly hint: string;
}

export const error = (says: string, hint: string): Wording => ({ severity: 'error', says, hint });

/** The plan is made all the same. */
export const warning = (says: string, hint: string): Wording => ({ severity: 'warning', says, hint });
