// Solver: what bounds leave open of a program. In: columns and rows, bounds. Out: a smaller program, and how its values read in
// the larger one.

import { isCover, rowsWithin } from './covering-rows.js';
import type { Column, Row } from './integer-program.js';
import type { ColumnBounds } from './propagate-bounds.js';

/** A program of the columns that are still open, each counted from its lower bound. */
export interface Shrunk {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** What the lower bounds cost. */
  readonly baseCost: number;
  /** Values of its columns as values of all columns. */
  readonly lift: (values: ArrayLike<number>) => Float64Array;
}

/**
 * Columns whose bounds meet are left out, and so are rows that hold whatever the others do. What the lower bounds give is taken
 * from each row, and a coefficient above what is then missing is cut to it, as whole numbers allow.
 */
export function shrinkProgram(
  { columns, rows }: Pick<Shrunk, 'columns' | 'rows'>,
  { lower, upper }: ColumnBounds,
): Shrunk {
  const open = columns.flatMap((_, place) => ((lower[place] ?? 0) < (upper[place] ?? 0) ? [place] : []));
  const placeOf = new Int32Array(columns.length).fill(-1);
  for (const [at, place] of open.entries()) placeOf[place] = at;
  const kept = open.map((place): Column => {
    const { cost, integer } = columns[place] as Column;
    return { cost, integer, lower: 0, upper: (upper[place] ?? 0) - (lower[place] ?? 0) };
  });
  return {
    columns: kept,
    rows: rows.flatMap((row) => shrinkRow(row, { lower, placeOf, kept })),
    baseCost: columns.reduce((sum, { cost }, place) => sum + cost * (lower[place] ?? 0), 0),
    lift: (values) => {
      const all = lower.slice();
      for (const [at, place] of open.entries()) all[place] = (all[place] ?? 0) + (values[at] ?? 0);
      return all;
    },
  };
}

interface Shrinking {
  readonly lower: Float64Array;
  /** Where each column stands in the smaller program; -1 where it is left out. */
  readonly placeOf: Int32Array;
  readonly kept: readonly Column[];
}

function shrinkRow({ lower, upper, terms }: Row, { lower: base, placeOf, kept }: Shrinking): Row[] {
  let [given, least, most] = [0, 0, 0];
  const open: [column: number, coefficient: number][] = [];
  for (const [column, coefficient] of terms) {
    given += coefficient * (base[column] ?? 0);
    const place = placeOf[column] ?? -1;
    if (place < 0) continue;
    const reach = coefficient * (kept[place]?.upper ?? 0);
    least += Math.min(0, reach);
    most += Math.max(0, reach);
    open.push([place, coefficient]);
  }
  const row = { lower: lower - given, upper: upper - given, terms: open };
  if (row.lower <= least + rowsWithin / 2 && row.upper >= most - rowsWithin / 2) return [];
  return [cutRow(row, kept)];
}

/** Of a row that asks for so much of what is whole, no coefficient need be larger than that. */
function cutRow(row: Row, columns: readonly Column[]): Row {
  if (!isCover(row, columns)) return row;
  return {
    ...row,
    terms: row.terms.map(([column, coefficient]) => [column, Math.min(coefficient, row.lower)]),
  };
}
