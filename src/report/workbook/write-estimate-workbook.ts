// Export: estimate.xlsx. In: a WorkbookView. Out: the bytes of an XLSX file: plain cells, and formulas with their results.
import type { WorkbookView } from './estimate/workbook-view.js';
import { modelRows } from './model-rows.js';
import { addSheet, openWorkbook, packWorkbook } from './open-workbook.js';

/** The whole workbook; the same view gives the same bytes. See `modelRows` for what becomes of cells. */
export async function writeEstimateWorkbook({ date, sheets }: WorkbookView): Promise<Uint8Array> {
  const workbook = await openWorkbook(date);
  for (const { name, columns } of sheets) {
    const wide = columns.reduce((sum, { width }) => sum + width, 0);
    addSheet(workbook, name, wide).columns = columns.map(({ width }) => ({ width }));
  }
  return packWorkbook(workbook, date, sheets.map(modelRows));
}
