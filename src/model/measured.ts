// Model: what is measured on a model file. In: nothing. Out: its types, and what of it a brush reaches. Lengths in units of the file.

/** What has more of its sky free is not told apart: a brush reaches it, by any opinion. */
export const mostSkyPercent = 20;

/** A part of the surface, or what of it lies on the ground. */
export interface MeasuredPiece {
  /** Its name in the file; '' for none. */
  readonly part: string;
  /** It lies on the ground, which its lower side sees nothing but. */
  readonly isSole: boolean;
  /** Of one side. */
  readonly area: number;
  /** How many points were looked from, on both sides. */
  readonly points: number;
  /** By hundredths of free sky, 0 to `mostSkyPercent` and above: at how many points the side that sees more of it sees so much. */
  readonly open: readonly number[];
  /** The same for the other side. */
  readonly hidden: readonly number[];
}

/** A model file, measured. Of the same bytes always the same. */
export interface MeasuredModel {
  /** Millimetres in one unit of the file; undefined where it does not say. */
  readonly unitMm?: number | undefined;
  readonly high: number;
  /** The axis that points up. */
  readonly up: 'x' | 'y' | 'z';
  readonly triangles: number;
  /** Triangles left out: without area, and with a corner that is no number. */
  readonly flat: number;
  readonly unreal: number;
  /** Most of the surface that is seen faces inwards. */
  readonly isInsideOut: boolean;
  readonly pieces: readonly MeasuredPiece[];
}

/** Area that a brush reaches, in the file's unit squared, and one standard error of it. */
export interface Reached {
  readonly area: number;
  readonly error: number;
}

/**
 * What of some pieces has so much of its sky free, in hundredths; both sides of each count for themselves. The error is
 * that of a share found by chance (binomial), which points spread evenly stay below.
 */
export function reachedOf(pieces: readonly MeasuredPiece[], leastSkyPercent: number): Reached {
  const least = Math.min(leastSkyPercent, mostSkyPercent);
  let [area, variance] = [0, 0];
  for (const piece of pieces) {
    for (const side of [piece.open, piece.hidden]) {
      const seen = side.reduce((sum, count, sky) => (sky >= least ? sum + count : sum), 0);
      const share = seen / piece.points;
      area += piece.area * share;
      variance += (piece.area ** 2 * share * (1 - share)) / piece.points;
    }
  }
  return { area, error: Math.sqrt(variance) };
}
