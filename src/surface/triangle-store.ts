// Surface: triangles as they are read. In: corners, one triangle after the other, and names of parts. Out: a mesh.
import { ModelError } from './model-error.js';

/** Triangles of a file, in its own unit. */
export interface Mesh {
  /** Nine numbers a triangle: x, y, z of each corner. */
  readonly corners: Float32Array;
  /** By triangle: the place of its part among `parts`. */
  readonly partOf: Uint8Array;
  /** Names, each once; '' for what has none. */
  readonly parts: readonly string[];
  /** Triangles left out since they have no area. */
  readonly flat: number;
  /** Triangles left out since a corner of theirs is no number. */
  readonly unreal: number;
}

export interface TriangleStore {
  /** What comes next belongs to the part of this name. */
  readonly startPart: (name: string) => void;
  /** Takes nine numbers from `from` on: three corners. */
  readonly add: (numbers: ArrayLike<number>, from?: number) => void;
  /** Names may be changed in the end; parts that are then named alike are one. */
  readonly finish: (rename?: (names: readonly string[]) => readonly string[]) => Mesh;
}

/** Of these the largest model takes two thirds of the gigabyte that it may. */
const MOST_TRIANGLES = 4_000_000;
/** Fewer than a byte counts. */
const MOST_PARTS = 200;

/** Throws a ModelError where there are too many of a kind, before they are kept. */
export function openStore(expected = 2 ** 16, mostTriangles = MOST_TRIANGLES): TriangleStore {
  let corners = new Float32Array(9 * Math.min(expected, mostTriangles));
  let partOf = new Uint8Array(corners.length / 9);
  let [count, flat, unreal, pending] = [0, 0, 0, ''];
  const places = new Map<string, number>();

  const grow = (): void => {
    if (count >= mostTriangles) throw tooMany('more triangles', mostTriangles);
    const next = Math.min(Math.ceil(count * 1.5) + 16, mostTriangles);
    corners = enlarge(corners, new Float32Array(9 * next));
    partOf = enlarge(partOf, new Uint8Array(next));
  };
  const startPart = (name: string): void => {
    pending = name;
  };
  /** Of the part that the next triangle belongs to; a part without triangles is none. */
  const placeOfPart = (): number => {
    const place = places.get(pending) ?? places.size;
    if (place === MOST_PARTS) throw tooMany('more named parts', MOST_PARTS);
    places.set(pending, place);
    return place;
  };
  const add = (numbers: ArrayLike<number>, from = 0): void => {
    if (count === partOf.length) grow();
    const at = 9 * count;
    for (let k = 0; k < 9; k += 1) corners[at + k] = numbers[from + k] ?? Number.NaN;
    const doubled = doubledArea(corners, at);
    if (!Number.isFinite(doubled)) unreal += 1;
    else if (doubled === 0) flat += 1;
    else {
      partOf[count] = placeOfPart();
      count += 1;
    }
  };
  const finish: TriangleStore['finish'] = (rename = (names) => names) => {
    if (count === 0) throw new ModelError('broken', 'there is no surface in it');
    const names = rename([...places.keys()]);
    const parts = [...new Set(names)];
    const merged = names.map((name) => parts.indexOf(name));
    const own = partOf.subarray(0, count);
    if (parts.length < names.length) for (const [at, place] of own.entries()) own[at] = merged[place] ?? 0;
    return { corners: corners.subarray(0, 9 * count), partOf: own, parts, flat, unreal };
  };
  return { startPart, add, finish };
}

const tooMany = (found: string, most: number): ModelError =>
  new ModelError('too large', found, most.toLocaleString('en'));

function enlarge<Numbers extends Float32Array | Uint8Array>(old: Numbers, larger: Numbers): Numbers {
  larger.set(old);
  return larger;
}

/** Twice the area of the triangle whose nine numbers begin at `at`; no finite number where one of them is none. */
export function doubledArea(corners: Float32Array, at: number): number {
  const [x, y, z] = crossOf(corners, at);
  return Math.sqrt(x * x + y * y + z * z);
}

/** The normal of the triangle whose nine numbers begin at `at`, as long as twice its area. */
export function crossOf(c: Float32Array, at: number): readonly [number, number, number] {
  const [x, y, z] = [c[at] as number, c[at + 1] as number, c[at + 2] as number];
  const [ax, ay, az] = [(c[at + 3] as number) - x, (c[at + 4] as number) - y, (c[at + 5] as number) - z];
  const [bx, by, bz] = [(c[at + 6] as number) - x, (c[at + 7] as number) - y, (c[at + 8] as number) - z];
  return [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
}
