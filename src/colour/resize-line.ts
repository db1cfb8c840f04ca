// Colour: a line with other coats. In: a line of the estimate. Out: what it would be with more, fewer, or an undercoat.
import type { Line } from '../model/work.js';

/** The same line with so many coats: the film grows with them, leftovers do not. `painter` as in the registry. */
export function withCoats(line: Line, coats: number, painter: number): Line {
  return resize(line, coats / line.coats, painter, { coats });
}

export interface Undercoat {
  readonly paint: string;
  readonly coats: number;
  /** Parts of water to one of paint. */
  readonly thin: number;
  /** Put out by itself, so it leaves a whole leftover, ml a sitting. */
  readonly leftoverMl: number;
}

/** An undercoat where a line goes, by the same method on the same area. */
export function layUndercoat(
  line: Line,
  { paint, coats, thin, leftoverMl }: Undercoat,
  painter: number,
): Line {
  const film = (coats / line.coats) * ((1 + line.thin) / (1 + thin) / line.mixShare);
  const whole = { leftoverMl: leftoverMl * line.sittings };
  return resize(line, film, painter, { paint, coats, thin, mixShare: 1, ...whole });
}

/** `film` is how many times the paint ends on the figures. */
function resize(line: Line, film: number, painter: number, changes: Partial<Line>): Line {
  const leftoverMl = changes.leftoverMl ?? line.leftoverMl;
  const spreadMl = line.putOutMl - line.leftoverMl * painter;
  const onFigureMl = line.onFigureMl * film;
  return { ...line, ...changes, onFigureMl, putOutMl: spreadMl * film + leftoverMl * painter };
}
