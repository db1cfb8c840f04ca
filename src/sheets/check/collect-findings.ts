// Checks: what the checks of one run gather beside the rows. In: problems and blanks. Out: both as lists.
import type { Problem } from '../../model/problem.js';
import type { DefaultUsed } from '../../model/sheets.js';
import type { SheetName } from '../../model/words.js';
import type { ProblemCode } from '../../problems/catalogue.js';
import { mostProblems } from '../../problems/order-problems.js';

export interface Findings {
  readonly problems: Problem<ProblemCode>[];
  readonly defaults: DefaultUsed[];
  readonly leftAlone: LeftAlone[];
  readonly readAs: ReadAs[];
}

/** Columns of one sheet that are read though they are not called by their own name. */
export interface ReadAs {
  readonly file: string;
  readonly sheet: SheetName;
  /** As a spreadsheet counts. */
  readonly headerRow: number;
  /** One or more: the header as written, and the column that it is taken for. */
  readonly columns: readonly (readonly [header: string, column: string])[];
}

/** Columns of one sheet that are the painter's own; those that say that they are notes are not among them. */
export interface LeftAlone {
  readonly file: string;
  readonly sheet: SheetName;
  /** As written, one or more. */
  readonly headers: readonly string[];
}

/** Nothing found yet. */
export function makeFindings(): Findings {
  return { problems: [], defaults: [], leftAlone: [], readAs: [] };
}

/** Beyond the most problems so many errors are kept still, so that none of a later sheet is missed for the warnings of an earlier one. */
const mostErrorsBeyond = 1000;

/** Keeps a problem; the last ones of an endless number are left out. */
export function tell({ problems }: Findings, one: Problem<ProblemCode>): void {
  const most = one.severity === 'error' ? mostProblems + mostErrorsBeyond : mostProblems;
  if (problems.length < most) problems.push(one);
}

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

/** Records columns that nothing is read from; of none there is nothing to say. */
export function tellLeftAlone(
  { leftAlone }: Findings,
  { file, sheet }: Pick<LeftAlone, 'file' | 'sheet'>,
  headers: readonly string[],
): void {
  if (headers.length > 0) leftAlone.push({ file, sheet, headers });
}

/** Records how a sheet was read; of own names there is nothing to say. */
export function tellReadAs({ readAs }: Findings, one: ReadAs): void {
  if (one.columns.length > 0) readAs.push(one);
}
