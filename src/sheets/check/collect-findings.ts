// Checks: what the checks of one run gather beside the rows. In: problems and blanks. Out: both as lists.
import type { Problem } from '../../model/problem.js';
import type { DefaultUsed, SheetRead } from '../../model/sheets.js';
import type { SheetName } from '../../model/words.js';
import type { ProblemCode } from '../../problems/catalogue.js';
import { mostProblems } from '../../problems/order-problems.js';

export interface Findings {
  readonly problems: Problem<ProblemCode>[];
  readonly defaults: DefaultUsed[];
  readonly read: SheetRead[];
}

/** Nothing found yet. */
export function makeFindings(): Findings {
  return { problems: [], defaults: [], read: [] };
}

/** Beyond the most problems so many errors are kept still, so that none of a later sheet is missed for the warnings of an earlier one. */
const mostErrorsBeyond = 1000;

/** Keeps a problem; the last ones of an endless number are left out. */
export function tell({ problems }: Findings, one: Problem<ProblemCode>): void {
  const most = one.severity === 'error' ? mostProblems + mostErrorsBeyond : mostProblems;
  if (problems.length < most) problems.push(one);
}

/** Whether any of the sheets has an error by now: then what else is said of it may only repeat that. */
export const hasErrors = ({ problems }: Findings, ...sheets: readonly SheetName[]): boolean =>
  problems.some(({ severity, sheet }) => severity === 'error' && sheets.some((one) => one === sheet));

/** Records that blanks took their default, beside those of the same column before; of no rows there is nothing to say. */
export function useDefault(
  findings: Findings,
  used: {
    readonly sheet: SheetName;
    readonly column: string;
    readonly rows: number;
    readonly meaning: string;
  },
): void {
  if (used.rows === 0) return;
  const { defaults } = findings;
  const at = defaults.findIndex(({ sheet, column }) => sheet === used.sheet && column === used.column);
  if (at === -1) defaults.push(used);
  else defaults[at] = { ...used, rows: used.rows + (defaults[at]?.rows ?? 0) };
}
