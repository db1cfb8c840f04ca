// Surface: one model part of a 3MF. In: its XML in chunks. Out: its objects as they are written, and what its build holds.
import { readAttributes, scanXml } from '../unpack/scan-xml.js';
import { ModelError } from './model-error.js';
import { realNumber } from './read-stl.js';
import { readTransform, type Transform } from './transform.js';

/** An object used as a component of another, or by the build. */
export interface Use {
  readonly objectId: string;
  readonly transform: Transform;
  /** The part that holds it; absent: the one that it is used in. */
  readonly path?: string | undefined;
}

interface ModelObject {
  readonly name: string;
  readonly type: string;
  /** Three numbers each. */
  readonly vertices: Float64Array;
  /** Three places among the vertices each. */
  readonly triangles: Uint32Array;
  readonly components: readonly Use[];
}

export interface ModelPart {
  readonly unit: string;
  readonly objects: ReadonlyMap<string, ModelObject>;
  readonly build: readonly Use[];
}

/** Throws a ModelError where it is no model, an UnpackError where it is no XML. */
export async function readModelPart(chunks: AsyncIterable<Uint8Array>): Promise<ModelPart> {
  let [unit, depth] = ['millimeter', 0];
  const objects = new Map<string, ModelObject>();
  const build: Use[] = [];
  let draft: Draft | undefined;
  const starts: Readonly<Record<string, (written: string) => void>> = {
    model: (written) => {
      unit = readAttributes(written).get('unit') ?? unit;
    },
    object: (written) => {
      draft = startObject(written);
    },
    vertex: (written) => draft?.vertices.add(written, ['x', 'y', 'z']),
    triangle: (written) => draft?.triangles.add(written, ['v1', 'v2', 'v3']),
    component: (written) => void draft?.components.push(readUse(written)),
    item: (written) => void build.push(readUse(written)),
  };
  await scanXml(chunks, {
    open: (name, written) => {
      if (depth === 0 && name !== 'model') throw new ModelError('broken', 'it is some other file');
      depth += 1;
      if (Object.hasOwn(starts, name)) starts[name]?.(written);
    },
    close: (name) => {
      depth -= 1;
      if (name !== 'object' || draft === undefined) return;
      const { id, vertices, triangles, ...rest } = draft;
      objects.set(id, { ...rest, vertices: vertices.numbers(), triangles: placesOf(triangles.numbers()) });
      draft = undefined;
    },
  });
  return { unit, objects, build };
}

interface Draft {
  readonly id: string;
  readonly name: string;
  readonly type: string;
  readonly vertices: NumberList;
  readonly triangles: NumberList;
  readonly components: Use[];
}

function startObject(written: string): Draft {
  const attributes = readAttributes(written);
  return {
    id: attributes.get('id') ?? '',
    name: attributes.get('name') ?? '',
    type: attributes.get('type') ?? 'model',
    vertices: openNumbers(),
    triangles: openNumbers(),
    components: [],
  };
}

function placesOf(numbers: Float64Array): Uint32Array {
  const places = Uint32Array.from(numbers);
  if (numbers.some((number, at) => number !== places[at]))
    throw new ModelError('broken', 'a triangle has a corner that is not there');
  return places;
}

function readUse(written: string): Use {
  const attributes = readAttributes(written);
  const transform = readTransform(attributes.get('transform'));
  if (transform === undefined) throw new ModelError('broken', 'an object of it stands nowhere');
  return { objectId: attributes.get('objectid') ?? '', transform, path: attributes.get('path') };
}

interface NumberList {
  readonly add: (written: string, names: readonly string[]) => void;
  readonly numbers: () => Float64Array;
}

/** Four million triangles, with as many vertices as no model has. */
const MOST_NUMBERS = 2 ** 24;

/** What is missing or no number counts as not a number. */
function openNumbers(): NumberList {
  let numbers = new Float64Array(48);
  let count = 0;
  return {
    add: (written, names) => {
      if (count >= MOST_NUMBERS)
        throw new ModelError('too large', 'more corners', Math.floor(MOST_NUMBERS / 3).toLocaleString('en'));
      if (count + names.length > numbers.length) {
        const larger = new Float64Array(2 * numbers.length);
        larger.set(numbers);
        numbers = larger;
      }
      const attributes = readAttributes(written);
      for (const name of names) numbers[count++] = realNumber(attributes.get(name) ?? '');
    },
    numbers: () => numbers.slice(0, count),
  };
}
