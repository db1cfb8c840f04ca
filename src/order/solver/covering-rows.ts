// Solver: rows that ask for so much of what is whole. In: columns, rows. Out: which rows are of that kind.
import type { Column, Row } from './integer-program.js';

/** A row missed by less counts as kept: what only rounding left of it must not ask for one more of anything. */
export const rowsWithin = 1e-6;

/** Whether a row is `sum of a x >= b` with a > 0 and b > 0 over whole x >= 0. */
export function isCover({ lower, upper, terms }: Row, columns: readonly Column[]): boolean {
  if (lower <= 0 || upper !== Number.POSITIVE_INFINITY) return false;
  return terms.every(([column, coefficient]) => {
    const { integer, lower: least } = columns[column] ?? { integer: false, lower: 0 };
    return coefficient > 0 && integer && least >= 0;
  });
}

/**
 * Covers that ask for half as much less as may be missing in the end: a need that so many pots meet but for the rounding of long
 * sums is met by them in every relaxation, and what meets it there is found to meet it.
 */
export const loosenCovers = (rows: readonly Row[], columns: readonly Column[]): Row[] =>
  rows.map((row) => (isCover(row, columns) ? { ...row, lower: row.lower - rowsWithin / 2 } : row));
