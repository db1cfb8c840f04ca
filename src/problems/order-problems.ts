// Problems: sheet and row order, and the cap on repeats. In: problems in any order. Out: the same, sorted; counts.

import { groupBy } from '../model/group-by.js';
import type { Problem } from '../model/problem.js';
import { sheetNames } from '../model/words.js';

const sheetRank = (of: Problem): number => (of.sheet === undefined ? -1 : sheetNames.indexOf(of.sheet));

/** Of two cells in one row, the address with more letters stands further right; without a cell comes first. */
function byColumn({ cell: a = '' }: Problem, { cell: b = '' }: Problem): number {
  if (a.length !== b.length) return a.length - b.length;
  return a === b ? 0 : a < b ? -1 : 1;
}

/**
 * By sheet, then file (a workbook's log may stand in two, in the order in which they are first met), then row, then
 * column, then place in the list; the input is left alone.
 */
export function orderProblems<P extends Problem>(problems: readonly P[]): P[] {
  const files = new Map<string, number>();
  for (const { file } of problems) if (!files.has(file)) files.set(file, files.size);
  const fileRank = ({ file }: Problem): number => files.get(file) ?? 0;
  return problems
    .map((problem, index) => ({ problem, index }))
    .sort(
      (a, b) =>
        sheetRank(a.problem) - sheetRank(b.problem) ||
        fileRank(a.problem) - fileRank(b.problem) ||
        (a.problem.row ?? 0) - (b.problem.row ?? 0) ||
        byColumn(a.problem, b.problem) ||
        a.index - b.index,
    )
    .map(({ problem }) => problem);
}

/** Problems kept of one run: sheets that have more are wrong as a whole, and a million would fill the memory. */
export const mostProblems = 100_000;

/** Problems of one code in one column of one sheet, of which the first `most` are shown. */
export interface ProblemGroup<P extends Problem = Problem> {
  readonly shown: readonly P[];
  /** How many more of the same there are: "and 37 more". */
  readonly more: number;
}

/** Groups repeats (same code, sheet and column), keeping the order of each group's first problem. */
export function capRepeats<P extends Problem>(problems: readonly P[], most = 5): ProblemGroup<P>[] {
  const groups = groupBy(problems, ({ code, file, sheet = '', column = '' }) =>
    [code, file, sheet, column].join('\n'),
  );
  return [...groups.values()].map((of) => ({
    shown: of.slice(0, most),
    more: Math.max(0, of.length - most),
  }));
}
