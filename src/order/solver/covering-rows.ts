// Solver: covering rows, which ask for so much of what is whole. In: columns, rows. Out: which rows are of that kind.
import { at } from '../../model/at.js';
import type { Column, Row } from './integer-program.js';

/** A row missed by less is feasible: what only rounding left of it must not ask for one more of anything. */
export const feasibilityTolerance = 1e-6;

/** Whether a row is `sum of a x >= b` with a > 0 and b > 0 over whole x >= 0. */
export function isCovering({ lower, upper, terms }: Row, columns: readonly Column[]): boolean {
  if (lower <= 0 || upper !== Number.POSITIVE_INFINITY) return false;
  return terms.every(([column, coefficient]) => {
    const { integer, lower: least } = at(columns, column);
    return coefficient > 0 && integer && least >= 0;
  });
}

/**
 * Covering rows that ask for half the tolerance less: a need that so many pots meet but for the rounding of long sums is met by
 * them in every relaxation, and what meets it there is found to be feasible.
 */
export const loosenCoveringRows = (rows: readonly Row[], columns: readonly Column[]): Row[] =>
  rows.map((row) =>
    isCovering(row, columns) ? { ...row, lower: row.lower - feasibilityTolerance / 2 } : row,
  );
