// Surface: whether something is in the way. In: a tree, where a ray starts and where it goes. Out: yes or no.
import type { Tree } from './build-tree.js';

/** Of a ray: x, y, z of its start, x, y, z of its direction. */
export type Ray = Float64Array;

/** True where the ray meets a triangle, from either side. One that lies along the ray is not met. */
export function isBlocked({ boxes, after, first, held, nodes, sides }: Tree, ray: Ray): boolean {
  // Plain names and no lists throughout: these lines run some hundred million times.
  const ox = ray[0] as number;
  const oy = ray[1] as number;
  const oz = ray[2] as number;
  const ix = 1 / (ray[3] as number);
  const iy = 1 / (ray[4] as number);
  const iz = 1 / (ray[5] as number);
  for (let node = 0; node < nodes; ) {
    const at = 6 * node;
    // The slabs of a box, Kay and Kajiya 1986. A ray within a slab's face gives no number, and so is not let past.
    const ax = ((boxes[at] as number) - ox) * ix;
    const bx = ((boxes[at + 3] as number) - ox) * ix;
    const ay = ((boxes[at + 1] as number) - oy) * iy;
    const by = ((boxes[at + 4] as number) - oy) * iy;
    const az = ((boxes[at + 2] as number) - oz) * iz;
    const bz = ((boxes[at + 5] as number) - oz) * iz;
    const near = Math.max(Math.min(ax, bx), Math.min(ay, by), Math.min(az, bz));
    const far = Math.min(Math.max(ax, bx), Math.max(ay, by), Math.max(az, bz));
    const count = held[node] as number;
    if (far < 0 || near > far) node = after[node] as number;
    else {
      if (count > 0 && meetsAny(sides, 9 * (first[node] as number), count, ray)) return true;
      node += 1;
    }
  }
  return false;
}

/** Möller and Trumbore 1997, for the triangles from `from` on. */
function meetsAny(sides: Float32Array, from: number, count: number, ray: Ray): boolean {
  const dx = ray[3] as number;
  const dy = ray[4] as number;
  const dz = ray[5] as number;
  for (let at = from; at < from + 9 * count; at += 9) {
    const ax = sides[at + 3] as number;
    const ay = sides[at + 4] as number;
    const az = sides[at + 5] as number;
    const bx = sides[at + 6] as number;
    const by = sides[at + 7] as number;
    const bz = sides[at + 8] as number;
    const px = dy * bz - dz * by;
    const py = dz * bx - dx * bz;
    const pz = dx * by - dy * bx;
    const across = ax * px + ay * py + az * pz;
    if (across === 0) continue;
    const sx = (ray[0] as number) - (sides[at] as number);
    const sy = (ray[1] as number) - (sides[at + 1] as number);
    const sz = (ray[2] as number) - (sides[at + 2] as number);
    const u = (sx * px + sy * py + sz * pz) / across;
    if (u < 0 || u > 1) continue;
    const qx = sy * az - sz * ay;
    const qy = sz * ax - sx * az;
    const qz = sx * ay - sy * ax;
    const v = (dx * qx + dy * qy + dz * qz) / across;
    if (v < 0 || u + v > 1) continue;
    if ((bx * qx + by * qy + bz * qz) / across > 0) return true;
  }
  return false;
}
