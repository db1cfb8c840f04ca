// Estimate: needs for any number of figures. In: demands in painting order. Out: ml per paint for the first n figures.
import type { UnitDemand } from '../model/plan.js';

/** Paint for some figures of a unit, in ml; no figures, none. */
export function demandMl(
  { perFigureMl, perSittingMl, batch }: UnitDemand,
  paint: string,
  figures: number,
): number {
  const perFigure = perFigureMl.get(paint) ?? 0;
  return perFigure * figures + (perSittingMl.get(paint) ?? 0) * Math.ceil(figures / batch);
}

/** Needs of the first so many figures, by paint. */
export type NeedsAt = (figures: number) => ReadonlyMap<string, number>;

/**
 * Needs of the first n figures, units filled one after the other; past the last figure, of all of them.
 * Sums of whole units are kept, so each call looks at one unit only.
 */
export function addUpDemands(demands: readonly UnitDemand[]): NeedsAt {
  const paints = [...new Set(demands.flatMap(({ perFigureMl }) => [...perFigureMl.keys()]))];
  const before = new Float64Array((demands.length + 1) * paints.length);
  const firstOf = new Float64Array(demands.length + 1);
  demands.forEach((demand, index) => {
    firstOf[index + 1] = (firstOf[index] ?? 0) + demand.figures;
    paints.forEach((paint, place) => {
      const at = index * paints.length + place;
      before[at + paints.length] = (before[at] ?? 0) + demandMl(demand, paint, demand.figures);
    });
  });
  return (figures) => {
    const index = findUnit(firstOf, figures);
    const demand = demands[index];
    const cut = demand === undefined ? 0 : figures - (firstOf[index] ?? 0);
    return new Map(
      paints.map((paint, place) => {
        const whole = before[index * paints.length + place] ?? 0;
        return [paint, demand === undefined ? whole : whole + demandMl(demand, paint, cut)];
      }),
    );
  };
}

/** The last unit that starts at or before a number of figures; the number of units where all are painted. */
function findUnit(firstOf: Float64Array, figures: number): number {
  let [low, high] = [0, firstOf.length - 1];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if ((firstOf[middle] ?? 0) <= figures) low = middle;
    else high = middle - 1;
  }
  return low;
}
