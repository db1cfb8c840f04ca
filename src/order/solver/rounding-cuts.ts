// Solver: rounding cuts. In: a covering row. Out: rows that every whole solution keeps and fractions need not.
import type { Row } from './integer-program.js';

/** Nearer than this to a whole number counts as whole: a cut built on such a fraction would rest on rounding. */
const leastFraction = 1e-6;

/** Ratios that are whole but for rounding. */
const rounding = 1e-9;

/**
 * For a covering row `sum of a x >= b` and each of its coefficients d, the mixed-integer rounding cut of the row divided by
 * d: with f the fraction of b/d, `sum of (floor(a/d) + min(1, fraction(a/d) / f)) x >= ceil(b/d)`. The Chvátal-Gomory cut, with
 * `ceil(a/d)` for each coefficient, is never tighter. Of 20 ml by pots of 16 it says what no fraction of a pot does: two.
 *
 * Source: Nemhauser & Wolsey 1990 (A recursive procedure to generate all cuts for 0-1 mixed integer programs).
 */
export function roundingCuts(row: Row): Row[] {
  const divisors = new Set(row.terms.map(([, coefficient]) => coefficient));
  return [...divisors].flatMap((divisor) => roundRow(row, divisor));
}

function roundRow({ lower, upper, terms }: Row, divisor: number): Row[] {
  const ratioOfLower = lower / divisor;
  const whole = Math.floor(ratioOfLower + rounding);
  const fraction = ratioOfLower - whole;
  if (fraction < leastFraction) return [];
  const rounded = terms.map(([column, coefficient]): readonly [number, number] => {
    const ratio = coefficient / divisor;
    const floor = Math.floor(ratio + rounding);
    return [column, floor + Math.min(1, Math.max(0, ratio - floor) / fraction)];
  });
  return [{ lower: whole + 1, upper, terms: rounded }];
}
