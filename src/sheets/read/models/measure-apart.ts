// Readers: a model file measured in a thread with bounds. In: its bytes and ending. Out: its measures, or why there are none.
import { Worker } from 'node:worker_threads';
import type { ModelFile } from '../../model-file.js';
import type { MeasureReply, MeasureRequest } from './measure-model-worker.js';

export interface Bounds {
  readonly seconds: number;
  /** Of JavaScript's own memory; triangles lie beside it, and are counted. */
  readonly heapMb: number;
  /** What runs in the thread. */
  readonly script: URL;
}

/** The largest text that can be read takes half a minute. */
const usualBounds: Bounds = {
  seconds: 180,
  heapMb: 384,
  script: new URL('./measure-model-worker.js', import.meta.url),
};

/** As `measureBytes`. The bytes are handed over and gone for the caller. */
export function measureApart(bytes: Buffer, ending: string, bounds = usualBounds): Promise<ModelFile> {
  const request: MeasureRequest = { bytes, ending };
  // Small buffers may share a block of memory, which can't be handed over; they are copied.
  const isOwn = bytes.buffer instanceof ArrayBuffer && bytes.buffer.byteLength > Buffer.poolSize;
  const worker = new Worker(bounds.script, {
    workerData: request,
    transferList: isOwn ? [bytes.buffer] : [],
    resourceLimits: { maxOldGenerationSizeMb: bounds.heapMb, maxYoungGenerationSizeMb: 64 },
  });
  const refused = (found: string, most: string): ModelFile => ({
    fault: 'model-too-large',
    detail: `it takes more ${found}, where ${most}`,
  });
  return new Promise<ModelFile>((resolve, reject) => {
    const timer = setTimeout(() => {
      resolve(refused('time', `${bounds.seconds} seconds`));
      void worker.terminate();
    }, bounds.seconds * 1000);
    worker.on('message', (reply: MeasureReply) => {
      if ('file' in reply) resolve(reply.file);
      else reject(reply.failure);
    });
    worker.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'ERR_WORKER_OUT_OF_MEMORY') resolve(refused('memory', `${bounds.heapMb} MB`));
      else reject(error);
    });
    worker.on('exit', () => {
      clearTimeout(timer);
      reject(new Error('the thread ended before it had an answer'));
    });
  });
}
