// Solver: rows as arrays of numbers. In: a row of a program. Out: the same row, scaled, to be gone through fast.
import type { Row } from './integer-program.js';

export interface SparseRow {
  readonly lower: number;
  readonly upper: number;
  /** Places of columns, and the coefficient of each. */
  readonly places: Int32Array;
  readonly coefficients: Float64Array;
}

/** The largest coefficient brought to about 1, by a power of two, which rounds nothing. */
export function scaleRow({ lower, upper, terms }: Row): SparseRow {
  const largest = terms.reduce((most, [, coefficient]) => Math.max(most, Math.abs(coefficient)), 0);
  const scale = largest === 0 ? 1 : 2 ** -Math.round(Math.log2(largest));
  return {
    lower: lower * scale,
    upper: upper * scale,
    places: Int32Array.from(terms, ([column]) => column),
    coefficients: Float64Array.from(terms, ([, coefficient]) => coefficient * scale),
  };
}
