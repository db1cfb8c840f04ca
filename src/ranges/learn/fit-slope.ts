// Ranges: a line through the origin. In: pairs. Out: its slope, how sure, and how far the pairs lie from it.

export interface Slope {
  readonly slope: number;
  /** Standard deviation of the slope; 0 for fewer than two pairs. */
  readonly deviation: number;
  /** Standard deviation of the pairs about the line; 0 for fewer than two. */
  readonly residual: number;
}

/** Least squares for `y = slope x`: `sum xy / sum xx`, with one degree of freedom spent. No pairs, or only zeros: slope 1. */
export function fitSlope(pairs: readonly { readonly x: number; readonly y: number }[]): Slope {
  const xx = pairs.reduce((sum, { x }) => sum + x * x, 0);
  if (xx === 0) return { slope: 1, deviation: 0, residual: 0 };
  const slope = pairs.reduce((sum, { x, y }) => sum + x * y, 0) / xx;
  if (pairs.length < 2) return { slope, deviation: 0, residual: 0 };
  const squares = pairs.reduce((sum, { x, y }) => sum + (y - slope * x) ** 2, 0);
  const residual = Math.sqrt(squares / (pairs.length - 1));
  return { slope, deviation: residual / Math.sqrt(xx), residual };
}
