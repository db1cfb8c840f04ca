// Export: what every workbook that we write has in common. In: the plan's day. Out: a workbook of the library to put
// sheets into, and its bytes.
import type { Workbook, Worksheet } from 'exceljs';
import { setZipTimes } from './set-zip-times.js';

/** The library, loaded once; a call ahead of time saves the wait. */
export const loadWorkbookLibrary = () => import('exceljs');

/** For what stands out. The library writes a font as it is given: without a name and size, each program takes its own. */
export const boldFont = { bold: true, name: 'Calibri', size: 11 };

/** A workbook without sheets. Name and dates in its own record: the plan's day (YYYY-MM-DD), never the clock's. */
export async function openWorkbook(date: string): Promise<Workbook> {
  const { default: exceljs } = await loadWorkbookLibrary();
  const workbook = new exceljs.Workbook();
  const day = new Date(`${date}T00:00:00Z`);
  workbook.creator = 'Halfpot';
  workbook.lastModifiedBy = 'Halfpot';
  workbook.created = day;
  workbook.modified = day;
  return workbook;
}

/** An empty sheet: row 1 stays in sight, and is repeated on paper, where the sheet is as wide as one page. */
export function addSheet(workbook: Workbook, name: string): Worksheet {
  return workbook.addWorksheet(name, {
    // The library leaves columns of this width to the default, which it does not write by itself.
    properties: { defaultColWidth: 9 },
    views: [{ state: 'frozen', ySplit: 1 }],
    pageSetup: {
      paperSize: 9,
      orientation: 'landscape',
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      printTitlesRow: '1:1',
    },
    headerFooter: { oddFooter: '&L&A&RPage &P of &N' },
  });
}

/** Harder than this, packing takes a third longer, for a tenth of the bytes. */
const zip = { compressionOptions: { level: 3 } };

/** The bytes of an XLSX file; the same sheets and day give the same bytes at any time. */
export async function packWorkbook(workbook: Workbook, date: string): Promise<Uint8Array> {
  const bytes = await workbook.xlsx.writeBuffer({ zip });
  return setZipTimes(new Uint8Array(bytes), date);
}
