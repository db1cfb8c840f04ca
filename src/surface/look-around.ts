// Surface: how much of the sky is free over a place. In: a tree, a point, which way is up from it. Out: rays that get away.
import type { Tree } from './build-tree.js';
import { isBlocked } from './meet-ray.js';

/** So many rays each stand for one hundredth of the sky, of the solid angle of a half sphere. */
const skyRays = 100;

export type Vector = readonly [number, number, number];

const golden = (Math.sqrt(5) - 1) / 2;

/**
 * Directions about z, evenly over the half sphere: heights are even since a zone's area goes with its height (Archimedes),
 * turns by the golden section. Those at even places come first, which are half as many and as even.
 */
const sky: readonly Vector[] = Array.from({ length: skyRays }, (_, index) => {
  const place = index < skyRays / 2 ? 2 * index : 2 * index - skyRays + 1;
  const z = (place + 0.5) / skyRays;
  const [turn, across] = [2 * Math.PI * place * golden, Math.sqrt(1 - z * z)];
  return [across * Math.cos(turn), across * Math.sin(turn), z];
});

interface Outlook {
  readonly normal: Vector;
  /** By how many radians the sky is turned about the normal. */
  readonly turn: number;
  /** Nobody asks whether more is free. */
  readonly most: number;
}

/** Hundredths of the sky, at most `most`. Where the first half of the rays are all blocked, none. */
export function countFree(tree: Tree, point: Vector, { normal, turn, most }: Outlook): number {
  const [a, b] = axesAround(normal, turn);
  const ray = new Float64Array(6);
  ray.set(point);
  let free = 0;
  for (let index = 0; index < skyRays && free < most; index += 1) {
    if (2 * index === skyRays && free === 0) return 0;
    const [x, y, z] = sky[index] as Vector;
    for (let k = 0; k < 3; k += 1)
      ray[3 + k] = x * (a[k] as number) + y * (b[k] as number) + z * (normal[k] as number);
    if (!isBlocked(tree, ray)) free += 1;
  }
  return free;
}

/** Two axes at right angles to a normal and each other (Duff and others 2017), turned. */
function axesAround([x, y, z]: Vector, turn: number): readonly [Vector, Vector] {
  const sign = z >= 0 ? 1 : -1;
  const [p, q] = [-1 / (sign + z), (-x * y) / (sign + z)];
  const [a, b]: Vector[] = [
    [1 + sign * x * x * p, sign * q, -sign * x],
    [q, sign + y * y * p, -y],
  ];
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const mix = (one: number, other: number): Vector =>
    [0, 1, 2].map((k) => (a?.[k] ?? 0) * one + (b?.[k] ?? 0) * other) as unknown as Vector;
  return [mix(cos, sin), mix(-sin, cos)];
}
