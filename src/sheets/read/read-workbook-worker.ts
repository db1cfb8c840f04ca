// Readers: the thread in which a workbook is read, so that whatever it holds cannot take the program with it. In: bytes and
// name. Out: one message.
import { parentPort, workerData } from 'node:worker_threads';
import type { SheetName } from '../../model/words.js';
import type { ReadGrids } from './grid.js';
import { readWorkbook } from './read-workbook.js';
import type { Reply } from './run-apart.js';

interface ReadRequest {
  readonly bytes: Uint8Array;
  readonly file: string;
  readonly called?: SheetName;
}

const { bytes, file, called } = workerData as ReadRequest;
const send = (reply: Reply<ReadGrids>): void => parentPort?.postMessage(reply);

readWorkbook(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length), file, called).then(
  (answer) => send({ answer }),
  (failure: unknown) => send({ failure }),
);
