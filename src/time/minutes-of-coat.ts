// Time: brush minutes of one coat and of one line, on one figure. In: what is laid where. Out: minutes.
import { likely } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import type { Layer, Method } from '../model/words.js';
import type { Line } from '../model/work.js';

/** One coat of one zone on one figure. */
interface Coat {
  readonly layer: Layer;
  readonly method: Method;
  readonly zoneCm2: number;
  /** How much of the zone is painted, 0 to 1. */
  readonly areaShare: number;
}

/** What of a line its minutes depend on. */
type TimedLine = Pick<Line, 'layer' | 'method' | 'areaCm2' | 'areaShare' | 'coats' | 'mixShare'>;

/** Laid with a brush or a palette knife, of which there are wider ones; the other tools are wide already. */
const comesWider: readonly Method[] = ['brush', 'flood', 'spread'];

/** Whether a zone is so large that a wider brush takes less time for its area. */
export function isWide(
  { method, areaCm2 }: Pick<Line, 'method' | 'areaCm2'>,
  assumptions: Assumptions,
): boolean {
  return comesWider.includes(method) && areaCm2 > likely(assumptions, 'wider brush from');
}

/**
 * `handling + painted cm2 x pace x care`, likely values; from memory. Beyond 5 cm2 of a zone the minutes a cm2 fall with the
 * root of its area: a brush as wide as the zone is. No area leaves the handling. Setup and drying come on top.
 * Base coat by brush on 5 cm2: 0.8 + 5 x 0.5 x 1 = 3.3 min; on 20 cm2: 0.8 + 20 x 0.5 x sqrt(5 / 20) = 5.8 min.
 */
export function minutesOfCoat({ layer, method, zoneCm2, areaShare }: Coat, assumptions: Assumptions): number {
  const perCm2 = likely(assumptions, `${method} pace`) * likely(assumptions, `${layer} care`);
  const fromCm2 = likely(assumptions, 'wider brush from');
  const faster = isWide({ method, areaCm2: zoneCm2 }, assumptions) ? Math.sqrt(fromCm2 / zoneCm2) : 1;
  return likely(assumptions, `${method} handling`) + zoneCm2 * areaShare * perCm2 * faster;
}

/**
 * Brush minutes of all coats of a line on one figure; times `line.figures` for the job. The lines of a mix are one
 * application: each takes its share of it, so that lines may be added up.
 */
export function minutesOfLine(line: TimedLine, assumptions: Assumptions): number {
  const { layer, method, areaCm2, areaShare, coats, mixShare } = line;
  return minutesOfCoat({ layer, method, zoneCm2: areaCm2, areaShare }, assumptions) * coats * mixShare;
}

/** Sprays are laid on a whole batch at once, away from the table. */
export const isSpray = (method: Method): boolean => method === 'spray can' || method === 'airbrush';
