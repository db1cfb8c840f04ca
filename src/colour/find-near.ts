// Colour: which of many colours are near one. In: colours, a distance. Out: those within it, exactly, nearest first.
import type { Lab } from '../model/colour.js';

/** A paint's colour. */
export interface Point {
  readonly paint: string;
  readonly lab: Lab;
}

interface Near {
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
    const reach = limit * largestLightnessWeight + forRounding;
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

/** A bound must not throw out a point that lies on the limit. */
const forRounding = 1e-9;

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
 * Whether two colours are surely further apart than `limit`. With Sharma's names, x = dC'/S_C and y = dH'/S_H:
 * `dE00^2 = (dL'/S_L)^2 + x^2 + y^2 + R_T x y`, and `x^2 + y^2 + R_T x y >= (1 - |R_T|/2)(x^2 + y^2)`.
 * S_H <= S_C, since T <= 1.93 and 0.015 x 1.93 < 0.045. dC'^2 + dH'^2 = da'^2 + db'^2 with a' = (1 + G) a, b' = b; G is
 * known from mean C, and mean C' <= (1 + G) mean C. So
 * `dE00^2 >= (dL/S_L)^2 + (1 - |R_T|/2)((1 + G)^2 da^2 + db^2) / (1 + 0.045 (1 + G) mean C)^2`.
 * |R_T| <= R_C sin 60 degrees, which grows with mean C'; it comes near that only in blues: where neither b is below 0 the
 * mean hue lies from 0 to 180 degrees, 95 or more off 275, and |R_T| <= 2 sin(60 degrees x exp(-(95/25)^2)) < 1.2e-6.
 */
function isFar(one: Lab, other: Lab, limit: number): boolean {
  const fromMiddle = ((one.l + other.l) / 2 - 50) ** 2;
  const lightness = (one.l - other.l) / (1 + (0.015 * fromMiddle) / Math.sqrt(20 + fromMiddle));
  const chroma = (Math.sqrt(one.a ** 2 + one.b ** 2) + Math.sqrt(other.a ** 2 + other.b ** 2)) / 2;
  const wider = 1.5 - 0.5 * colourful(chroma);
  const isWarm = one.b >= 0 && other.b >= 0;
  const turn = isWarm ? 0.999999 : 1 - colourful(wider * chroma) * halfRoot3;
  const flat =
    ((wider * (one.a - other.a)) ** 2 + (one.b - other.b) ** 2) / (1 + 0.045 * wider * chroma) ** 2;
  return lightness ** 2 + turn * flat > limit ** 2 + forRounding;
}

/** `sqrt(C^7 / (C^7 + 25^7))`: 0 for greys, near 1 for strong colours. */
function colourful(chroma: number): number {
  const squared = chroma * chroma;
  const seventh = squared * squared * squared * chroma;
  return Math.sqrt(seventh / (seventh + 25 ** 7));
}

const halfRoot3 = Math.sqrt(3) / 2;
