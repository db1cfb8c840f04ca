// Solver: presolve. In: columns and rows, bounds. Out: a smaller program, and how its values read in the larger one (postsolve).
import { at } from '../../model/at.js';
import { feasibilityTolerance, isCovering } from './covering-rows.js';
import type { Column, Row } from './integer-program.js';
import type { ColumnBounds } from './propagate-bounds.js';

/** A program of the columns that are not fixed, each counted from its lower bound. */
export interface Presolved {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** What the lower bounds cost. */
  readonly baseCost: number;
  /** Values of its columns as values of all columns. */
  readonly postsolve: (values: ArrayLike<number>) => Float64Array;
}

/**
 * Fixed columns and redundant rows are removed, lower bounds moved to 0. Of covering rows each coefficient is tightened to the
 * right-hand side, as whole numbers allow.
 */
export function presolve(
  { columns, rows }: Pick<Presolved, 'columns' | 'rows'>,
  { lower, upper }: ColumnBounds,
): Presolved {
  const open = columns.flatMap((_, column) => (at(lower, column) < at(upper, column) ? [column] : []));
  const placeOf = new Int32Array(columns.length).fill(-1);
  for (const [place, column] of open.entries()) placeOf[column] = place;
  const kept = open.map((column): Column => {
    const { cost, integer } = at(columns, column);
    return { cost, integer, lower: 0, upper: at(upper, column) - at(lower, column) };
  });
  return {
    columns: kept,
    rows: rows.flatMap((row) => presolveRow(row, { lower, placeOf, kept })),
    baseCost: columns.reduce((sum, { cost }, column) => sum + cost * at(lower, column), 0),
    postsolve: (values) => {
      const all = lower.slice();
      for (const [place, column] of open.entries()) all[column] = at(all, column) + at(values, place);
      return all;
    },
  };
}

interface Presolving {
  readonly lower: Float64Array;
  /** Where each column stands in the smaller program; -1 where it is fixed. */
  readonly placeOf: Int32Array;
  readonly kept: readonly Column[];
}

function presolveRow({ lower, upper, terms }: Row, { lower: base, placeOf, kept }: Presolving): Row[] {
  let [given, least, most] = [0, 0, 0];
  const open: [column: number, coefficient: number][] = [];
  for (const [column, coefficient] of terms) {
    given += coefficient * at(base, column);
    const place = at(placeOf, column);
    if (place < 0) continue;
    const reach = coefficient * at(kept, place).upper;
    least += Math.min(0, reach);
    most += Math.max(0, reach);
    open.push([place, coefficient]);
  }
  const row = { lower: lower - given, upper: upper - given, terms: open };
  const isRedundant =
    row.lower <= least + feasibilityTolerance / 2 && row.upper >= most - feasibilityTolerance / 2;
  return isRedundant ? [] : [tightenCoefficients(row, kept)];
}

function tightenCoefficients(row: Row, columns: readonly Column[]): Row {
  if (!isCovering(row, columns)) return row;
  return {
    ...row,
    terms: row.terms.map(([column, coefficient]) => [column, Math.min(coefficient, row.lower)]),
  };
}
