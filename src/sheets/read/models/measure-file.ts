// Readers: a model file on the disk, measured once. In: its path. Out: its measures, or why there are none.
import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { extname } from 'node:path';
import { modelEndings } from '../../../surface/read-model.js';
import type { ModelFile } from '../../model-file.js';
import { readBytes } from '../read-bytes.js';
import { keepMeasured, readKept } from './keep-measured.js';
import { measureVersion } from './measure-bytes.js';

/** Eight million triangles as binary STL, twice what is measured of any. */
const MOST_MODEL_MB = 400;

/** What a file of the same content gave before is not measured again. Nothing is thrown for what the file holds. */
export async function measureFile(path: string): Promise<ModelFile> {
  if (!existsSync(path)) return { fault: 'model-missing', detail: '' };
  const ending = extname(path).toLowerCase();
  if (!modelEndings.includes(ending)) return { fault: 'model-type', detail: '' };
  const read = await readBytes(path, { file: path }, MOST_MODEL_MB);
  if ('trouble' in read) {
    const { code, found, expected } = read.trouble;
    return code === 'too-large-file'
      ? { fault: 'model-too-large', detail: `${found}, where ${expected}` }
      : { fault: 'model-unreadable', detail: found };
  }
  const key = createHash('sha256').update(`${measureVersion} ${ending} `).update(read.bytes).digest('hex');
  const kept = await readKept(key);
  if (kept !== undefined) return { model: kept };
  const file = await measure(read.bytes, ending);
  if ('model' in file) await keepMeasured(key, file.model);
  return file;
}

/** In a thread of its own. Sources that run as they are, in a test, have no compiled thread beside them. */
async function measure(bytes: Buffer, ending: string): Promise<ModelFile> {
  if (import.meta.url.endsWith('.ts'))
    return (await import('./measure-bytes.js')).measureBytes(bytes, ending);
  return (await import('./measure-apart.js')).measureApart(bytes, ending);
}
