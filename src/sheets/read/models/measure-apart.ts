// Readers: a model file measured in a thread with bounds. In: its bytes and ending. Out: its measures, or why there are none.
import type { ModelFile } from '../../model-file.js';
import { type Bounds, runApart } from '../run-apart.js';

/** The largest text that can be read takes half a minute. Triangles lie beside JavaScript's own memory, and are counted. */
const usualBounds: Bounds = {
  seconds: 180,
  heapMb: 384,
  script: new URL('./measure-model-worker.js', import.meta.url),
};

/** As `measureBytes`. The bytes are handed over and gone for the caller. */
export function measureApart(bytes: Buffer, ending: string, bounds = usualBounds): Promise<ModelFile> {
  return runApart<ModelFile>({ bytes, ending }, bounds, (found, most) => ({
    fault: 'model-too-large',
    detail: `${found}, where ${most}`,
  }));
}
