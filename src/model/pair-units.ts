// Model: what an army paints in what. In: units. Out: figures in schemes.
import type { Unit } from './sheets.js';

/** A figure painted in a scheme. */
export type Pair = Pick<Unit, 'scheme' | 'figure'>;

/** Each figure in each scheme once, schemes and their figures in the order of the army. Without units none. */
export function pairUnits(units: readonly Unit[]): Pair[] {
  const pairs = new Map<string, Map<string, Pair>>();
  for (const unit of units) {
    const figures = pairs.get(unit.scheme);
    if (figures === undefined) pairs.set(unit.scheme, new Map([[unit.figure, unit]]));
    else if (!figures.has(unit.figure)) figures.set(unit.figure, unit);
  }
  return [...pairs.values()].flatMap((figures) => [...figures.values()]);
}
