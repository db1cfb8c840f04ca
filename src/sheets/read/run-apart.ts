// Readers: work on the bytes of one file in a thread with bounds on its memory and time. In: bytes, what runs. Out: its answer.
import { Worker } from 'node:worker_threads';

export interface Bounds {
  readonly seconds: number;
  /** Of JavaScript's own memory; lists of plain numbers lie beside it. */
  readonly heapMb: number;
  /** What runs in the thread; it is given the bytes and what goes with them, and posts one `Reply`. */
  readonly script: URL;
}

export type Reply<Answer> = { readonly answer: Answer } | { readonly failure: unknown };

/** What it ran into, in words, and how much it may. */
type Refuse<Answer> = (found: string, most: string) => Answer;

/** The bytes are handed over and gone for the caller. Work that runs into a bound is refused, not thrown. */
export function runApart<Answer>(
  request: { readonly bytes: Buffer; readonly [more: string]: unknown },
  { seconds, heapMb, script }: Bounds,
  refuse: Refuse<Answer>,
): Promise<Answer> {
  const { buffer } = request.bytes;
  // Small buffers may share a block of memory, which can't be handed over; they are copied.
  const isOwn = buffer instanceof ArrayBuffer && buffer.byteLength > Buffer.poolSize;
  const worker = new Worker(script, {
    workerData: request,
    transferList: isOwn ? [buffer] : [],
    resourceLimits: { maxOldGenerationSizeMb: heapMb, maxYoungGenerationSizeMb: 32 },
  });
  return new Promise<Answer>((resolve, reject) => {
    const timer = setTimeout(() => {
      resolve(refuse('it takes more time', `${seconds} seconds`));
      void worker.terminate();
    }, seconds * 1000);
    worker.on('message', (reply: Reply<Answer>) => {
      if ('answer' in reply) resolve(reply.answer);
      else reject(reply.failure);
    });
    worker.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code === 'ERR_WORKER_OUT_OF_MEMORY') resolve(refuse('it takes more memory', `${heapMb} MB`));
      else reject(error);
    });
    worker.on('exit', () => {
      clearTimeout(timer);
      reject(new Error('the reader ended before it had an answer'));
    });
  });
}
