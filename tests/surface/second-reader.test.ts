// Model files read by a second library, three's loaders: the same triangles, and by area the same parts.
import { DOMParser } from 'linkedom';
import type { BufferGeometry, Object3D, Mesh as ThreeMesh } from 'three';
import { ThreeMFLoader } from 'three/addons/loaders/3MFLoader.js';
import { OBJLoader } from 'three/addons/loaders/OBJLoader.js';
import { STLLoader } from 'three/addons/loaders/STLLoader.js';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { readModel } from '../../src/surface/read-model.js';
import { doubledArea } from '../../src/surface/triangle-store.js';
import {
  binaryStl,
  cylinder,
  modelXml,
  move,
  obj,
  objectXml,
  type Parts,
  packModel,
  sphere,
  textStl,
  threeMf,
  torus,
} from './make-models.js';

const parts: Parts = {
  body: move(cylinder(4, 20, 32), ([x, y, z]) => [x * 1.3 + 100, y - 50, z]),
  shield: move(torus(5, 1, 24), ([x, y, z]) => [z + 106, y - 50, x + 12]),
  head: move(sphere(3, 24), ([x, y, z]) => [x + 100, y - 50, z + 23]),
};

beforeAll(() => {
  // The loader asks a browser to read its XML.
  vi.stubGlobal('DOMParser', DOMParser);
});

type Areas = Readonly<Record<string, { triangles: number; area: number }>>;

async function ours(bytes: Uint8Array, ending: string): Promise<Areas> {
  const { mesh } = await readModel(bytes, ending);
  const areas: Record<string, { triangles: number; area: number }> = {};
  for (const [triangle, place] of mesh.partOf.entries()) {
    const name = mesh.parts[place] ?? '';
    const { triangles, area } = areas[name] ?? { triangles: 0, area: 0 };
    areas[name] = {
      triangles: triangles + 1,
      area: area + doubledArea(mesh.corners, 9 * triangle) / 2,
    };
  }
  return areas;
}

/** Triangles from `start` on, moved to where the object stands. */
function sumUp(geometry: BufferGeometry, around?: Object3D, { start = 0, count = Infinity } = {}) {
  const placed = (geometry.index === null ? geometry : geometry.toNonIndexed()).clone();
  if (around !== undefined) placed.applyMatrix4(around.matrixWorld);
  const corners = Float32Array.from(placed.getAttribute('position').array);
  const sum = { triangles: 0, area: 0 };
  for (let at = 3 * start; at < Math.min(corners.length, 3 * (start + count)); at += 9) {
    const doubled = doubledArea(corners, at);
    if (doubled === 0) continue;
    sum.triangles += 1;
    sum.area += doubled / 2;
  }
  return sum;
}

function sumUpObjects(root: Object3D): Areas {
  const areas: Record<string, { triangles: number; area: number }> = {};
  root.updateMatrixWorld(true);
  root.traverse((one) => {
    if (!('isMesh' in one)) return;
    const sum = sumUp((one as ThreeMesh).geometry, one);
    const name = one.name || (one.parent?.name ?? '');
    const so = areas[name] ?? { triangles: 0, area: 0 };
    areas[name] = { triangles: so.triangles + sum.triangles, area: so.area + sum.area };
  });
  return areas;
}

function expectSame(one: Areas, other: Areas): void {
  expect(Object.keys(one).sort()).toEqual(Object.keys(other).sort());
  for (const [name, { triangles, area }] of Object.entries(one)) {
    expect(other[name]?.triangles, name).toBe(triangles);
    expect((other[name]?.area ?? 0) / area, name).toBeCloseTo(1, 5);
  }
}

const bufferOf = (bytes: Buffer): ArrayBuffer => Uint8Array.from(bytes).buffer;

describe('a second reader finds the same', () => {
  it('in binary STL', async () => {
    const bytes = binaryStl(parts);
    expectSame(await ours(bytes, '.stl'), { '': sumUp(new STLLoader().parse(bufferOf(bytes))) });
  });

  it('in text STL, solid by solid', async () => {
    const bytes = textStl(parts);
    const read = new STLLoader().parse(bufferOf(bytes)) as BufferGeometry & {
      userData: { groupNames: string[] };
    };
    const solids = read.groups.map((group, at) => [
      read.userData.groupNames[at],
      sumUp(read, undefined, group),
    ]);
    expectSame(await ours(bytes, '.stl'), Object.fromEntries(solids));
  });

  it.each(['o', 'g'] as const)('in OBJ, by %s', async (statement) => {
    const bytes = obj(parts, statement);
    expectSame(await ours(bytes, '.obj'), sumUpObjects(new OBJLoader().parse(bytes.toString())));
  });

  it('in OBJ with faces of four corners and corners counted back', async () => {
    const text =
      'v 0 0 0\nv 4 0 0\nv 4 3 0\nv 0 3 0\nf 1 2 3 4\nv 0 0 5\nvn 0 0 1\nf -5//1 -4//1 \\\n -1//1\n';
    expectSame(await ours(Buffer.from(text), '.obj'), sumUpObjects(new OBJLoader().parse(text)));
    // 4 x 3, and 4 x 5 / 2.
    expect(await ours(Buffer.from(text), '.obj')).toEqual({ '': { triangles: 3, area: 22 } });
  });

  it('in 3MF', async () => {
    const bytes = threeMf(parts);
    expectSame(await ours(bytes, '.3mf'), sumUpObjects(new ThreeMFLoader().parse(bufferOf(bytes))));
  });

  it('in 3MF with components moved, turned and made larger, within one another', async () => {
    // A quarter turn about z and twice as large; then 10 along x.
    const turned = '0 2 0 -2 0 0 0 0 2 5 6 7';
    const resources =
      objectXml(1, 'ball', sphere(2, 16)) +
      `<object id="2" name="pair" type="model"><components><component objectid="1"/><component objectid="1" transform="${turned}"/></components></object>`;
    const build = '<item objectid="2" transform="1 0 0 0 1 0 0 0 1 10 0 0"/><item objectid="1"/>';
    const bytes = packModel(modelXml(`<resources>${resources}</resources><build>${build}</build>`));
    const read = await ours(bytes, '.3mf');
    const theirs = Object.values(sumUpObjects(new ThreeMFLoader().parse(bufferOf(bytes))));
    const sum = theirs.reduce((all, { area }) => all + area, 0);
    expect(read.ball?.area).toBeCloseTo(sum, 2);
    // One, one of twice the size, one.
    expect(sum / (4 * Math.PI * 4 * (1 + 4 + 1))).toBeCloseTo(1, 1);
  });
});
