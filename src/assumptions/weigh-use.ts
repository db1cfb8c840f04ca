// Assumptions: what a log row says was used. In: the row, its paint, a container. Out: ml, and how far off they may be.
import type { Assumptions } from '../model/assumption.js';
import type { LogRow, Paint } from '../model/sheets.js';
import type { Container } from '../model/words.js';
import { densityName, likely, usableShare } from './look-up.js';

/**
 * Grams that leave a container with each millilitre of usable paint. From a pot that is the density: the painter's own,
 * else the registry's. From a can propellant leaves too, so it is the density over the usable share: 0.8 / 0.6 g.
 */
export function gramsPerUsableMl(paint: Paint, container: Container, assumptions: Assumptions): number {
  const density = paint.densityGPerMl ?? likely(assumptions, densityName(paint, container));
  return container === 'can' ? density / usableShare(assumptions, container) : density;
}

/** True where the row holds two weights, which go before a volume. */
export function isWeighed({ beforeG, afterG }: LogRow): boolean {
  return beforeG !== undefined && afterG !== undefined;
}

/** Paint used, ml: `(before - after) / density`, else the volume written; undefined for a row with neither, which is no weighing. */
export function usedMlOf({ beforeG, afterG, usedMl }: LogRow, densityGPerMl: number): number | undefined {
  if (beforeG !== undefined && afterG !== undefined) return (beforeG - afterG) / densityGPerMl;
  return usedMl;
}

/** A pot to tell the error of a volume by. */
interface Measure {
  readonly densityGPerMl: number;
  /** The largest pot of the paint. */
  readonly sizeMl: number;
}

/**
 * Standard deviation of the paint used, ml: two readings of the scale, `sqrt(2) x error / density`, or that of a volume
 * read off the pot. A scale of 0.3 g and a paint of 1.2 g/ml: 0.354 ml.
 */
export function usedErrorMl(
  row: LogRow,
  { densityGPerMl, sizeMl }: Measure,
  assumptions: Assumptions,
): number {
  if (isWeighed(row)) return (Math.SQRT2 * likely(assumptions, 'error of a scale')) / densityGPerMl;
  return (likely(assumptions, 'error in ml') / 100) * sizeMl;
}
