// Frontier: what can be served and what can't. In: servings, all that can be had. Out: what each need asks in reach,
// one way to serve it, and the rest, as little as can be.
import { at } from '../../model/at.js';
import type { OrderNeed } from '../../model/order.js';
import { sameMl } from '../../model/volume.js';
import type { Buying } from '../choose-counts.js';
import type { IntegerProgram, Row } from '../solver/integer-program.js';
import type { Supply } from '../split-needs.js';
import { type Serving, takePlenty } from './list-servings.js';

export interface SplitServings {
  /** Needs cut to what can be served, each with the paints that can serve it whole. */
  readonly within: readonly Serving[];
  /** For each of them a paint: so all of them can be served at once. */
  readonly paints: readonly string[];
  readonly unmet: readonly OrderNeed[];
}

/**
 * The least ml unmet where every need is served by one paint. Paints that have enough for all that might ask
 * settle most needs; the others are an integer program. Where its search ends early, more may be unmet than must be.
 */
export async function splitServings(
  servings: readonly Serving[],
  sources: Supply,
  buying: Buying,
): Promise<SplitServings> {
  const taken = takePlenty(servings, sources);
  const scarce = servings.filter((_, index) => taken[index] === undefined);
  const shared = scarce.length === 0 ? [] : await shareScarce(scarce, sources, buying);
  const left = new Map(sources);
  const within: Serving[] = [];
  const paints: string[] = [];
  const unmet: OrderNeed[] = [];
  for (const [index, { need, by }] of servings.entries()) {
    const paint = taken[index] ?? shared.shift() ?? need.paint;
    const ml = Math.min(need.ml, left.get(paint) ?? 0);
    left.set(paint, (left.get(paint) ?? 0) - ml);
    if (need.ml - ml > sameMl) unmet.push({ paint: need.paint, ml: need.ml - ml });
    if (ml <= sameMl) continue;
    within.push({
      need: { paint: need.paint, ml },
      by: by.filter((one) => (sources.get(one.by) ?? 0) >= ml - sameMl),
    });
    paints.push(paint);
  }
  return { within, paints, unmet };
}

/** A paint for each need, so that the least is unmet. */
async function shareScarce(
  scarce: readonly Serving[],
  sources: Supply,
  { solve, limits }: Buying,
): Promise<string[]> {
  const nearest = scarce.map(({ by }) => mostOf(by, sources));
  if (scarce.every(({ by }) => by.length === 1)) return nearest;
  const { program, places } = writeSharing(scarce, sources);
  const solution = await solve(program, limits);
  if (!('values' in solution)) return nearest;
  return scarce.map((_, index) => {
    const chosen = places.find((place) => place.serving === index && solution.values[place.served] === 1);
    return chosen?.paint ?? nearest[index] ?? '';
  });
}

const mostOf = (by: Serving['by'], sources: Supply): string =>
  by.reduce(
    (best, one) => ((sources.get(one.by) ?? 0) > (sources.get(best.by) ?? 0) ? one : best),
    by[0] as Serving['by'][number],
  ).by;

/** One need and one paint: the column that says whether it serves, and the column of the ml that are missing then. */
interface Place {
  readonly serving: number;
  readonly paint: string;
  readonly served: number;
  readonly missing: number;
}

/**
 * Minimise `sum missing` with, for each need, one paint that serves it; `missing <= need x served`; for each paint
 * `sum (need x served - missing) <= all that can be had`.
 */
function writeSharing(
  scarce: readonly Serving[],
  sources: Supply,
): { program: IntegerProgram; places: readonly Place[] } {
  const places = scarce
    .flatMap(({ by }, serving) => by.map((one) => ({ serving, paint: one.by })))
    .map((place, index): Place => ({ ...place, served: 2 * index, missing: 2 * index + 1 }));
  const mlOf = ({ serving }: Place): number => at(scarce, serving).need.ml;
  const columns = places.flatMap((place) => [
    { cost: 0, lower: 0, upper: 1, integer: true },
    { cost: 1, lower: 0, upper: mlOf(place), integer: false },
  ]);
  const limitsOfMissing = places.map(
    (place): Row => ({
      lower: 0,
      upper: Number.POSITIVE_INFINITY,
      terms: [
        [place.served, mlOf(place)],
        [place.missing, -1],
      ],
    }),
  );
  const oneEach = scarce.map(
    (_, serving): Row => ({
      lower: 1,
      upper: 1,
      terms: places.filter((place) => place.serving === serving).map(({ served }) => [served, 1]),
    }),
  );
  const paints = [...new Set(places.map(({ paint }) => paint))];
  const atMostHad = paints.map(
    (paint): Row => ({
      lower: Number.NEGATIVE_INFINITY,
      upper: sources.get(paint) ?? 0,
      terms: places
        .filter((place) => place.paint === paint)
        .flatMap((place): [number, number][] => [
          [place.served, mlOf(place)],
          [place.missing, -1],
        ]),
    }),
  );
  return { program: { columns, rows: [...limitsOfMissing, ...oneEach, ...atMostHad] }, places };
}
