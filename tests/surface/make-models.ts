// Model files made for tests: bodies with closed formulas, written in each format.
import { makeZip } from '../sheets/read/make-files.js';

export type Point = readonly [number, number, number];
export type Triangle = readonly [Point, Point, Point];
/** Triangles turn left around as seen from outside. */
export type Body = readonly Triangle[];

type Surface = (u: number, v: number) => Point;

/** A surface over the unit square, in `columns` x `rows` cells of two triangles; those without area are left out. */
function tile(surface: Surface, columns: number, rows: number): Body {
  const at = (column: number, row: number): Point => surface(column / columns, row / rows);
  const cells = Array.from({ length: columns * rows }, (_, index) => [
    index % columns,
    Math.floor(index / columns),
  ]);
  return cells.flatMap(([column = 0, row = 0]) => {
    const [a, b] = [at(column, row), at(column + 1, row)];
    const [c, d] = [at(column + 1, row + 1), at(column, row + 1)];
    return [
      [a, b, c],
      [a, c, d],
    ].filter((corners): corners is [Point, Point, Point] => areaOf(corners as unknown as Triangle) > 1e-12);
  });
}

function areaOf([a, b, c]: Triangle): number {
  const [p, q] = [minus(b, a), minus(c, a)];
  return Math.hypot(p[1] * q[2] - p[2] * q[1], p[2] * q[0] - p[0] * q[2], p[0] * q[1] - p[1] * q[0]) / 2;
}

const minus = (p: Point, q: Point): Point => [p[0] - q[0], p[1] - q[1], p[2] - q[2]];

const turn = (u: number): readonly [number, number] => [Math.cos(2 * Math.PI * u), Math.sin(2 * Math.PI * u)];

/** Sphere of radius `r` about the origin. */
export const sphere = (r: number, cells = 64): Body =>
  tile(
    (u, v) => {
      const [cos, sin] = turn(u);
      const [up, out] = [-r * Math.cos(Math.PI * v), r * Math.sin(Math.PI * v)];
      return [out * cos, out * sin, up];
    },
    2 * cells,
    cells,
  );

/** About z; `out` from the middle to the middle of the tube, `thick` the tube's radius. */
export const torus = (out: number, thick: number, cells = 96): Body =>
  tile(
    (u, v) => {
      const [[cos, sin], [across, up]] = [turn(u), turn(v)];
      return [(out + thick * across) * cos, (out + thick * across) * sin, thick * up];
    },
    2 * cells,
    cells,
  );

/** From z = 0 up to `high`, closed. */
export const cylinder = (r: number, high: number, cells = 128): Body => [
  ...disc(r, 0, { cells, isDown: true }),
  ...wall(r, [0, high], { cells }),
  ...disc(r, high, { cells }),
];

interface Facing {
  readonly cells?: number;
  /** Faces down, or inwards. */
  readonly isDown?: boolean;
}

export const disc = (r: number, z: number, { cells = 128, isDown = false }: Facing = {}): Body =>
  face(
    tile(
      (u, v) => {
        const [cos, sin] = turn(u);
        return [(1 - v) * r * cos, (1 - v) * r * sin, z];
      },
      cells,
      cells / 8,
    ),
    isDown,
  );

export const wall = (
  r: number,
  [from, to]: readonly [number, number],
  { cells = 128, isDown = false }: Facing = {},
): Body =>
  face(
    tile(
      (u, v) => {
        const [cos, sin] = turn(u);
        return [r * cos, r * sin, from + v * (to - from)];
      },
      cells,
      cells / 8,
    ),
    isDown,
  );

const face = (body: Body, isTurned: boolean): Body =>
  isTurned ? body.map(([a, b, c]): Triangle => [a, c, b]) : body;

/** Inside out. */
export const turnOver = (body: Body): Body => face(body, true);

/** A cube of sides `a` from the origin on, each of its six faces in `cells` x `cells` squares. */
export const cube = (a: number, cells = 8): Body => {
  const faces: Surface[] = [
    (u, v) => [v * a, u * a, 0],
    (u, v) => [u * a, v * a, a],
    (u, v) => [u * a, 0, v * a],
    (u, v) => [v * a, a, u * a],
    (u, v) => [0, v * a, u * a],
    (u, v) => [a, u * a, v * a],
  ];
  return faces.flatMap((surface) => tile(surface, cells, cells));
};

export const move = (body: Body, to: (point: Point) => Point): Body =>
  body.map(([a, b, c]): Triangle => [to(a), to(b), to(c)]);

