// Surface: OBJ. In: bytes. Out: a mesh; faces are fans of triangles about their first corner. The format has no unit.
// Statements as in the published specification of the format, version 3.0: v, f, o, g; all others are passed over.
import { ModelError } from './model-error.js';
import { realNumber } from './read-stl.js';
import { scanLines } from './scan-lines.js';
import { type Mesh, openStore, type TriangleStore } from './triangle-store.js';

interface Scene {
  readonly store: TriangleStore;
  numbers: Float64Array;
  vertices: number;
  object: string;
  group: string;
  readonly corners: Float64Array;
}

/**
 * Parts are its objects where faces belong to several, else its groups. A face that names a corner which is not there, or
 * two corners, is damage.
 */
export function readObj(bytes: Uint8Array): Mesh {
  const scene: Scene = {
    store: openStore(),
    numbers: new Float64Array(3 * 2 ** 14),
    vertices: 0,
    object: '',
    group: '',
    corners: new Float64Array(9),
  };
  scanLines(bytes, (line, number) => {
    if (line.startsWith('v ') || line.startsWith('v\t')) addVertex(line, scene);
    else if (line.startsWith('f ') || line.startsWith('f\t')) addFace(line, number, scene);
    else if (/^[og](?:\s|$)/.test(line)) startPart(line, scene);
    else if (line.includes('\0')) throw new ModelError('broken', 'it is some other file');
  });
  return scene.store.finish(nameParts);
}

function addVertex(line: string, scene: Scene): void {
  const at = 3 * scene.vertices;
  if (at === scene.numbers.length) {
    const larger = new Float64Array(2 * at);
    larger.set(scene.numbers);
    scene.numbers = larger;
  }
  const words = line.split(/\s+/);
  for (let k = 0; k < 3; k += 1) scene.numbers[at + k] = realNumber(words[k + 1] ?? '');
  scene.vertices += 1;
}

function addFace(line: string, number: number, scene: Scene): void {
  const { corners, store } = scene;
  const places = line
    .split(/\s+/)
    .slice(1)
    .map((word) => placeOf(word, number, scene));
  if (places.length < 3) throw new ModelError('broken', `the face in line ${number} has no three corners`);
  for (let last = 2; last < places.length; last += 1) {
    [places[0], places[last - 1], places[last]].forEach((place = 0, corner) => {
      for (let k = 0; k < 3; k += 1) corners[3 * corner + k] = scene.numbers[3 * place + k] ?? Number.NaN;
    });
    store.add(corners);
  }
}

/** `7`, `7/1`, `7//3`, `7/1/3`; a negative one counts back from the last vertex. */
function placeOf(word: string, number: number, { vertices }: Scene): number {
  const written = Number.parseInt(word, 10);
  const place = written < 0 ? vertices + written : written - 1;
  if (place >= 0 && place < vertices) return place;
  throw new ModelError('broken', `the face in line ${number} has a corner that is not there`);
}

const between = '\n';

function startPart(line: string, scene: Scene): void {
  const name = line.slice(1).trim();
  if (line.startsWith('o')) scene.object = name;
  else scene.group = name.split(/\s+/)[0] ?? '';
  scene.store.startPart(`${scene.object}${between}${scene.group}`);
}

/** Of objects with groups in them. */
function nameParts(names: readonly string[]): readonly string[] {
  const pairs = names.map((name) => name.split(between));
  const areObjects = new Set(pairs.map(([object]) => object)).size > 1;
  return pairs.map(([object = '', group = '']) => (areObjects ? object : group || object));
}
