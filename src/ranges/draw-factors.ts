// Ranges: values of the assumptions by chance. In: names, what is believed of them, seed. Out: a column of draws for each.
import { assume } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import type { Drawing } from '../model/draws.js';
import { openStream } from './open-stream.js';
import { isExact, type TwoPiece, twoPieceOf, valuesAt } from './two-piece.js';

/** Factors that weighings have tied together: normal deviates of a mean and a spread that they share. */
interface Joint {
  readonly names: readonly string[];
  /** As the factors stood before any weighing: deviates are counted from there. */
  readonly priors: readonly TwoPiece[];
  readonly mean: readonly number[];
  /** Lower triangular root of the covariance, row by row. */
  readonly root: readonly (readonly number[])[];
}

/** What is believed of the assumptions: each by itself, and those that weighings tied together. */
export interface Beliefs {
  readonly assumptions: Assumptions;
  readonly joint: Joint | undefined;
}

/** One factor in every draw. */
export interface DrawnFactor {
  readonly deviates: Float64Array;
  readonly values: Float64Array;
}

/**
 * Draws every named factor that is in doubt, each from a stream of its own; one column serves every line that uses the
 * factor. Those held as exact have no entry.
 */
export function drawFactors(
  names: Iterable<string>,
  { assumptions, joint }: Beliefs,
  drawing: Drawing,
): Map<string, DrawnFactor> {
  const drawn = new Map<string, DrawnFactor>();
  const tied = joint === undefined ? [] : drawJoint(joint, drawing);
  for (const name of names) {
    const place = joint?.names.indexOf(name) ?? -1;
    const piece = joint?.priors[place] ?? twoPieceOf(assume(assumptions, name));
    if (isExact(piece)) continue;
    const deviates = tied[place] ?? drawNormals(name, drawing);
    drawn.set(name, { deviates, values: valuesAt(piece, deviates) });
  }
  return drawn;
}

/** Normal deviates of a name. */
export function drawNormals(name: string, { draws, seed }: Drawing): Float64Array {
  return openStream(seed, name).fillNormal(new Float64Array(draws));
}

/** Deviates of all tied factors: mean plus root times independent ones. */
function drawJoint({ names, mean, root }: Joint, drawing: Drawing): Float64Array[] {
  const free = names.map((name) => drawNormals(name, drawing));
  return names.map((_, row) => {
    const column = new Float64Array(drawing.draws).fill(mean[row] ?? 0);
    for (const [place, weight] of (root[row] ?? []).entries()) {
      const one = free[place];
      if (weight === 0 || one === undefined) continue;
      for (let draw = 0; draw < column.length; draw++) {
        column[draw] = (column[draw] as number) + weight * (one[draw] as number);
      }
    }
    return column;
  });
}
