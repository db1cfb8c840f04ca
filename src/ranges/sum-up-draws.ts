// Ranges: what many draws say of causes. In: columns of draws. Out: shares of spread.

/** A column, its mean, and the sum of the squared distances from it; 0 where nothing but rounding sets the draws apart. */
export interface Spread {
  readonly column: Float64Array;
  readonly mean: number;
  readonly squares: number;
}

/** A deviation of less than this share of the mean is rounding: sums of shares, products over means. */
const leastDeviation = 1e-9;

/** Measures a column once for all that it is compared with. */
export function spreadOf(column: Float64Array): Spread {
  let sum = 0;
  for (let draw = 0; draw < column.length; draw++) sum += column[draw] as number;
  const mean = column.length === 0 ? 0 : sum / column.length;
  let squares = 0;
  for (let draw = 0; draw < column.length; draw++) squares += ((column[draw] as number) - mean) ** 2;
  const varies = squares > column.length * (leastDeviation * mean) ** 2;
  return { column, mean, squares: varies ? squares : 0 };
}

/**
 * The share (0 to 1) of the variance of a result that a factor causes by itself: their squared correlation. That is the
 * first-order index of Sobol 1993 where the result goes in proportion with the factor, as a need does with film, area and
 * leftover, and with the inverse of transfer. 0 where either never varies.
 */
export function shareOfSpread(factor: Spread, result: Spread): number {
  if (factor.squares === 0 || result.squares === 0) return 0;
  let products = 0;
  for (let draw = 0; draw < result.column.length; draw++) {
    products +=
      ((factor.column[draw] as number) - factor.mean) * ((result.column[draw] as number) - result.mean);
  }
  return Math.min(1, (products / factor.squares) * (products / result.squares));
}
