// Solver: what a search has at hand of one program. In: columns, rows. Out: its relaxation with rows that bring it near, and
// what a branch of it leaves open.

import { isCover } from './covering-rows.js';
import type { Column, Row } from './integer-program.js';
import { type Shrunk, shrinkProgram } from './presolve.js';
import { type ColumnBounds, closeBounds } from './propagate-bounds.js';
import { Relaxation, type Relaxed } from './relaxation.js';
import { roundRows } from './rounding-cuts.js';
import { type SparseRow, scaleRow } from './sparse-rows.js';
import { priceRows } from './subadditive-cuts.js';
import type { Work } from './work.js';

/** A program that is searched: the whole one, or what a branch of it leaves open. */
export interface Part extends Shrunk {
  /** Its rows, without those that are implied. */
  readonly sparse: readonly SparseRow[];
  /** Terms of all these rows together. */
  readonly terms: number;
  readonly areWhole: readonly boolean[];
  /** Of several fractions the heaviest is split first. */
  readonly weights: Float64Array;
  readonly relaxation: Relaxation;
}

/** Opening a part goes through its terms about so often. */
const timesToOpen = 10;

/** A branch copies its columns' bounds, weighs them and waits in the queue: about so much for each. */
const timesToBranch = 20;

/** With fewer columns a program is as soon searched as made smaller. */
const leastColumns = 50;

export function openPart(shrunk: Shrunk, work: Work): Part {
  const { columns, rows } = shrunk;
  const sparse = rows.map(scaleRow);
  const implied = [...roundRows(shrunk), ...priceRows(shrunk)].map(scaleRow);
  const terms = sparse.reduce((sum, { places }) => sum + places.length, 0);
  work.touched += timesToOpen * terms;
  return {
    ...shrunk,
    sparse,
    terms,
    areWhole: columns.map(({ integer }) => integer),
    weights: weighColumns(columns, rows),
    relaxation: new Relaxation(columns, [...sparse, ...implied], work),
  };
}

/**
 * By cost; but first of all the columns that open several others, as a shop does that is bought from: once they are settled,
 * the rest nearly falls apart into a small program for each row. Then those that cover nothing: who serves what, what is free.
 */
function weighColumns(columns: readonly Column[], rows: readonly Row[]): Float64Array {
  const opens = new Uint32Array(columns.length);
  const covers = new Uint8Array(columns.length);
  for (const row of rows) {
    const key = keyOf(row);
    if (key !== undefined) opens[key] = (opens[key] ?? 0) + 1;
    if (isCover(row, columns)) for (const [column] of row.terms) covers[column] = 1;
  }
  return Float64Array.from(columns, ({ cost }, column) => {
    const rank = (opens[column] ?? 0) > 1 ? 2 : 1 - (covers[column] ?? 0);
    return (1 + Math.abs(cost)) * 1000 ** rank;
  });
}

/** The only column that counts up in a row `sum of a x >= 0`: without it nothing of the row's others can be had. */
function keyOf({ lower, upper, terms }: Row): number | undefined {
  if (lower !== 0 || upper !== Number.POSITIVE_INFINITY) return undefined;
  const up = terms.filter(([, coefficient]) => coefficient > 0);
  return up.length === 1 && terms.length > 1 ? up[0]?.[0] : undefined;
}

/** Brings a branch's bounds nearer; gives the size of what is left of it, and undefined where nothing is. */
export function closeBranch(
  bounds: ColumnBounds,
  { sparse, terms, areWhole }: Part,
  work: Work,
): number | undefined {
  const asking = closeBounds(sparse, areWhole, bounds);
  work.touched += terms + timesToBranch * areWhole.length;
  if (asking === undefined) return undefined;
  let open = 0;
  for (const [place, low] of bounds.lower.entries()) if (low < (bounds.upper[place] ?? 0)) open++;
  return open * asking;
}

/** Whether what a branch leaves open, in columns times rows, is better off with a table of its own. */
export function isMuchSmaller(size: number, { columns, rows }: Part): boolean {
  return columns.length > leastColumns && size > 0 && 2 * size <= columns.length * rows.length;
}

/** What a branch leaves open of a part. */
export function shrinkPart(part: Part, bounds: ColumnBounds, work: Work): Part {
  const { baseCost, lift, ...shrunk } = shrinkProgram(part, bounds);
  return openPart(
    { ...shrunk, baseCost: part.baseCost + baseCost, lift: (values) => part.lift(lift(values)) },
    work,
  );
}

/** Relaxes a branch; once more from the beginning where rounding has gathered. */
export function relaxBranch({ lower, upper }: ColumnBounds, { relaxation }: Part, cutoff: number): Relaxed {
  relaxation.setBounds(lower, upper);
  const relaxed = relaxation.relax(cutoff);
  if (relaxed !== 'lost') return relaxed;
  relaxation.reset();
  return relaxation.relax(cutoff);
}
