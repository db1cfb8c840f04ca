// Time: brush minutes of one coat and of one line, on one figure. In: what is laid where. Out: minutes.
import { likely } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import type { Layer, Method } from '../model/words.js';
import type { Line } from '../model/work.js';

/** One coat of one zone on one figure. */
interface Coat {
  readonly layer: Layer;
  readonly method: Method;
  /** What is painted: the zone times the area share. */
  readonly paintedCm2: number;
}

/** What of a line its minutes depend on. */
type TimedLine = Pick<Line, 'layer' | 'method' | 'areaCm2' | 'areaShare' | 'coats' | 'mixShare'>;

/**
 * `handling + painted cm2 x pace x care`, likely values; from memory. No area leaves the handling.
 * Base coat by brush on 5 cm2: 0.8 + 5 x 0.5 x 1 = 3.3 min. Setup and drying come on top.
 */
export function minutesOfCoat({ layer, method, paintedCm2 }: Coat, assumptions: Assumptions): number {
  const perCm2 = likely(assumptions, `${method} pace`) * likely(assumptions, `${layer} care`);
  return likely(assumptions, `${method} handling`) + paintedCm2 * perCm2;
}

/**
 * Brush minutes of all coats of a line on one figure; times `line.figures` for the job. The lines of a mix are one
 * application: each takes its share of it, so that lines may be added up.
 */
export function minutesOfLine(line: TimedLine, assumptions: Assumptions): number {
  const { layer, method, areaCm2, areaShare, coats, mixShare } = line;
  return minutesOfCoat({ layer, method, paintedCm2: areaCm2 * areaShare }, assumptions) * coats * mixShare;
}

/** Sprays are laid on a whole batch at once, away from the table. */
export const isSpray = (method: Method): boolean => method === 'spray can' || method === 'airbrush';
