// Solver: rounding cuts. In: columns and rows of a program. Out: rows that every whole solution keeps and fractions need not.
import type { Row } from './integer-program.js';

/** Nearer than this to a whole number counts as whole: a cut built on such a fraction would rest on rounding. */
const leastFraction = 1e-6;

/** A cut that is violated by less, whatever its scale, is not worth a row. */
export const leastViolation = 1e-3;

/** Ratios that are whole but for rounding. */
const rounding = 1e-9;

/**
 * For each covering row `sum of a x >= b` and each of its coefficients d, the mixed-integer rounding cut of the row divided by
 * d: with f the fraction of b/d, `sum of (floor(a/d) + min(1, fraction(a/d) / f)) x >= ceil(b/d)`. The Chvátal-Gomory cut, with
 * `ceil(a/d)` for each coefficient, is never tighter. Of 20 ml by pots of 16 it says what no fraction of a pot does: two.
 *
 * Source: Nemhauser & Wolsey 1990 (A recursive procedure to generate all cuts for 0-1 mixed integer programs).
 */
export function roundingCut(row: Row, values: Float64Array): Row | undefined {
  if (violationOf(row, values) < -leastViolation) return undefined;
  const divisors = new Set(row.terms.map(([, coefficient]) => coefficient));
  let [found, farthest]: [Row | undefined, number] = [undefined, leastViolation];
  for (const divisor of divisors) {
    const cut = roundRow(row, divisor);
    const violation = cut === undefined ? 0 : violationOf(cut, values);
    if (violation > farthest) [found, farthest] = [cut, violation];
  }
  return found;
}

/** How far values are from keeping a row that asks for so much, whatever its scale. */
export function violationOf({ lower, terms }: Row, values: Float64Array): number {
  let [missing, square] = [lower, 0];
  for (const [column, coefficient] of terms) {
    missing -= coefficient * (values[column] as number);
    square += coefficient ** 2;
  }
  return missing / Math.sqrt(square);
}

function roundRow({ lower, upper, terms }: Row, divisor: number): Row | undefined {
  const ratioOfLower = lower / divisor;
  const whole = Math.floor(ratioOfLower + rounding);
  const fraction = ratioOfLower - whole;
  if (fraction < leastFraction) return undefined;
  const rounded = terms.map(([column, coefficient]): readonly [number, number] => {
    const ratio = coefficient / divisor;
    const floor = Math.floor(ratio + rounding);
    return [column, floor + Math.min(1, Math.max(0, ratio - floor) / fraction)];
  });
  return { lower: whole + 1, upper, terms: rounded };
}
