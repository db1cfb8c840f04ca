// Readers: a workbook read in a thread with bounds on its memory and time. In: its bytes and name. Out: grids, problems.
// The reader keeps bounds of its own; these hold whatever it may have overlooked.
import type { SheetName } from '../../model/words.js';
import { problem } from '../../problems/catalogue.js';
import { nothingRead, type ReadGrids } from './grid.js';
import { type Bounds, runApart } from './run-apart.js';

/** The largest workbook that can be read takes a few seconds and half of the memory. */
const usualBounds: Bounds = {
  seconds: 25,
  heapMb: 256,
  script: new URL('./read-workbook-worker.js', import.meta.url),
};

/** As `readWorkbook`; a workbook that runs into a bound is one problem. The bytes are handed over and gone for the caller. */
export function readWorkbookApart(
  bytes: Buffer,
  { file, called }: { readonly file: string; readonly called?: SheetName | undefined },
  bounds = usualBounds,
): Promise<ReadGrids> {
  return runApart<ReadGrids>({ bytes, file, called }, bounds, (found, expected) =>
    nothingRead(problem('too-large-file', { file }, { found, expected })),
  );
}
