// Readers: the thread in which a model file is measured, so that the program goes on answering. In: bytes and ending. Out: one message.
import { parentPort, workerData } from 'node:worker_threads';
import type { ModelFile } from '../../model-file.js';
import { measureBytes } from './measure-bytes.js';

export interface MeasureRequest {
  readonly bytes: Uint8Array;
  readonly ending: string;
}

export type MeasureReply = { readonly file: ModelFile } | { readonly failure: unknown };

const { bytes, ending } = workerData as MeasureRequest;
const send = (reply: MeasureReply): void => parentPort?.postMessage(reply);

measureBytes(bytes, ending).then(
  (file) => send({ file }),
  (failure: unknown) => send({ failure }),
);
