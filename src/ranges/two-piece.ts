// Ranges: the spread of one assumption. In: low, likely, high. Out: its value at a normal deviate, and back.
import { z90 } from '../assumptions/look-up.js';
import type { Assumption } from '../model/assumption.js';

/** Two halves of a lognormal that meet at the median. */
export interface TwoPiece {
  readonly likely: number;
  /** Log deviation below the median; 0 where nothing is below. */
  readonly below: number;
  readonly above: number;
  /** No value passes it: 1 for a share of the paint or of the pot. */
  readonly most: number;
}

/**
 * `x = likely x exp(z s)`, `s = ln(likely / low) / z90` below and `ln(high / likely) / z90` above, so that low is P10,
 * likely the median and high P90. 30 / 50 / 80 has s = 0.3986 and 0.3667. A value held as exact, or at 0, has no spread.
 */
export function twoPieceOf({ low, likely, high, unit }: Assumption): TwoPiece {
  const most = isShare(unit) ? Math.max(1, likely) : Number.POSITIVE_INFINITY;
  if (low <= 0 || likely <= 0) return { likely, below: 0, above: 0, most };
  return { likely, below: Math.log(likely / low) / z90, above: Math.log(high / likely) / z90, most };
}

/** A share of something can't pass the whole of it. */
const isShare = (unit: string): boolean =>
  unit === 'of the paint put out' || unit === 'of the labelled volume';

/** The value at a normal deviate: -1.28 gives low, 0 likely, 1.28 high. */
export function valueAt({ likely, below, above, most }: TwoPiece, z: number): number {
  return Math.min(most, likely * Math.exp(z * (z < 0 ? below : above)));
}

/** The values at a column of deviates. */
export function valuesAt(piece: TwoPiece, deviates: Float64Array): Float64Array {
  const values = new Float64Array(deviates.length);
  for (let draw = 0; draw < values.length; draw++) values[draw] = valueAt(piece, deviates[draw] as number);
  return values;
}

export const isExact = ({ below, above }: TwoPiece): boolean => below === 0 && above === 0;
