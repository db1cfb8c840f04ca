// Surface: a model file of any kind that is known. In: its bytes and the ending of its name. Out: a mesh, and its unit.
import { UnpackError } from '../unpack/unpack-error.js';
import { ModelError } from './model-error.js';
import { read3mf } from './read-3mf.js';
import { readObj } from './read-obj.js';
import { readStl } from './read-stl.js';
import type { Mesh } from './triangle-store.js';

export interface ReadModel {
  readonly mesh: Mesh;
  /** Millimetres in one unit of the file; undefined where it does not say. */
  readonly unitMm: number | undefined;
}

export const modelEndings: readonly string[] = ['.stl', '.obj', '.3mf'];

/** Throws a ModelError for what cannot be measured. The ending is one of `modelEndings`. */
export async function readModel(bytes: Uint8Array, ending: string): Promise<ReadModel> {
  if (bytes.length === 0) throw new ModelError('broken', 'it is empty');
  const isZip = bytes[0] === 0x50 && bytes[1] === 0x4b;
  if (ending !== '.3mf' && !isZip)
    return { mesh: ending === '.obj' ? readObj(bytes) : readStl(bytes), unitMm: undefined };
  if (!isZip) throw new ModelError('broken', 'it is some other file');
  try {
    return await read3mf(bytes);
  } catch (error) {
    throw error instanceof UnpackError ? asModelError(error) : error;
  }
}

function asModelError({ fault, message, most }: UnpackError): ModelError {
  if (fault === 'too large') return new ModelError('too large', message, most);
  return new ModelError('broken', fault === 'locked' ? 'it is encrypted' : 'it is cut off or spoilt');
}
