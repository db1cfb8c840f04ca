// Solver: what a search keeps of one program. In: columns, rows. Out: its relaxation with cuts, how to branch, and what the
// bounds of a node leave of it.
import { at } from '../../model/at.js';
import { isCovering } from './covering-rows.js';
import type { Column, Row } from './integer-program.js';
import { type Presolved, presolve } from './presolve.js';
import { type ColumnBounds, propagateBounds } from './propagate-bounds.js';
import { Relaxation, type Relaxed } from './relaxation.js';
import { type SparseRow, scaleRow } from './sparse-rows.js';
import { openViolatedCuts } from './violated-cuts.js';
import type { Work } from './work.js';

/** A program that is searched: the whole one, or what the bounds of a node leave of it. */
export interface Subproblem extends Presolved {
  /** Its rows, without the cuts. */
  readonly sparse: readonly SparseRow[];
  /** Terms of all these rows together. */
  readonly terms: number;
  readonly areWhole: readonly boolean[];
  /** Fractions of the highest rank are branched on first. */
  readonly ranks: Uint8Array;
  readonly relaxation: Relaxation;
  /** Cuts that values violate. */
  readonly cutsAt: (values: Float64Array) => Row[];
}

/** Opening a subproblem goes through its terms about so often. */
const timesToOpen = 10;

/** A node copies its columns' bounds, weighs them and waits in the queue: about so much for each. */
const timesToBranch = 20;

/** With fewer columns a program is as soon searched as presolved again. */
const leastColumns = 50;

export function openSubproblem(presolved: Presolved, work: Work): Subproblem {
  const { columns, rows } = presolved;
  const sparse = rows.map(scaleRow);
  const terms = sparse.reduce((sum, { places }) => sum + places.length, 0);
  work.touched += timesToOpen * terms;
  return {
    ...presolved,
    sparse,
    terms,
    areWhole: columns.map(({ integer }) => integer),
    ranks: rankColumns(columns, rows),
    relaxation: new Relaxation(columns, sparse, work),
    cutsAt: openViolatedCuts(presolved),
  };
}

/** Columns that cover nothing or cost nothing: who serves what, what is free, how far to go. */
export const costless = 1;

/**
 * First of all the columns that open several others, as a shop does that is bought from: once they are fixed, the rest nearly falls
 * apart into a small program for each row. Then those without a cost of their own.
 */
function rankColumns(columns: readonly Column[], rows: readonly Row[]): Uint8Array {
  const opens = new Uint32Array(columns.length);
  const covers = new Uint8Array(columns.length);
  for (const row of rows) {
    const opener = openerOf(row);
    if (opener !== undefined) opens[opener] = at(opens, opener) + 1;
    if (isCovering(row, columns)) for (const [column] of row.terms) covers[column] = 1;
  }
  return Uint8Array.from(columns, ({ cost }, column) =>
    at(opens, column) > 1 ? costless + 1 : at(covers, column) === 1 && cost !== 0 ? 0 : costless,
  );
}

/** The only column that counts up in a row `sum of a x >= 0`: without it nothing of the row's others can be had. */
function openerOf({ lower, upper, terms }: Row): number | undefined {
  if (lower !== 0 || upper !== Number.POSITIVE_INFINITY) return undefined;
  const up = terms.filter(([, coefficient]) => coefficient > 0);
  return up.length === 1 && terms.length > 1 ? up[0]?.[0] : undefined;
}

/** Propagates a node's bounds. Gives the size of what they leave, open columns times rows that bind; undefined where none is feasible. */
export function propagateNode(
  bounds: ColumnBounds,
  { sparse, terms, areWhole }: Subproblem,
  work: Work,
): number | undefined {
  const binding = propagateBounds(sparse, areWhole, bounds);
  work.touched += terms + timesToBranch * areWhole.length;
  if (binding === undefined) return undefined;
  let open = 0;
  for (const [place, low] of bounds.lower.entries()) if (low < at(bounds.upper, place)) open++;
  return open * binding;
}

/** Whether what a node leaves, in columns times rows, is better off with a tableau of its own. */
export function isMuchSmaller(size: number, { columns, rows }: Subproblem): boolean {
  return columns.length > leastColumns && size > 0 && 2 * size <= columns.length * rows.length;
}

/** What a node's bounds leave, as a subproblem of its own. */
export function restrict(subproblem: Subproblem, bounds: ColumnBounds, work: Work): Subproblem {
  const { baseCost, postsolve, ...smaller } = presolve(subproblem, bounds);
  return openSubproblem(
    {
      ...smaller,
      baseCost: subproblem.baseCost + baseCost,
      postsolve: (values) => subproblem.postsolve(postsolve(values)),
    },
    work,
  );
}

/** Relaxes a node; once more from the slack basis where rounding has gathered. */
export function relaxNode(
  { lower, upper }: ColumnBounds,
  { relaxation }: Subproblem,
  cutoff: number,
): Relaxed {
  relaxation.setBounds(lower, upper);
  const relaxed = relaxation.solve(cutoff);
  if (relaxed !== 'failed') return relaxed;
  relaxation.restart();
  return relaxation.solve(cutoff);
}

/** Times that cuts are looked for in one subproblem. */
const mostRounds = 4;

/** Relaxes the whole of a subproblem, with cuts as long as its values violate any; what is slack in the end is dropped again. */
export function relaxRoot(bounds: ColumnBounds, subproblem: Subproblem, cutoff: number): Relaxed {
  const { relaxation, cutsAt, rows, areWhole } = subproblem;
  const values = new Float64Array(areWhole.length);
  for (let round = 0; ; round++) {
    const relaxed = relaxNode(bounds, subproblem, cutoff);
    if (relaxed !== 'optimal') return relaxed;
    relaxation.readValues(values);
    const cuts = cutsAt(values);
    if (cuts.length === 0 || round === mostRounds) break;
    relaxation.addRows(cuts.map(scaleRow));
  }
  relaxation.dropSlackCuts(rows.length);
  return 'optimal';
}
