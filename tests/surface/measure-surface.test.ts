import { describe, expect, it } from 'vitest';
import { reachedOf } from '../../src/model/measured.js';
import { buildTree } from '../../src/surface/build-tree.js';
import { countFree } from '../../src/surface/look-around.js';
import {
  type Body,
  binaryStl,
  cube,
  cylinder,
  disc,
  move,
  obj,
  rotate,
  sphere,
  textStl,
  threeMf,
  torus,
  turnOver,
  wall,
} from './make-models.js';
import { areaOfFile, measureModel, reached, wholeOf } from './measure-model.js';

const formats = [
  ['binary STL', '.stl', binaryStl],
  ['text STL', '.stl', textStl],
  ['OBJ', '.obj', obj],
  ['3MF', '.3mf', threeMf],
] as const;

const measure = (body: Body) => measureModel(binaryStl({ body }), '.stl');

describe('closed formulas, to a thousandth', () => {
  it.each(formats)('sphere, cube, torus and cylinder as %s', async (_, ending, write) => {
    const bodies: readonly (readonly [Body, number])[] = [
      [sphere(10), 4 * Math.PI * 10 ** 2],
      [cube(10), 6 * 10 ** 2],
      [torus(10, 3), 4 * Math.PI ** 2 * 10 * 3],
      [cylinder(5, 20), 2 * Math.PI * 5 ** 2 + 2 * Math.PI * 5 * 20],
    ];
    for (const [body, area] of bodies)
      expect(Math.abs((await areaOfFile(write({ body }), ending)) / area - 1)).toBeLessThan(0.001);
  });
});

describe('what is reached', () => {
  it('of a sphere all, and nobody doubts it', async () => {
    const model = await measure(sphere(10));
    expect(reachedOf(model.pieces, 5)).toEqual({ area: expect.closeTo(wholeOf(model), 6), error: 0 });
  });

  it('of two spheres in one another the outer', async () => {
    const both = await measure([...sphere(10), ...sphere(5)]);
    const outer = await measure(sphere(10));
    const { area, error } = reachedOf(both.pieces, 5);
    expect(area / wholeOf(outer)).toBeCloseTo(1, 2);
    // A fifth of 1570.8 is hidden: 1570.8 x sqrt(0.8 x 0.2 / 2000).
    expect(error).toBeCloseTo(14.05, 1);
  });

  it('of a cube that stands five sides, of one that stands on a corner six', async () => {
    expect(reached(await measure(cube(10)))).toBeCloseTo(500, 6);
    expect(reached(await measure(rotate(cube(10), 40)))).toBeCloseTo(600, 3);
  });

  it('of a sheet both sides, of one that lies on the ground the upper', async () => {
    const lying = disc(10, 0);
    const standing = move(lying, ([x, y, z]) => [x, z, y]);
    const area = wholeOf(await measure(lying));
    expect(area).toBeCloseTo(Math.PI * 100, 0);
    expect(reached(await measure(standing))).toBeCloseTo(2 * area, 3);
    expect(reached(await measure(lying))).toBeCloseTo(area, 3);
    expect(reached(await measure(turnOver(lying)))).toBeCloseTo(area, 3);
  });

  it('of a body inside out as much, and it is noticed', async () => {
    const [body, turned] = [await measure(torus(10, 3, 32)), await measure(turnOver(torus(10, 3, 32)))];
    expect(reached(turned)).toBeCloseTo(reached(body), 6);
    expect([body.isInsideOut, turned.isInsideOut]).toEqual([false, true]);
  });

  it('is the same to the last digit each time', async () => {
    const body = [...torus(10, 3, 24), ...sphere(8, 24)];
    expect(await measure(body)).toEqual(await measure(body));
  });
});

