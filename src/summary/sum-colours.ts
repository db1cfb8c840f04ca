// Summary: other colours. In: stock, substitutes, the frontier. Out: what is needed of paints to buy, levels of the frontier.
import type { Frontier, FrontierPoint } from '../model/frontier.js';
import type { PaintStock } from '../model/stock.js';
import type { ColourSums, FrontierLevel } from '../model/summary.js';
import { sameMl } from '../model/volume.js';

interface Inputs {
  readonly stock: readonly PaintStock[];
  readonly frontier: Frontier;
}

/** From such a share of the cash on, saving it is worth another colour. */
const leastSaved = 0.05;

export function sumColours({ stock, frontier }: Inputs): ColourSums {
  const { points, fewestPots } = frontier;
  const [first, last] = [points[0], points.at(-1)];
  const { cashMinor: firstMinor = 0, unmet: firstUnmet = [] } = first ?? {};
  const savedMinor = firstMinor - (last?.cashMinor ?? 0);
  const covered = firstUnmet.length > (last?.unmet.length ?? 0);
  return {
    toBuy: stock.filter(({ toBuyMl }) => toBuyMl > sameMl).length,
    levels: joinLevels(points),
    fewest: last !== undefined && fewestPots.pots < last.pots ? fewestPots : undefined,
    savedMinor,
    isWorthwhile: covered || (savedMinor > 0 && savedMinor >= leastSaved * firstMinor),
  };
}

/** By rising difference, as the points are. */
function joinLevels(points: readonly FrontierPoint[]): FrontierLevel[] {
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
