// Surface: STL, binary and text. In: bytes. Out: a mesh. The format has no unit; a text file may hold several named solids.
// Layout as 3D Systems published it in 1989: 80 bytes, a count, then 50 bytes a triangle, little-endian.
import { ModelError } from './model-error.js';
import { scanLines } from './scan-lines.js';
import { type Mesh, openStore } from './triangle-store.js';

const HEAD_BYTES = 84;
const TRIANGLE_BYTES = 50;
const NORMAL_BYTES = 12;

/** Tells the two kinds apart by their length first: many binary files begin with the word of the text ones. */
export function readStl(bytes: Uint8Array): Mesh {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  const count = bytes.length < HEAD_BYTES ? 0 : view.getUint32(HEAD_BYTES - 4, true);
  const expected = HEAD_BYTES + count * TRIANGLE_BYTES;
  if (count > 0 && expected === bytes.length) return readBinary(view, count);
  const isText = !bytes.subarray(0, 1024).includes(0);
  if (isText) return readText(bytes);
  if (count === 0) throw new ModelError('broken', 'there is no surface in it');
  if (expected > bytes.length)
    throw new ModelError('broken', `it is cut off, with ${triangles(bytes.length)} of ${count} triangles`);
  return readBinary(view, count);
}

const triangles = (length: number): number => Math.max(0, Math.floor((length - HEAD_BYTES) / TRIANGLE_BYTES));

function readBinary(view: DataView, count: number): Mesh {
  const store = openStore(count);
  const corners = new Float64Array(9);
  for (let triangle = 0; triangle < count; triangle += 1) {
    const from = HEAD_BYTES + triangle * TRIANGLE_BYTES + NORMAL_BYTES;
    for (let k = 0; k < 9; k += 1) corners[k] = view.getFloat32(from + 4 * k, true);
    store.add(corners);
  }
  return store.finish();
}

function readText(bytes: Uint8Array): Mesh {
  const store = openStore();
  let corners: number[] = [];
  let [isOpen, solids] = [false, 0];
  const statements: Readonly<Record<string, (rest: readonly string[], line: number) => void>> = {
    solid: (rest) => {
      store.startPart(rest.join(' '));
      [isOpen, solids] = [true, solids + 1];
    },
    vertex: (rest) => void corners.push(...threeNumbers(rest)),
    endfacet: (_, line) => {
      if (corners.length !== 9) throw new ModelError('broken', `line ${line} ends no triangle`);
      store.add(corners);
      corners = [];
    },
    endsolid: () => {
      isOpen = false;
    },
    ...Object.fromEntries(['', 'facet', 'outer', 'endloop'].map((word) => [word, () => undefined])),
  };
  scanLines(bytes, (line, number) => {
    const [word = '', ...rest] = line.split(/\s+/);
    const known = word.toLowerCase();
    const statement = Object.hasOwn(statements, known) ? statements[known] : undefined;
    if (statement === undefined)
      throw new ModelError('broken', solids === 0 ? 'it is some other file' : `line ${number} is no STL`);
    statement(rest, number);
  });
  if (isOpen || corners.length > 0) throw new ModelError('broken', 'it is cut off');
  return store.finish();
}

/** What is missing or no number counts as not a number, and so does its triangle. */
const threeNumbers = ([x = '', y = '', z = '']: readonly string[]): number[] => [x, y, z].map(realNumber);

/** `Number` alone takes nothing for 0. */
export const realNumber = (text: string): number => (text === '' ? Number.NaN : Number(text));
