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
  let largest = 0;
  for (const [, coefficient] of terms) largest = Math.max(largest, Math.abs(coefficient));
  const scale = largest === 0 ? 1 : 2 ** -Math.round(Math.log2(largest));
  const places = new Int32Array(terms.length);
  const coefficients = new Float64Array(terms.length);
  for (const [term, [column, coefficient]] of terms.entries()) {
    places[term] = column;
    coefficients[term] = coefficient * scale;
  }
  return { lower: lower * scale, upper: upper * scale, places, coefficients };
}
