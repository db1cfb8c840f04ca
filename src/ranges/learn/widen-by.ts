// Ranges: rows that contradict one another. In: what is told of each row once all have taught, the rows with their errors.
// Out: how many times wider than thought their errors are.
import type { Measured } from './solve-normal.js';

/** Rows lie farther apart than that by chance in less than one log of a hundred. */
const deviationsApart = 3;

/**
 * 1 where the rows agree as well as their errors let expect; else the root of chi squared over its degrees of freedom, by
 * which all errors are multiplied: something changed between the rows that nobody wrote down, and ranges must not
 * narrow as if nothing had. A single row contradicts nobody.
 *
 * Source: Birge 1932 (The calculation of errors by the method of least squares), as averages of disagreeing measurements
 * are commonly published; from memory. The bound: chi squared of n degrees has mean n and variance 2 n.
 */
export function widenBy(told: readonly number[], rows: readonly Measured[]): number {
  const free = rows.length - 1;
  const chiSquared = rows.reduce(
    (sum, { value, deviation }, at) => sum + ((value - (told[at] ?? 0)) / deviation) ** 2,
    0,
  );
  if (free < 1 || chiSquared <= free + deviationsApart * Math.sqrt(2 * free)) return 1;
  return Math.sqrt(chiSquared / free);
}
