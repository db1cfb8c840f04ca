// Readers: a model file on the disk, measured once. In: its path. Out: its measures, or why there are none.
import { createHash } from 'node:crypto';
import { statSync } from 'node:fs';
import { open } from 'node:fs/promises';
import { extname } from 'node:path';
import { modelEndings } from '../../../surface/read-model.js';
import type { ModelFile } from '../../model-file.js';
import { readBytes } from '../read-bytes.js';
import { keepMeasured, readKept } from './keep-measured.js';
import { measureVersion } from './measure-bytes.js';

/** Eight million triangles as binary STL, twice what is measured of any. */
const MOST_MODEL_MB = 400;
const CHUNK_BYTES = 8 * 2 ** 20;

/** What a file of the same content gave before is not measured again. Nothing is thrown for what the file holds. */
export async function measureFile(path: string): Promise<ModelFile> {
  const found = statSync(path, { throwIfNoEntry: false });
  if (found === undefined) return { fault: 'model-missing', detail: '' };
  const ending = extname(path).toLowerCase();
  if (!modelEndings.includes(ending)) return { fault: 'model-type', detail: '' };
  // A pipe may never open.
  const kept = found.isFile() ? await findKept(path, ending) : undefined;
  if (kept !== undefined) return { model: kept };
  const read = readBytes(path, { file: path }, MOST_MODEL_MB);
  if ('trouble' in read) {
    const { code, found: detail, expected } = read.trouble;
    return code === 'too-large-file'
      ? { fault: 'model-too-large', detail: `${detail}, where ${expected}` }
      : { fault: 'model-unreadable', detail };
  }
  const key = openKey(ending).update(read.bytes).digest('hex');
  const file = await measure(read.bytes, ending);
  if ('model' in file) await keepMeasured(key, file.model);
  return file;
}

/** Hash of all that measures rest on, but for the bytes of the file. */
const openKey = (ending: string) => createHash('sha256').update(`${measureVersion} ${ending} `);

/** Looks through the file piece by piece, which takes half the time of having it whole. What cannot be read has nothing kept. */
async function findKept(path: string, ending: string) {
  const key = openKey(ending);
  const chunk = Buffer.allocUnsafe(CHUNK_BYTES);
  const file = await open(path).catch(() => undefined);
  if (file === undefined) return undefined;
  try {
    for (let seen = 0; seen <= MOST_MODEL_MB * 2 ** 20; ) {
      const { bytesRead } = await file.read(chunk, 0, CHUNK_BYTES);
      if (bytesRead === 0) return await readKept(key.digest('hex'));
      key.update(chunk.subarray(0, bytesRead));
      seen += bytesRead;
    }
    return undefined;
  } catch {
    return undefined;
  } finally {
    await file.close();
  }
}

/** In a thread of its own. Sources that run as they are, in a test, have no compiled thread beside them. */
async function measure(bytes: Buffer, ending: string): Promise<ModelFile> {
  if (import.meta.url.endsWith('.ts'))
    return (await import('./measure-bytes.js')).measureBytes(bytes, ending);
  return (await import('./measure-apart.js')).measureApart(bytes, ending);
}
