// Estimate: surface of a base, a box and a length. In: lengths in mm. Out: areas in cm2.
import type { BaseShape, BoxSides } from '../model/figure.js';

const cm2PerMm2 = 0.01;

/**
 * Top and edge of a base in cm2, before sharing: `round 25`, 3 mm high, gives 4.909 and 2.356.
 * Round: pi D^2/4 and pi D h; rectangle: ab and 2(a + b)h; oval: pi ab/4 and Ramanujan's perimeter times h.
 */
export function measureBase(base: BaseShape, highMm: number): { topCm2: number; edgeCm2: number } {
  return { topCm2: topMm2(base) * cm2PerMm2, edgeCm2: perimeterMm(base) * highMm * cm2PerMm2 };
}

function topMm2(base: BaseShape): number {
  if (base.shape === 'round') return (Math.PI * base.acrossMm ** 2) / 4;
  const rectangle = base.longMm * base.wideMm;
  return base.shape === 'rectangle' ? rectangle : (Math.PI * rectangle) / 4;
}

function perimeterMm(base: BaseShape): number {
  if (base.shape === 'round') return Math.PI * base.acrossMm;
  if (base.shape === 'rectangle') return 2 * (base.longMm + base.wideMm);
  return ellipsePerimeter(base.longMm / 2, base.wideMm / 2);
}

/** Ramanujan's first formula, 1914: pi (3(a + b) - sqrt((3a + b)(a + 3b))) for half axes a and b. */
function ellipsePerimeter(a: number, b: number): number {
  return Math.PI * (3 * (a + b) - Math.sqrt((3 * a + b) * (a + 3 * b)));
}

/**
 * Sides and top of a box in cm2, without its underside: LW + 2LH + 2WH. 90x30x20 mm gives 75. With a pitched roof whose
 * ridge is R above the ground: 2LH + 2WH, two gables of W(R - H)/2 and two slopes of L sqrt((W/2)^2 + (R - H)^2).
 */
export function measureBox({ longMm, wideMm, highMm, ridgeMm = highMm }: BoxSides): number {
  const roofHighMm = ridgeMm - highMm;
  const slopeMm = Math.hypot(wideMm / 2, roofHighMm);
  const sides = 2 * (longMm + wideMm) * highMm;
  return (sides + wideMm * roofHighMm + 2 * longMm * slopeMm) * cm2PerMm2;
}

export const squareCm2 = (longMm: number): number => longMm ** 2 * cm2PerMm2;
