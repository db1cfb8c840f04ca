// Drawing: amounts as shares of what is drawn. In: amounts in any one unit. Out: shares.
/** Parts together as a share of the whole, 0 to 1 and beyond; of nothing: none of it, or beyond all where there is some. */
export function shareOf(part: number, whole: number, more = 0): number {
  const all = part + more;
  return whole > 0 ? all / whole : all > 0 ? Infinity : 0;
}

/** Low and high as shares; undefined where they are one, or the whole is nothing. */
export function rangeOf(
  range: { readonly low: number; readonly high: number } | undefined,
  whole: number,
): { readonly low: number; readonly high: number } | undefined {
  if (range === undefined || range.low === range.high || whole === 0) return undefined;
  return { low: shareOf(range.low, whole), high: shareOf(range.high, whole) };
}

/** Each as a share of all together. */
export function shareOut(parts: readonly number[]): number[] {
  const all = parts.reduce((sum, part) => sum + part, 0);
  return parts.map((part) => shareOf(part, all));
}
