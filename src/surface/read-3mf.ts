// Surface: 3MF. In: bytes. Out: a mesh of all that its build holds, and its unit. Transforms are carried out.
// 3MF Core Specification 1.3 (parts, objects, components, transforms, units) and Production Extension 1.1 (paths).
import { type OpenZip, openZip } from '../unpack/open-zip.js';
import { readAttributes, scanXml } from '../unpack/scan-xml.js';
import { ModelError } from './model-error.js';
import { type ModelPart, readModelPart, type Use } from './read-3mf-part.js';
import { multiply, place, type Transform } from './transform.js';
import { type Mesh, openStore, type TriangleStore } from './triangle-store.js';

/** All parts that are looked into, together. Two million triangles take about two hundred. */
const MOST_INFLATED_MB = 1000;
/** In one another; the specification forbids a circle. */
const MOST_DEPTH = 16;
const MOST_USES = 20_000;

const mmOf: Readonly<Record<string, number>> = {
  micron: 0.001,
  millimeter: 1,
  centimeter: 10,
  inch: 25.4,
  foot: 304.8,
  meter: 1000,
};

/** Objects that hold up others while they are printed are left out, and so is what the build does not hold. */
export async function read3mf(bytes: Uint8Array): Promise<{ readonly mesh: Mesh; readonly unitMm: number }> {
  const zip = await openZip(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length), MOST_INFLATED_MB);
  const main = await findMain(zip);
  const parts = new Map<string, ModelPart>();
  const partAt = async (path: string): Promise<ModelPart> => {
    const chunks = parts.has(path) ? undefined : zip.inflate(path);
    if (chunks !== undefined) parts.set(path, await readModelPart(chunks));
    const found = parts.get(path);
    if (found === undefined) throw new ModelError('broken', `${path} is not in it`);
    return found;
  };
  const root = await partAt(main);
  const unitMm = mmOf[root.unit];
  if (unitMm === undefined) throw new ModelError('broken', `nobody knows the unit ${root.unit}`);
  const build: Build = { store: openStore(), partAt, uses: 0 };
  for (const item of root.build) await addUse(item, { path: main, name: '', depth: 0 }, build);
  return { mesh: build.store.finish(), unitMm };
}

async function findMain(zip: OpenZip): Promise<string> {
  let found = '';
  const relations = zip.inflate('_rels/.rels');
  if (relations !== undefined)
    await scanXml(relations, {
      open: (name, written) => {
        const attributes = name === 'Relationship' ? readAttributes(written) : undefined;
        if (attributes?.get('Type')?.endsWith('/3dmodel')) found ||= attributes.get('Target') ?? '';
      },
    });
  if (found === '') throw new ModelError('broken', 'it is some other file');
  return found;
}

interface Build {
  readonly store: TriangleStore;
  readonly partAt: (path: string) => Promise<ModelPart>;
  uses: number;
}

interface Around {
  readonly path: string;
  /** Of the nearest object around that has one. */
  readonly name: string;
  readonly depth: number;
  readonly transform?: Transform;
}

async function addUse({ path = '', objectId, transform }: Use, around: Around, build: Build): Promise<void> {
  const { depth } = around;
  build.uses += 1;
  if (depth > MOST_DEPTH) throw new ModelError('broken', 'its objects lie in one another without end');
  if (build.uses > MOST_USES)
    throw new ModelError('too large', 'more components', MOST_USES.toLocaleString('en'));
  const from = path || around.path;
  const object = (await build.partAt(from)).objects.get(objectId);
  if (object === undefined) throw new ModelError('broken', `object ${objectId} is not in it`);
  if (object.type === 'support' || object.type === 'solidsupport') return;
  const name = object.name || around.name;
  const whole = around.transform === undefined ? transform : multiply(transform, around.transform);
  if (object.triangles.length > 0) {
    build.store.startPart(name);
    addTriangles(object, whole, build.store);
  }
  for (const use of object.components)
    await addUse(use, { path: from, name, depth: depth + 1, transform: whole }, build);
}

interface Indexed {
  readonly vertices: Float64Array;
  readonly triangles: Uint32Array;
}

function addTriangles({ vertices, triangles }: Indexed, transform: Transform, store: TriangleStore): void {
  const corners = new Float64Array(9);
  for (let at = 0; at < triangles.length; at += 3) {
    for (let corner = 0; corner < 3; corner += 1) {
      const from = 3 * (triangles[at + corner] as number);
      if (from >= vertices.length)
        throw new ModelError('broken', 'a triangle has a corner that is not there');
      place(vertices, from, { transform, to: corners, at: 3 * corner });
    }
    store.add(corners);
  }
}
