// Solver: rows that whole numbers imply. In: columns and rows of a program. Out: more rows, which cut off fractions only.
import { isCover } from './covering-rows.js';
import type { IntegerProgram, Row } from './integer-program.js';

/** Nearer than this to a whole number counts as whole: a row built on such a fraction would rest on rounding. */
const leastFraction = 1e-6;

/** Ratios that are whole but for rounding. */
const rounding = 1e-9;

/**
 * For each row `sum of a x >= b` with a > 0 over whole x >= 0, and each of its coefficients d, the row that rounding
 * gives after dividing by d: with f the fraction of b/d, `sum of (floor(a/d) + min(1, fraction(a/d) / f)) x >= ceil(b/d)`.
 * Every whole solution keeps to it. Of 2 pots of 16 ml for 20 ml it says what no fraction of a pot does: two.
 *
 * Source: mixed-integer rounding, Nemhauser & Wolsey 1990 (A recursive procedure to generate all cuts for 0-1 mixed
 * integer programs); for one row it is Gomory's rounding with the fractions made the most of.
 */
export function roundRows({ columns, rows }: Pick<IntegerProgram, 'columns' | 'rows'>): Row[] {
  return rows.flatMap((row) => {
    if (!isCover(row, columns)) return [];
    const divisors = new Set(row.terms.map(([, coefficient]) => coefficient));
    return [...divisors].flatMap((divisor) => roundRow(row, divisor));
  });
}

function roundRow({ lower, upper, terms }: Row, divisor: number): Row[] {
  const share = lower / divisor;
  const whole = Math.floor(share + rounding);
  const fraction = share - whole;
  if (fraction < leastFraction) return [];
  const rounded = terms.map(([column, coefficient]): readonly [number, number] => {
    const ratio = coefficient / divisor;
    const floor = Math.floor(ratio + rounding);
    return [column, floor + Math.min(1, Math.max(0, ratio - floor) / fraction)];
  });
  return [{ lower: whole + 1, upper, terms: rounded }];
}