describe('turned and made larger', () => {
  // The tubes of two rings through one another hide some of each other.
  const figure = [...torus(10, 3, 24), ...rotate(torus(10, 4, 24), 70)];

  it('the area is the same, and what is reached within its error', async () => {
    const model = await measure(figure);
    const { area, error } = reachedOf(model.pieces, 5);
    for (const degrees of [17, 90, 141]) {
      const turned = await measure(rotate(figure, degrees));
      expect(wholeOf(turned) / wholeOf(model)).toBeCloseTo(1, 5);
      expect(Math.abs(reached(turned) - area)).toBeLessThan(4 * error);
    }
  });

  it('areas go with the square of the size', async () => {
    const model = await measure(figure);
    const larger = await measure(move(figure, ([x, y, z]) => [x * 25.4, y * 25.4, z * 25.4]));
    expect(wholeOf(larger) / wholeOf(model) / 25.4 ** 2).toBeCloseTo(1, 5);
    expect(reached(larger) / reached(model) / 25.4 ** 2).toBeCloseTo(1, 5);
    expect(larger.high / model.high).toBeCloseTo(25.4, 5);
  });

  it('a cube of 12 triangles and one of 3,072 have the same', async () => {
    const [coarse, fine] = [await measure(cube(7, 1)), await measure(cube(7, 16))];
    expect(wholeOf(fine)).toBeCloseTo(wholeOf(coarse), 3);
    expect(reached(fine)).toBeCloseTo(reached(coarse), 3);
  });
});

describe('the sky over the middle of the floor of a round pit, of radius R and depth H', () => {
  // The part of the sky within an angle of the normal is 1 - cos of it: 1 - H / sqrt(H^2 + R^2).
  it.each([
    [0.5, 0.5528],
    [1, 0.2929],
    [2, 0.1056],
    [3.04, 0.05],
    [5, 0.0194],
  ])('H = %f R: %f of it', (deep, share) => {
    const pit = [...disc(1, 0), ...wall(1, [0, deep], { isDown: true })];
    const tree = buildTree(Float32Array.from(pit.flat(2)));
    const looks = Array.from({ length: 20 }, (_, turn) =>
      countFree(tree, [0.001, 0.001, 1e-5], { normal: [0, 0, 1], turn, most: 100 }),
    );
    const mean = looks.reduce((sum, free) => sum + free, 0) / 20 / 100;
    expect(Math.abs(mean - share)).toBeLessThan(0.005);
  });

  it('a floor that sees more than a twentieth is reached, one that sees less is not', async () => {
    // Seen from the middle: 0.067 at 2.6 R, 0.037 at 3.6 R. The floor alone is a part of its own.
    const floorOf = async (deep: number) => {
      const floor = disc(1, 0.01);
      const around = [...cylinder(3, 0.001), ...wall(1, [0, deep * 1], { isDown: true })];
      const { pieces } = await measureModel(obj({ floor, around }), '.obj');
      return reachedOf(
        pieces.filter(({ part }) => part === 'floor'),
        5,
      ).area;
    };
    expect(await floorOf(2.6)).toBeGreaterThan(0.5 * Math.PI);
    expect(await floorOf(3.6)).toBeLessThan(0.05 * Math.PI);
  });
});

describe('which way is up', () => {
  const standing = cylinder(5, 20);
  const lying = move(standing, ([x, y, z]) => [x, z, -y]);

  it('z in files for printing', async () => {
    expect(await measureModel(binaryStl({ lying }), '.stl')).toMatchObject({ up: 'z', high: 10 });
    expect(await measureModel(threeMf({ lying }), '.3mf')).toMatchObject({ up: 'z', high: 10 });
  });

  it('y in OBJ where it stands flatter that way', async () => {
    expect(await measureModel(obj({ lying }), '.obj')).toMatchObject({ up: 'y', high: 20 });
    expect(await measureModel(obj({ standing }), '.obj')).toMatchObject({ up: 'z', high: 20 });
    const block = move(cube(10), ([x, y, z]) => [6 * x, y, 2 * z]);
    expect(await measureModel(obj({ block }), '.obj')).toMatchObject({ up: 'z', high: 20 });
  });
});
