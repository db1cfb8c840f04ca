// Solver: bound propagation. In: rows, bounds of the columns. Out: tighter bounds of whole columns, or that nothing is feasible.
import { indexAt, numberAt } from '../../model/at.js';
import type { SparseRow } from './sparse-rows.js';

/** Bounds of the columns, moved in place. */
export interface ColumnBounds {
  readonly lower: Float64Array;
  readonly upper: Float64Array;
}

/** What rounding may have taken from a sum or a whole number; rows are scaled so that their coefficients are about 1. */
const tolerance = 1e-6;

/**
 * Moves the bounds of whole columns to where each row can still be kept with all its other columns at the bound that helps it
 * most: with a shop closed, nothing of it is left to buy. Each row once, in their order. Gives how many rows are not
 * redundant; undefined where one can't be kept at all.
 *
 * Source: the least and the most activity of a row, as in Savelsbergh 1994 (Preprocessing and probing techniques for mixed
 * integer programming problems), from memory.
 */
export function propagateBounds(
  rows: readonly SparseRow[],
  areWhole: readonly boolean[],
  bounds: ColumnBounds,
): number | undefined {
  const { lower, upper } = bounds;
  let binding = 0;
  for (const row of rows) {
    const least = activity(row, lower, upper);
    const most = activity(row, upper, lower);
    if (most < row.lower - tolerance || least > row.upper + tolerance) return undefined;
    if (row.lower <= least && row.upper >= most) continue;
    binding++;
    // What only rounding took must not be divided by a small coefficient.
    const [under, over] = [Math.max(0, most - row.lower), Math.max(0, row.upper - least)];
    if (!tightenColumns(row, areWhole, bounds, under, over)) return undefined;
  }
  return binding;
}

/** A row's sum with each column at one bound where its coefficient is positive, at the other where it is negative. */
function activity(
  { places, coefficients }: SparseRow,
  ofPositive: Float64Array,
  ofNegative: Float64Array,
): number {
  let sum = 0;
  for (let term = 0; term < places.length; term++) {
    const coefficient = numberAt(coefficients, term);
    sum += coefficient * numberAt(coefficient > 0 ? ofPositive : ofNegative, indexAt(places, term));
  }
  return sum;
}

/**
 * Each column of a row may take no more than `under` off the row's most activity, nor add more than `over` to its least. False
 * where that leaves one no value.
 */
function tightenColumns(
  { places, coefficients }: SparseRow,
  areWhole: readonly boolean[],
  bounds: ColumnBounds,
  under: number,
  over: number,
): boolean {
  for (let term = 0; term < places.length; term++) {
    const place = indexAt(places, term);
    const coefficient = numberAt(coefficients, term);
    if (coefficient === 0 || !areWhole[place]) continue;
    const isOpen =
      coefficient > 0
        ? tightenColumn(bounds, place, under / coefficient, over / coefficient)
        : tightenColumn(bounds, place, -over / coefficient, -under / coefficient);
    if (!isOpen) return false;
  }
  return true;
}

/** How far a column may stand from its upper and from its lower bound. False where nothing is between them then. */
function tightenColumn(
  { lower, upper }: ColumnBounds,
  place: number,
  fromHigh: number,
  fromLow: number,
): boolean {
  const low = numberAt(lower, place);
  const high = numberAt(upper, place);
  if (fromHigh < high - low) lower[place] = Math.max(low, Math.ceil(high - fromHigh - tolerance));
  if (fromLow < high - low) upper[place] = Math.min(high, Math.floor(low + fromLow + tolerance));
  return numberAt(lower, place) <= numberAt(upper, place);
}
