// Checks: what the checks of one run gather beside the rows. In: problems and blanks. Out: both as lists.
import type { Problem } from '../../model/problem.js';
import type { DefaultUsed } from '../../model/sheets.js';
import type { SheetName } from '../../model/words.js';
import type { ProblemCode } from '../../problems/catalogue.js';

export interface Findings {
  readonly problems: Problem<ProblemCode>[];
  readonly defaults: DefaultUsed[];
}

/** Nothing found yet. */
export function makeFindings(): Findings {
  return { problems: [], defaults: [] };
}

/** Records that blanks took their default; of no rows there is nothing to say. */
export function useDefault(
  findings: Findings,
  used: {
    readonly sheet: SheetName;
    readonly column: string;
    readonly rows: number;
    readonly meaning: string;
  },
): void {
  if (used.rows > 0) findings.defaults.push(used);
}
