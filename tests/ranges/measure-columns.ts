// Ranges tests: what a column of draws says of itself. In: numbers. Out: moments, correlation, distance from a distribution.

export const meanOf = (column: ArrayLike<number>): number =>
  Array.from(column).reduce((sum, value) => sum + value, 0) / column.length;

/** Mean of a power of the distance from the mean. */
export function momentOf(column: ArrayLike<number>, power: number): number {
  const mean = meanOf(column);
  return meanOf(Array.from(column, (value) => (value - mean) ** power));
}

export const deviationOf = (column: ArrayLike<number>): number => Math.sqrt(momentOf(column, 2));

export function correlationOf(one: ArrayLike<number>, other: ArrayLike<number>): number {
  const [meanOne, meanOther] = [meanOf(one), meanOf(other)];
  const both = Array.from(one, (value, at) => (value - meanOne) * ((other[at] ?? 0) - meanOther));
  return meanOf(both) / (deviationOf(one) * deviationOf(other));
}

/** The greatest distance between the column's steps and a distribution (Kolmogorov 1933). */
export function distanceFrom(column: ArrayLike<number>, distribution: (value: number) => number): number {
  const rising = Float64Array.from(column).sort();
  return rising.reduce((most, value, at) => {
    const expected = distribution(value);
    const [before, after] = [at / rising.length, (at + 1) / rising.length];
    return Math.max(most, Math.abs(expected - before), Math.abs(after - expected));
  }, 0);
}

/** The normal distribution function, error under 7.5e-8. Abramowitz & Stegun 1964, 26.2.17. */
export function normalDistribution(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const polynomial =
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * polynomial;
  return z < 0 ? tail : 1 - tail;
}
