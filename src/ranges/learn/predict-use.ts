// Ranges: what the log's rows should have used. In: rows held against the estimate, factors in doubt. Out: the use of each
// row at any deviates of the factors, and how it changes with them.

import { likely } from '../../assumptions/look-up.js';
import type { Assumptions } from '../../model/assumption.js';
import { at, numberAt } from '../../model/at.js';
import type { FigureArea } from '../../model/work.js';
import type { Terms } from '../list-terms.js';
import { openPutOut } from '../put-out.js';
import { type TwoPiece, valueAt } from '../two-piece.js';
import type { Matched } from './match-log.js';
import type { Predict } from './solve-normal.js';

/** An assumption in doubt, as it stood before any weighing. */
export interface Factor {
  readonly name: string;
  readonly piece: TwoPiece;
}

interface Prediction {
  /** The formula at the deviates themselves. */
  readonly atMedians: Predict;
  /** The middle of what the formula gives over the width of the belief; the halves of a spread bend it there. */
  readonly overSpread: Predict;
}

interface Given {
  readonly assumptions: Assumptions;
  readonly figures: ReadonlyMap<string, FigureArea>;
}

/** Mean distance of a normal number from its mean, in deviations: the bend of two halves counts by just that. */
const meanDistance = Math.sqrt(2 / Math.PI);
/** A belief that is all but sure still needs two sides to take a slope from. */
const leastStep = 0.01;

/** Predicts through the very formula of the draws: one draw at the deviates, two beside each. Use in ml, as rows have it. */
export function openPrediction(
  matched: readonly Matched[],
  factors: readonly Factor[],
  given: Given,
): Prediction {
  const predict = (deviates: readonly number[], spread: readonly number[]) => {
    const steps = factors.map((_, factor) => Math.max(leastStep, meanDistance * at(spread, factor)));
    const rows = useRows(matched, drawBeside(factors, deviates, steps), given);
    const slopes = rows.map((row) =>
      steps.map(
        (step, factor) => (numberAt(row, 2 + 2 * factor) - numberAt(row, 1 + 2 * factor)) / (2 * step),
      ),
    );
    return { rows, slopes };
  };
  return {
    atMedians(deviates, spread) {
      const { rows, slopes } = predict(deviates, spread);
      return { values: rows.map((row) => numberAt(row, 0)), slopes };
    },
    overSpread(deviates, spread) {
      const { rows, slopes } = predict(deviates, spread);
      return { values: rows.map((row) => evenOut(row, factors.length)), slopes };
    },
  };
}

/** A column for each factor: all at its deviate but its own two, a step below and a step above. */
function drawBeside(
  factors: readonly Factor[],
  deviates: readonly number[],
  steps: readonly number[],
): ReadonlyMap<string, Float64Array> {
  return new Map(
    factors.map(({ name, piece }, factor) => {
      const [z, step] = [at(deviates, factor), at(steps, factor)];
      const column = new Float64Array(1 + 2 * factors.length).fill(valueAt(piece, z));
      column[1 + 2 * factor] = valueAt(piece, z - step);
      column[2 + 2 * factor] = valueAt(piece, z + step);
      return [name, column] as const;
    }),
  );
}

/** What each row should have used; a weighed one as its grams were told, in ml of the usual density. */
function useRows(
  matched: readonly Matched[],
  columns: ReadonlyMap<string, Float64Array>,
  given: Given,
): Float64Array[] {
  const draws = 1 + 2 * columns.size;
  const putOut = openPutOut({ ...given, columnOf: (name) => columns.get(name), draws });
  const made = new Map<Terms, Float64Array>();
  const overUsual = (name: string | undefined, draw: number): number => {
    const column = name === undefined ? undefined : columns.get(name);
    return name === undefined || column === undefined
      ? 1
      : numberAt(column, draw) / likely(given.assumptions, name);
  };
  return matched.map(({ terms, byGrams: { density, share } }) => {
    const ml = made.get(terms) ?? putOut(terms);
    made.set(terms, ml);
    if (density === undefined && share === undefined) return ml;
    return ml.map((value, draw) => (value * overUsual(density, draw)) / overUsual(share, draw));
  });
}

/** The value with each factor's two sides evened out, in logs, where factors add up. */
function evenOut(row: Float64Array, factors: number): number {
  const middle = numberAt(row, 0);
  if (middle <= 0) return middle;
  let bend = 0;
  for (let factor = 0; factor < factors; factor++) {
    bend += Math.log((numberAt(row, 1 + 2 * factor) * numberAt(row, 2 + 2 * factor)) / middle ** 2) / 2;
  }
  return middle * Math.exp(bend);
}
