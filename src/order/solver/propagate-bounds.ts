// Solver: what rows leave to each column. In: rows, bounds of whole columns. Out: nearer bounds, or that nothing fits.
import type { SparseRow } from './sparse-rows.js';

/** Bounds of the columns, moved in place. */
export interface ColumnBounds {
  readonly lower: Float64Array;
  readonly upper: Float64Array;
}

/** What rounding may have taken from a sum or a whole number; rows are scaled so that their coefficients are about 1. */
const tolerance = 1e-6;

/**
 * Moves the bounds of whole columns to where each row can still be kept if all its other columns help as much as they can: with a
 * shop closed, nothing of it is left to buy. Each row once, in their order. Gives how many rows still ask for anything;
 * undefined where one can't be kept at all.
 */
export function closeBounds(
  rows: readonly SparseRow[],
  areWhole: readonly boolean[],
  bounds: ColumnBounds,
): number | undefined {
  const { lower, upper } = bounds;
  let asking = 0;
  for (const row of rows) {
    const least = sumOf(row, lower, upper);
    const most = sumOf(row, upper, lower);
    if (most < row.lower - tolerance || least > row.upper + tolerance) return undefined;
    if (row.lower <= least && row.upper >= most) continue;
    asking++;
    // What only rounding took must not be divided by a small coefficient.
    const [under, over] = [Math.max(0, most - row.lower), Math.max(0, row.upper - least)];
    if (!closeRow(row, areWhole, bounds, under, over)) return undefined;
  }
  return asking;
}

/** What a row comes to with each column at one bound where its coefficient is positive, at the other where it is negative. */
function sumOf(
  { places, coefficients }: SparseRow,
  ofPositive: Float64Array,
  ofNegative: Float64Array,
): number {
  let sum = 0;
  for (let term = 0; term < places.length; term++) {
    const coefficient = coefficients[term] ?? 0;
    sum += coefficient * ((coefficient > 0 ? ofPositive : ofNegative)[places[term] ?? 0] ?? 0);
  }
  return sum;
}

/** What each column of a row may give less than its most (`under`) or more than its least (`over`). False where nothing is left of one. */
function closeRow(
  { places, coefficients }: SparseRow,
  areWhole: readonly boolean[],
  bounds: ColumnBounds,
  under: number,
  over: number,
): boolean {
  for (let term = 0; term < places.length; term++) {
    const place = places[term] ?? 0;
    const coefficient = coefficients[term] ?? 0;
    if (coefficient === 0 || !areWhole[place]) continue;
    const isOpen =
      coefficient > 0
        ? closeColumn(bounds, place, under / coefficient, over / coefficient)
        : closeColumn(bounds, place, -over / coefficient, -under / coefficient);
    if (!isOpen) return false;
  }
  return true;
}

/** How far a column may stand from its upper and from its lower bound. False where nothing is between them then. */
function closeColumn(
  { lower, upper }: ColumnBounds,
  place: number,
  fromHigh: number,
  fromLow: number,
): boolean {
  const low = lower[place] ?? 0;
  const high = upper[place] ?? 0;
  if (fromHigh < high - low) lower[place] = Math.max(low, Math.ceil(high - fromHigh - tolerance));
  if (fromLow < high - low) upper[place] = Math.min(high, Math.floor(low + fromLow + tolerance));
  return (lower[place] ?? 0) <= (upper[place] ?? 0);
}
