// Readers: one workbook, apart from the rest of the program. In: its bytes and name. Out: its grids, problems.
import type { ReadGrids } from './grid.js';

/** In a thread of its own. Sources that run as they are, in a test, have no compiled thread beside them. */
export async function readBook(bytes: Buffer, file: string): Promise<ReadGrids> {
  if (import.meta.url.endsWith('.ts')) return (await import('./read-workbook.js')).readWorkbook(bytes, file);
  return (await import('./read-workbook-apart.js')).readWorkbookApart(bytes, file);
}
