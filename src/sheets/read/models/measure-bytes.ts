// Readers: one model file measured. In: its bytes, its ending. Out: its measures, or why there are none.
import { measureSurface } from '../../../surface/measure-surface.js';
import { ModelError } from '../../../surface/model-error.js';
import { readModel } from '../../../surface/read-model.js';
import type { ModelFile } from '../../model-file.js';

/** Raised when the same file would give other measures than before: what was kept until then is not used. */
export const measureVersion = 1;

/** OBJ leaves open which way is up. Nothing is thrown for what the file holds. */
export async function measureBytes(bytes: Uint8Array, ending: string): Promise<ModelFile> {
  try {
    return { model: measureSurface(await readModel(bytes, ending), ending === '.obj') };
  } catch (error) {
    if (!(error instanceof ModelError)) throw error;
    return error.fault === 'broken'
      ? { fault: 'model-broken', detail: error.message }
      : { fault: 'model-too-large', detail: `${error.message}, where ${error.most}` };
  }
}
