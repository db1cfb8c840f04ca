// Surface: what of a model is seen from outside. In: a mesh. Out: its areas by part, and how much sky is free over them.
import { type MeasuredModel, type MeasuredPiece, mostSkyPercent } from '../model/measured.js';
import { buildTree, type Tree } from './build-tree.js';
import { type Axis, findGround, type Ground } from './find-ground.js';
import { countFree, type Vector } from './look-around.js';
import type { ReadModel } from './read-model.js';
import { type Stratum, scatterPoints, stratify } from './scatter-points.js';
import { crossOf, type Mesh } from './triangle-store.js';

/** Of the model's largest extent: so far off the surface a point is looked from, clear of its own triangle. */
const clearance = 2e-6;

interface Seen {
  readonly open: number[];
  readonly hidden: number[];
}

/** The same mesh gives the same figures to the last digit. */
export function measureSurface({ mesh, unitMm }: ReadModel, mayBeY: boolean): MeasuredModel {
  const ground = findGround(mesh.corners, mayBeY);
  const look = openLook(mesh, ground);
  const { strata, strataOf } = stratify(mesh, ground);
  const seen = new Map(strata.map((one): [Stratum, Seen] => [one, { open: noneSeen(), hidden: noneSeen() }]));
  let inwards = 0;
  scatterPoints(strataOf, mesh, (triangle, at) => {
    const stratum = strataOf[triangle] as Stratum;
    const [outer, inner] = look(triangle, { ...at, isSole: stratum.isSole });
    // Of a closed body one side sees nothing; of an open sheet neither is inside.
    if (Math.min(outer, inner) === 0 && !stratum.isSole)
      inwards += Math.sign(inner - outer) * (stratum.area / stratum.points);
    const { open, hidden } = seen.get(stratum) as Seen;
    add(open, Math.max(outer, inner));
    add(hidden, Math.min(outer, inner));
  });
  return {
    ...(unitMm === undefined ? {} : { unitMm }),
    high: ground.sizes[ground.up],
    up: (['x', 'y', 'z'] as const)[ground.up],
    triangles: strataOf.length,
    flat: mesh.flat,
    unreal: mesh.unreal,
    isInsideOut: inwards > 0,
    pieces: strata.map((one): MeasuredPiece => ({ ...one, ...(seen.get(one) as Seen) })),
  };
}

const noneSeen = (): number[] => new Array<number>(mostSkyPercent + 1).fill(0);

function add(counts: number[], at: number): void {
  counts[at] = (counts[at] ?? 0) + 1;
}

interface From {
  readonly u: number;
  readonly v: number;
  readonly number: number;
  readonly isSole: boolean;
}

/** Free sky on the side that the triangle's corners turn left around, and on the other; 0 for the side on the ground. */
function openLook({ corners }: Mesh, ground: Ground) {
  const tree: Tree = buildTree(corners);
  const off = clearance * Math.max(...ground.sizes);
  return (triangle: number, { u, v, number, isSole }: From): readonly [number, number] => {
    const normal = unit(crossOf(corners, 9 * triangle));
    const point = pointOf(corners, 9 * triangle, { u, v });
    const side = (sign: 1 | -1): number => {
      if (isSole && sign * normal[ground.up] < 0) return 0;
      const facing = normal.map((value) => sign * value) as unknown as Vector;
      const from = point.map((value, k) => value + off * (facing[k] as number)) as unknown as Vector;
      return countFree(tree, from, { normal: facing, turn: number, most: mostSkyPercent });
    };
    return [side(1), side(-1)];
  };
}

function unit([x, y, z]: Vector): Vector {
  const length = Math.sqrt(x * x + y * y + z * z);
  return [x / length, y / length, z / length];
}

function pointOf(corners: Float32Array, at: number, { u, v }: { u: number; v: number }): Vector {
  return ([0, 1, 2] as const).map((k: Axis) => {
    const first = corners[at + k] as number;
    const [second, third] = [corners[at + 3 + k] as number, corners[at + 6 + k] as number];
    return first + u * (second - first) + v * (third - first);
  }) as unknown as Vector;
}
