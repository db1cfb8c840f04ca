// Readers: one workbook, apart from the rest of the program. In: its bytes and name. Out: its grids, problems.
import type { SheetName } from '../../model/words.js';
import type { ReadGrids } from './grid.js';

/** In a thread of its own. Sources that run as they are, in a test, have no compiled thread beside them. */
export async function readBook(bytes: Buffer, file: string, called?: SheetName): Promise<ReadGrids> {
  if (import.meta.url.endsWith('.ts'))
    return (await import('./read-workbook.js')).readWorkbook(bytes, file, called);
  return (await import('./read-workbook-apart.js')).readWorkbookApart(bytes, { file, called });
}
