// Charts: pieces one after the other in a bar. In: their layers and shares. Out: one path a layer, as a page may hold
// thousands of pieces. The drawing is stretched to its place; the stylesheet keeps its lines thin.
/** Units of a whole bar. */
export const wide = 1000;

interface Piece {
  readonly key: string;
  readonly share: number;
}

/** Layers in the order in which they first come; what would reach beyond the bar is cut. */
export function drawPieces(pieces: readonly Piece[], top: number): string {
  const paths = new Map<string, string>();
  let from = 0;
  for (const { key, share } of pieces) {
    const [x, to] = [unitOf(from), unitOf(from + share)];
    from += share;
    const piece = `M${x} ${top}H${to}V${top + 16}H${x}z`;
    paths.set(key, (paths.get(key) ?? '') + piece);
  }
  return [...paths].map(([key, d]) => `<path class="${key}" d="${d}"/>`).join('');
}

const unitOf = (share: number): number => Math.round(Math.min(1, Math.max(0, share)) * wide);
