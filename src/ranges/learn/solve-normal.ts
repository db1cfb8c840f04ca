// Ranges: normal beliefs after measurements. In: a prediction of each measurement at any deviates. Out: mean and covariance.
import { at } from '../../model/at.js';
import { type Measured, whiten } from './whiten.js';

/** What is predicted at some deviates, and how much each prediction changes with each of them. */
export interface Predicted {
  readonly values: readonly number[];
  /** One row a measurement, one column a deviate. */
  readonly slopes: readonly (readonly number[])[];
}

/** Predicts every measurement for deviates of some means and standard deviations. */
export type Predict = (mean: readonly number[], spread: readonly number[]) => Predicted;

/** A normal belief of several deviates. */
export interface Normal {
  readonly mean: readonly number[];
  readonly covariance: readonly (readonly number[])[];
}

const mostRounds = 60;
/** Deviates this near are the same: far below what any log can tell. */
const closeEnough = 1e-7;
/** No deviate moves further in one round, so that a bent prediction does not throw the search off. */
const longestStep = 1;

/**
 * What is known of `size` deviates that were of mean 0 and deviation 1 each, independent, once the measurements are in.
 * The normal-normal update, exact where predictions are linear (precision `I + J'WJ`, mean that times `J'W(y - p + Jz)`);
 * else taken at the deviates that agree best with prior and measurements (Gauss-Newton, Laplace's approximation).
 * `predict` hears how wide the belief is too, for predictions that are bent over its width. `measure` gives the
 * measurements' deviations at what is predicted. Without measurements the prior comes back.
 */
export function solveNormal(
  size: number,
  predict: Predict,
  measure: (predicted: readonly number[]) => readonly Measured[],
): Normal {
  let mean = new Array<number>(size).fill(0);
  let spread = new Array<number>(size).fill(1);
  for (let round = 0; ; round++) {
    const { values, slopes } = predict(mean, spread);
    const measured = measure(values);
    const precision = identity(size);
    const pull = mean.map((z) => -z);
    const rows = measured.map(({ value }, row) => [value - at(values, row), ...at(slopes, row)]);
    for (const [residual = 0, ...slope] of whiten(measured, rows))
      addMeasurement({ precision, pull }, slope, residual);
    const covariance = invert(precision);
    const step = timesVector(covariance, pull);
    const longest = Math.max(0, ...step.map(Math.abs));
    if (longest < closeEnough || round === mostRounds) return { mean, covariance };
    const scale = Math.min(1, longestStep / longest);
    spread = deviationsOf(covariance);
    mean = mean.map((z, index) => z + scale * at(step, index));
  }
}

/** The standard deviation of each deviate. */
export const deviationsOf = (covariance: Normal['covariance']): number[] =>
  covariance.map((row, i) => Math.sqrt(at(row, i)));

/** Of deviation 1. */
function addMeasurement(
  { precision, pull }: { precision: number[][]; pull: number[] },
  slope: readonly number[],
  residual: number,
): void {
  precision.forEach((row, i) => {
    const si = at(slope, i);
    row.forEach((value, j) => {
      row[j] = value + si * at(slope, j);
    });
    pull[i] = at(pull, i) + si * residual;
  });
}

const identity = (size: number): number[][] =>
  Array.from({ length: size }, (_, i) => Array.from({ length: size }, (_, j) => (i === j ? 1 : 0)));

const timesVector = (matrix: readonly (readonly number[])[], vector: readonly number[]): number[] =>
  matrix.map((row) => row.reduce((sum, value, j) => sum + value * at(vector, j), 0));

/** Lower triangular L with `L L' = matrix`, for a positive definite matrix (Cholesky). */
export function rootOf(matrix: readonly (readonly number[])[]): number[][] {
  const root = matrix.map((row) => row.map(() => 0));
  matrix.forEach((row, i) => {
    for (let j = 0; j <= i; j++) {
      const [ri, rj] = [at(root, i), at(root, j)];
      let rest = at(row, j);
      for (let k = 0; k < j; k++) rest -= at(ri, k) * at(rj, k);
      ri[j] = i === j ? Math.sqrt(Math.max(0, rest)) : rest / (at(rj, j) || 1);
    }
  });
  return root;
}

/** The inverse of a positive definite matrix, through its root. */
function invert(matrix: readonly (readonly number[])[]): number[][] {
  const root = rootOf(matrix);
  const columns = matrix.map((_, j) => solveWith(root, j));
  return matrix.map((_, i) => columns.map((column) => at(column, i)));
}

/** A column of the inverse: forward, then back through the root. */
function solveWith(root: readonly (readonly number[])[], column: number): number[] {
  const size = root.length;
  const x = new Array<number>(size).fill(0);
  for (let i = 0; i < size; i++) {
    let rest = i === column ? 1 : 0;
    for (let k = 0; k < i; k++) rest -= at(at(root, i), k) * at(x, k);
    x[i] = rest / at(at(root, i), i);
  }
  for (let i = size - 1; i >= 0; i--) {
    let rest = at(x, i);
    for (let k = i + 1; k < size; k++) rest -= at(at(root, k), i) * at(x, k);
    x[i] = rest / at(at(root, i), i);
  }
  return x;
}
