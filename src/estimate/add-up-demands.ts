// Estimate: needs for any number of figures. In: demands in painting order. Out: ml per paint for the first n figures.
import { numberAt } from '../model/at.js';
import { demandMl } from '../model/demand-ml.js';
import { lastWhere } from '../model/last-where.js';
import type { UnitDemand } from '../model/work.js';

/** Needs of the first so many figures, by paint. */
export type NeedsAt = (figures: number) => ReadonlyMap<string, number>;

/** Units between two sums that are kept: sums before each of 200,000 units would take 40 MB and more. */
const stride = 64;

/**
 * Needs of the first n figures, units filled one after the other; past the last figure, of all of them.
 * Sums of whole units are kept, so each call looks at a few units only.
 */
export function addUpDemands(demands: readonly UnitDemand[]): NeedsAt {
  const maps = new Set(demands.map(({ perFigureMl }) => perFigureMl));
  const paints = [...new Set([...maps].flatMap((map) => [...map.keys()]))];
  const wholeOf = rememberWhole(paints);
  const firstOf = new Float64Array(demands.length + 1);
  const kept: Float64Array[] = [];
  const sums = new Float64Array(paints.length);
  demands.forEach((demand, index) => {
    if (index % stride === 0) kept.push(sums.slice());
    firstOf[index + 1] = numberAt(firstOf, index) + demand.figures;
    addTo(sums, wholeOf(demand));
  });
  return (figures) => {
    const index = findUnit(firstOf, figures);
    const demand = demands[index];
    if (demand === undefined) return new Map(paints.map((paint, place) => [paint, numberAt(sums, place)]));
    const near = Math.floor(index / stride);
    const before = (kept[near] ?? sums).slice();
    for (const whole of demands.slice(near * stride, index)) addTo(before, wholeOf(whole));
    const cut = figures - numberAt(firstOf, index);
    return new Map(
      paints.map((paint, place) => [paint, numberAt(before, place) + demandMl(demand, paint, cut)]),
    );
  };
}

function addTo(sums: Float64Array, more: Float64Array): void {
  for (let place = 0; place < sums.length; place += 1)
    sums[place] = numberAt(sums, place) + numberAt(more, place);
}

/** Needs of a whole unit in the order of the paints, worked out once for units that share their demand. */
function rememberWhole(paints: readonly string[]): (demand: UnitDemand) => Float64Array {
  const known = new Map<UnitDemand['perFigureMl'], Float64Array>();
  return (demand) => {
    const whole =
      known.get(demand.perFigureMl) ??
      Float64Array.from(paints, (paint) => demandMl(demand, paint, demand.figures));
    known.set(demand.perFigureMl, whole);
    return whole;
  };
}

/** The last unit that starts at or before a number of figures; the number of units where all are painted. */
function findUnit(firstOf: Float64Array, figures: number): number {
  return lastWhere(0, firstOf.length - 1, (unit) => numberAt(firstOf, unit) <= figures);
}
