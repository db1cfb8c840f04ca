// Ranges: rows that contradict one another. In: what is told of each row once all have taught, the rows with their errors.
// Out: how many times wider than thought their errors are.
import { at } from '../../model/at.js';
import { type Measured, whiten } from './whiten.js';

/** The 99 % quantile of the standard normal. */
const z99 = 2.3263479;

/**
 * Chi squared of so many degrees of freedom passes this by chance once in a hundred cases: the cube of Wilson and Hilferty
 * 1931, `n (1 - 2 / 9n + z sqrt(2 / 9n))^3` (Abramowitz and Stegun 26.4.17), within a hundredth of the tables from one degree on.
 */
export function rarelyPassed(degrees: number): number {
  const part = 2 / (9 * degrees);
  return degrees * (1 - part + z99 * Math.sqrt(part)) ** 3;
}

/** What is told of each row once all have taught, and how many degrees of freedom that took. */
interface Told {
  readonly values: readonly number[];
  /** By how much the variances of the deviates, 1 each before, have shrunk in all. */
  readonly learned: number;
}

/**
 * 1 where the rows agree as well as their errors let expect, which fails by chance in one log of a hundred; else the root of
 * chi squared over its degrees of freedom, by which all errors are multiplied: something changed between the rows that
 * nobody wrote down, and ranges must not narrow as if nothing had. A single row contradicts nobody.
 *
 * Degrees are the rows less what they taught (the trace of the fit). One is left at the least: rows each about other work
 * have hardly anything to contradict one another in.
 *
 * Source: Birge 1932 (The calculation of errors by the method of least squares), as averages of disagreeing measurements
 * are commonly published; from memory.
 */
export function widenBy({ values, learned }: Told, rows: readonly Measured[]): number {
  const degrees = Math.max(1, rows.length - learned);
  const residuals = rows.map(({ value }, row) => [value - at(values, row)]);
  const chiSquared = whiten(rows, residuals).reduce((sum, [residual = 0]) => sum + residual ** 2, 0);
  if (rows.length < 2 || chiSquared <= rarelyPassed(degrees)) return 1;
  return Math.sqrt(chiSquared / degrees);
}
