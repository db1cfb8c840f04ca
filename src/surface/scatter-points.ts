// Surface: points spread evenly over a mesh. In: the mesh, its ground. Out: calls with triangle and place in it, and strata.
import { type Ground, liesOnGround } from './find-ground.js';
import { doubledArea, type Mesh } from './triangle-store.js';

/** What is measured by points of its own: a part, and of each apart what lies on the ground. */
export interface Stratum {
  readonly part: string;
  readonly isSole: boolean;
  area: number;
  points: number;
}

/** All together, where no part is so small that it gets its least. */
const POINTS = 2000;
const LEAST_POINTS = 30;

/** By triangle, its stratum; strata in the order in which they are met. */
export function stratify({ corners, partOf, parts }: Mesh, ground: Ground) {
  const byKey = new Map<number, Stratum>();
  const strataOf = Array.from(partOf, (part, triangle) => {
    const at = 9 * triangle;
    const isSole = liesOnGround(corners, at, ground);
    const key = 2 * part + Number(isSole);
    const stratum = byKey.get(key) ?? { part: parts[part] ?? '', isSole, area: 0, points: 0 };
    stratum.area += doubledArea(corners, at) / 2;
    byKey.set(key, stratum);
    return stratum;
  });
  const strata = [...byKey.values()];
  const whole = strata.reduce((sum, { area }) => sum + area, 0);
  for (const one of strata) one.points = Math.max(LEAST_POINTS, Math.round((POINTS * one.area) / whole));
  return { strata, strataOf };
}

/** Multiples of these, less their whole parts, fill a square evenly in any number (Roberts 2018). */
const [stepU, stepV] = [0.7548776662466927, 0.5698402909980532];

/**
 * Visits each stratum's points, spaced evenly along its area in the order of the file: shares of the two sides of the
 * triangle, u + v at most 1, and the number of the point.
 */
export function scatterPoints(
  strataOf: readonly Stratum[],
  { corners }: Mesh,
  visit: (triangle: number, at: { readonly u: number; readonly v: number; readonly number: number }) => void,
): void {
  const passed = new Map<Stratum, { area: number; points: number }>();
  let number = 0;
  for (const [triangle, stratum] of strataOf.entries()) {
    const so = passed.get(stratum) ?? { area: 0, points: 0 };
    passed.set(stratum, so);
    so.area += doubledArea(corners, 9 * triangle) / 2;
    for (; so.points < pointsUpTo(so.area, stratum); so.points += 1) {
      number += 1;
      const [u, v] = [(number * stepU) % 1, (number * stepV) % 1];
      visit(triangle, u + v <= 1 ? { u, v, number } : { u: 1 - u, v: 1 - v, number });
    }
  }
}

/** The middle of each equal piece of the area has one point. */
const pointsUpTo = (area: number, { area: whole, points }: Stratum): number =>
  Math.min(points, Math.floor((area / whole) * points + 0.5));
