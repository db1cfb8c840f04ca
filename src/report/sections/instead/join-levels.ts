// Report view: points of the frontier that are alike, as one level. In: points by rising difference. Out: levels.
import type { FrontierChoice, FrontierPoint } from '../../../model/frontier.js';

/** Points alike in all but the difference allowed. */
export interface FrontierLevel extends FrontierPoint {
  /** The largest difference at which it still holds. */
  readonly toDE00: number;
}

/** Proved, and everything is met. */
export const isFirm = ({ status }: FrontierChoice): boolean => status === 'proved';

/** By rising difference, as the points are. */
export function joinLevels(points: readonly FrontierPoint[]): FrontierLevel[] {
  const levels: FrontierLevel[] = [];
  for (const point of points) {
    const last = levels.at(-1);
    if (last !== undefined && keyOf(last) === keyOf(point)) {
      levels[levels.length - 1] = { ...last, toDE00: point.dE00 };
    } else levels.push({ ...point, toDE00: point.dE00 });
  }
  return levels;
}

function keyOf({ cashMinor, pots, status, aboveBestMinor, swaps, unmet }: FrontierPoint): string {
  const pairs = swaps.map(({ paint, by }) => `${paint}\n${by}`);
  const rest = unmet.map(({ paint, ml }) => `${paint}\n${ml}`);
  return [cashMinor, pots, status, aboveBestMinor, ...pairs, '', ...rest].join('\n\n');
}
