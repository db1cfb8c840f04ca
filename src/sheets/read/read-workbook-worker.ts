// Readers: the thread in which a workbook is read, so that whatever it holds cannot take the program with it. In: bytes and
// name. Out: one message.
import { parentPort, workerData } from 'node:worker_threads';
import type { ReadGrids } from './grid.js';
import { readWorkbook } from './read-workbook.js';

export interface ReadRequest {
  readonly bytes: Uint8Array;
  readonly file: string;
}

export type ReadReply = { readonly grids: ReadGrids } | { readonly failure: unknown };

const { bytes, file } = workerData as ReadRequest;
const send = (reply: ReadReply): void => parentPort?.postMessage(reply);

readWorkbook(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length), file).then(
  (grids) => send({ grids }),
  (failure: unknown) => send({ failure }),
);