/** By an angle in degrees about the axis (1, 2, 3), Rodrigues' formula. */
export function rotate(body: Body, degrees: number): Body {
  const axis = [1, 2, 3].map((k) => k / Math.sqrt(14)) as unknown as Point;
  const [cos, sin] = turn(degrees / 360);
  return move(body, (p) => {
    const along = (1 - cos) * (p[0] * axis[0] + p[1] * axis[1] + p[2] * axis[2]);
    const cross: Point = [
      axis[1] * p[2] - axis[2] * p[1],
      axis[2] * p[0] - axis[0] * p[2],
      axis[0] * p[1] - axis[1] * p[0],
    ];
    return [0, 1, 2].map(
      (k) => (p[k] as number) * cos + (cross[k] as number) * sin + (axis[k] as number) * along,
    ) as unknown as Point;
  });
}

/** Bodies by name. */
export type Parts = Readonly<Record<string, Body>>;

const all = (parts: Parts): Triangle[] => Object.values(parts).flat();

export function binaryStl(parts: Parts): Buffer {
  const triangles = all(parts);
  const bytes = Buffer.alloc(84 + 50 * triangles.length);
  bytes.write('solid is how many binary files begin');
  bytes.writeUInt32LE(triangles.length, 80);
  for (const [index, corners] of triangles.entries())
    for (const [k, value] of corners.flat().entries())
      bytes.writeFloatLE(value, 84 + 50 * index + 12 + 4 * k);
  return bytes;
}

export function textStl(parts: Parts): Buffer {
  const facet = (corners: Triangle): string =>
    `facet normal 0 0 0\n  outer loop\n${corners.map((p) => `    vertex ${p.join(' ')}\n`).join('')}  endloop\nendfacet\n`;
  const solid = ([name, body]: [string, Body]): string =>
    `solid ${name}\n${body.map(facet).join('')}endsolid ${name}\n`;
  return Buffer.from(Object.entries(parts).map(solid).join(''));
}

/** Corners are shared within a part. */
export function obj(parts: Parts, statement: 'o' | 'g' = 'o'): Buffer {
  let count = 0;
  const part = ([name, body]: [string, Body]): string => {
    const { points, faces } = indexed(body);
    const lines = [
      `${statement} ${name}`,
      ...points.map((p) => `v ${p.join(' ')}`),
      ...faces.map((face) => `f ${face.map((place) => place + count + 1).join(' ')}`),
    ];
    count += points.length;
    return `${lines.join('\n')}\n`;
  };
  return Buffer.from(`# made for a test\n${Object.entries(parts).map(part).join('')}`);
}

function indexed(body: Body): { points: Point[]; faces: number[][] } {
  const places = new Map<string, number>();
  const points: Point[] = [];
  const faces = body.map((corners) =>
    corners.map((point) => {
      const place = places.get(point.join(' ')) ?? points.push(point) - 1;
      places.set(point.join(' '), place);
      return place;
    }),
  );
  return { points, faces };
}

const core = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';

const relations =
  '<?xml version="1.0"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">' +
  '<Relationship Target="/3D/3dmodel.model" Id="rel0" Type="http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel"/></Relationships>';

const types =
  '<?xml version="1.0"?><Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types">' +
  '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>' +
  '<Default Extension="model" ContentType="application/vnd.ms-package.3dmanufacturing-3dmodel+xml"/></Types>';

/** A package around a model part as written. */
export const packModel = (model: string, others: Readonly<Record<string, string>> = {}): Buffer =>
  makeZip({ '[Content_Types].xml': types, '_rels/.rels': relations, '3D/3dmodel.model': model, ...others });

export const modelXml = (inner: string, unit = 'millimeter'): string =>
  `<?xml version="1.0" encoding="UTF-8"?>\n<model unit="${unit}" xml:lang="en" xmlns="${core}">${inner}</model>`;

export function objectXml(id: number, name: string, body: Body): string {
  const { points, faces } = indexed(body);
  const vertices = points.map(([x, y, z]) => `<vertex x="${x}" y="${y}" z="${z}"/>`).join('');
  const triangles = faces.map(([a, b, c]) => `<triangle v1="${a}" v2="${b}" v3="${c}"/>`).join('');
  return `<object id="${id}" name="${name}" type="model"><mesh><vertices>${vertices}</vertices><triangles>${triangles}</triangles></mesh></object>`;
}

/** An object a part, each in the build. */
export function threeMf(parts: Parts, unit = 'millimeter'): Buffer {
  const names = Object.keys(parts);
  const objects = names.map((name, index) => objectXml(index + 1, name, parts[name] ?? [])).join('');
  const items = names.map((_, index) => `<item objectid="${index + 1}"/>`).join('');
  return packModel(modelXml(`<resources>${objects}</resources><build>${items}</build>`, unit));
}
