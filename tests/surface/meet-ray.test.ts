// Rays against a second library: three-mesh-bvh asks for the nearest triangle, we for any.
import { BufferAttribute, BufferGeometry, DoubleSide, Ray, Vector3 } from 'three';
import { MeshBVH } from 'three-mesh-bvh';
import { describe, expect, it } from 'vitest';
import { buildTree } from '../../src/surface/build-tree.js';
import { isBlocked } from '../../src/surface/meet-ray.js';
import { type Body, move, sphere, torus } from './make-models.js';

/** Numbers from -1 to 1 as if by chance: digits of a sine far from 0. */
function openNumbers(): () => number {
  let count = 0;
  return () => {
    count += 1;
    const large = Math.sin(count) * 1e4;
    return 2 * (large - Math.floor(large)) - 1;
  };
}

function bothSay(corners: Float32Array, from: readonly number[], to: readonly number[]) {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(corners.slice(), 3));
  const theirs = new MeshBVH(geometry).raycastFirst(
    new Ray(new Vector3(...from), new Vector3(...to)),
    DoubleSide,
  );
  return [isBlocked(buildTree(corners), Float64Array.from([...from, ...to])), theirs !== null] as const;
}

describe('isBlocked', () => {
  it('agrees with a second library on triangles of any kind', () => {
    const next = openNumbers();
    const numbers = (count: number): number[] => Array.from({ length: count }, next);
    let blocked = 0;
    for (let run = 1; run <= 1000; run += 1) {
      const [own, theirs] = bothSay(Float32Array.from(numbers(9 * (run % 40) + 9)), numbers(3), numbers(3));
      blocked += own ? 1 : 0;
      expect(own, `run ${run}`).toBe(theirs);
    }
    expect(blocked).toBeGreaterThan(300);
  });

  it('lets no ray out of a closed body, nor one past it in', () => {
    const body: Body = [...sphere(2, 32), ...move(torus(9, 1, 32), ([x, y, z]) => [x, z, y])];
    const tree = buildTree(Float32Array.from(body.flat(2)));
    for (let k = 0; k < 5000; k += 1) {
      const [x, y, z] = [Math.cos(k), Math.sin(k), Math.cos(k * Math.SQRT2)];
      expect(isBlocked(tree, Float64Array.from([0.1, 0.2, 0.3, x, y, z])), `out ${k}`).toBe(true);
      expect(isBlocked(tree, Float64Array.from([20 * x, 11, 20 * y, x, 0.1, y])), `past ${k}`).toBe(false);
    }
  });

  it('meets many triangles of one place and a single one', () => {
    const one = [0, 0, 1, 1, 0, 1, 0, 1, 1];
    const many = Float32Array.from(Array.from({ length: 1000 }, () => one).flat());
    for (const corners of [many, Float32Array.from(one)]) {
      const tree = buildTree(corners);
      expect(isBlocked(tree, Float64Array.from([0.2, 0.2, 0, 0, 0, 1]))).toBe(true);
      expect(isBlocked(tree, Float64Array.from([0.2, 0.2, 0, 0, 0, -1]))).toBe(false);
      expect(isBlocked(tree, Float64Array.from([0.9, 0.9, 0, 0, 0, 1]))).toBe(false);
    }
  });
});
