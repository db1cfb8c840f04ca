// Readers: a workbook read in a thread with bounds on its memory and time. In: its bytes and name. Out: grids, problems.
// The reader keeps bounds of its own; these hold whatever it may have overlooked.
import { Worker } from 'node:worker_threads';
import { problem } from '../../problems/catalogue.js';
import type { ReadGrids } from './grid.js';
import type { ReadReply, ReadRequest } from './read-workbook-worker.js';

export interface Bounds {
  readonly seconds: number;
  /** Of JavaScript's own memory. */
  readonly heapMb: number;
  /** What runs in the thread. */
  readonly script: URL;
}

/** The largest workbook that can be read takes a few seconds and half of the memory. */
const usualBounds: Bounds = {
  seconds: 25,
  heapMb: 256,
  script: new URL('./read-workbook-worker.js', import.meta.url),
};

/** As `readWorkbook`; a workbook that runs into a bound is one problem. The bytes are handed over and gone for the caller. */
export function readWorkbookApart(bytes: Buffer, file: string, bounds = usualBounds): Promise<ReadGrids> {
  const { seconds, heapMb, script } = bounds;
  const request: ReadRequest = { bytes, file };
  // Small buffers may share a block of memory, which can't be handed over; they are copied.
  const isOwn = bytes.buffer instanceof ArrayBuffer && bytes.buffer.byteLength > Buffer.poolSize;
  const worker = new Worker(script, {
    workerData: request,
    transferList: isOwn ? [bytes.buffer] : [],
    resourceLimits: { maxOldGenerationSizeMb: heapMb, maxYoungGenerationSizeMb: 32 },
  });
  const refused = (found: string, expected: string): ReadGrids => ({
    grids: [],
    seen: new Set(),
    problems: [problem('too-large-file', { file }, { found, expected })],
  });
  return new Promise<ReadGrids>((resolve, reject) => {
    const timer = setTimeout(() => {
      resolve(refused('it takes more time', `${seconds} seconds`));
      void worker.terminate();
    }, seconds * 1000);
    worker.on('message', (reply: ReadReply) => {
      if ('grids' in reply) resolve(reply.grids);
      else reject(reply.failure);
    });
    worker.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'ERR_WORKER_OUT_OF_MEMORY') resolve(refused('it takes more memory', `${heapMb} MB`));
      else reject(error);
    });
    worker.on('exit', () => {
      clearTimeout(timer);
      reject(new Error('the reader ended before it had an answer'));
    });
  });
}
