// Readers: the thread in which a model file is measured, so that the program goes on answering. In: bytes and ending. Out: one message.
import { parentPort, workerData } from 'node:worker_threads';
import type { ModelFile } from '../../model-file.js';
import type { Reply } from '../run-apart.js';
import { measureBytes } from './measure-bytes.js';

interface MeasureRequest {
  readonly bytes: Uint8Array;
  readonly ending: string;
}

const { bytes, ending } = workerData as MeasureRequest;
const send = (reply: Reply<ModelFile>): void => parentPort?.postMessage(reply);

measureBytes(bytes, ending).then(
  (answer) => send({ answer }),
  (failure: unknown) => send({ failure }),
);
