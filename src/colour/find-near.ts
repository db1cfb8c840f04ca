// Colour: which of many colours are near one. In: colours, a distance. Out: those within it, exactly, nearest first.
import type { Lab } from '../model/colour.js';

/** A paint's colour. */
export interface Point {
  readonly paint: string;
  readonly lab: Lab;
}

export interface Near {
  readonly paint: string;
  readonly dE00: number;
}

/** All points within `limit` of a colour, nearest first, then by name. */
export type FindNear = (lab: Lab, limit: number) => Near[];

/**
 * Prepares points for many searches. `between` is CIEDE2000; it is asked only where a lower bound of it, proved at
 * `isFar`, leaves the point in reach, so nothing within the limit is missed. No points: every search is empty.
 */
export function openNear(points: readonly Point[], between: (one: Lab, other: Lab) => number): FindNear {
  const byLightness = points.toSorted((a, b) => a.lab.l - b.lab.l);
  return (lab, limit) => {
    const found: Near[] = [];
    const reach = limit * largestLightnessWeight;
    for (let index = firstFrom(byLightness, lab.l - reach); index < byLightness.length; index += 1) {
      const point = byLightness[index];
      if (point === undefined || point.lab.l > lab.l + reach) break;
      if (isFar(lab, point.lab, limit)) continue;
      const dE00 = between(lab, point.lab);
      if (dE00 <= limit) found.push({ paint: point.paint, dE00 });
    }
    return found.sort((a, b) => a.dE00 - b.dE00 || (a.paint < b.paint ? -1 : 1));
  };
}

/** S_L at mean lightness 0 or 100, where it is largest. */
const largestLightnessWeight = 1 + (0.015 * 50 ** 2) / Math.sqrt(20 + 50 ** 2);

/** Index of the first point of at least this lightness. */
function firstFrom(points: readonly Point[], lightness: number): number {
  let [from, to] = [0, points.length];
  while (from < to) {
    const middle = (from + to) >> 1;
    if ((points[middle]?.lab.l ?? 0) < lightness) from = middle + 1;
    else to = middle;
  }
  return from;
}

/**
 * Whether two colours are surely further apart than `limit`. With Sharma's names, and x = dC'/S_C, y = dH'/S_H:
 * `dE00^2 = (dL'/S_L)^2 + x^2 + y^2 + R_T x y`, and `x^2 + y^2 + R_T x y >= (1 - |R_T|/2)(x^2 + y^2)`.
 * S_H <= S_C, since T <= 1.93 and 0.015 x 1.93 < 0.045. dC'^2 + dH'^2 = da'^2 + db^2 >= da^2 + db^2, since a' is a
 * times 1 + G >= 1; and G <= 0.5 makes mean C' <= 1.5 mean C. So
 * `dE00^2 >= (dL/S_L)^2 + (1 - |R_T|/2)(da^2 + db^2) / (1 + 0.0675 mean C)^2`.
 * |R_T| <= 2 sin 60 degrees = 1.7321, which it comes near only in blues: where neither b is below 0 the mean hue lies from
 * 0 to 180 degrees, 95 or more off 275, and |R_T| <= 2 sin(60 degrees x exp(-(95/25)^2)) < 1.2e-6.
 */
function isFar(one: Lab, other: Lab, limit: number): boolean {
  const fromMiddle = ((one.l + other.l) / 2 - 50) ** 2;
  const lightness = (one.l - other.l) / (1 + (0.015 * fromMiddle) / Math.sqrt(20 + fromMiddle));
  const turn = one.b >= 0 && other.b >= 0 ? 0.999999 : leastTurn;
  const chroma = (Math.sqrt(one.a ** 2 + one.b ** 2) + Math.sqrt(other.a ** 2 + other.b ** 2)) / 2;
  const flat = ((one.a - other.a) ** 2 + (one.b - other.b) ** 2) / (1 + 0.0675 * chroma) ** 2;
  // The margin is for rounding: a bound must not throw out a point that lies on the limit.
  return lightness ** 2 + turn * flat > limit ** 2 + 1e-9;
}

const leastTurn = 1 - Math.sqrt(3) / 2;
