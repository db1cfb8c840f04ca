// Export: what every workbook that we write has in common. In: the plan's day. Out: a workbook of the library to put
// sheets into, and its bytes.
import type { Workbook, Worksheet } from 'exceljs';
import { type Archive, openArchive } from './open-archive.js';

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

/** So many characters beside each other can still be read on one page. */
const widestPage = 200;

/** An empty sheet: row 1 stays in sight, and is repeated on paper, where a sheet so wide takes as many pages as it must. */
export function addSheet(workbook: Workbook, name: string, width = 0): Worksheet {
  const pages = Math.max(1, Math.ceil(width / widestPage));
  return workbook.addWorksheet(name, {
    // The library leaves columns of this width to the default, which it does not write by itself.
    properties: { defaultColWidth: 9 },
    views: [{ state: 'frozen', ySplit: 1 }],
    pageSetup: {
      paperSize: 9,
      orientation: 'landscape',
      fitToPage: true,
      fitToWidth: pages,
      fitToHeight: 0,
      printTitlesRow: '1:1',
      ...(pages > 1 ? { printTitlesColumn: 'A:B' } : {}),
    },
    headerFooter: { oddFooter: '&L&A&RPage &P of &N' },
  });
}

/** Rows as the library's writer takes them. */
export interface ModelledRows {
  /** From the first cell to the last, such as A1:F12. */
  readonly dimensions: string;
  readonly rows: readonly object[];
}

/** Hands one or more files of a workbook on to an archive. */
type AddFiles = (archive: Pick<Archive, 'append'>, model: object) => Promise<void>;

/** What the library's own `write` is made of, which its types leave out. */
interface FileWriter {
  readonly prepareModel: (model: object, options: object) => void;
  readonly addContentTypes: AddFiles;
  readonly addOfficeRels: AddFiles;
  readonly addWorkbookRels: AddFiles;
  readonly addWorksheets: AddFiles;
  readonly addSharedStrings: AddFiles;
  readonly addThemes: AddFiles;
  readonly addStyles: AddFiles;
  readonly addApp: AddFiles;
  readonly addCore: AddFiles;
  readonly addWorkbook: AddFiles;
}

/**
 * The bytes of an XLSX file; the same sheets and day give the same bytes at any time. These are the steps of the
 * library's `write` (4.4.0), without those for drawings, tables and pictures, which no workbook here has. Only the archive
 * is ours: the library's packs in JavaScript, which was two fifths of a workbook's time. With `rows`, these stand in the
 * sheets, in their order, in the place of what the sheets hold themselves.
 */
export async function packWorkbook(
  workbook: Workbook,
  date: string,
  rows: readonly ModelledRows[] = [],
): Promise<Uint8Array> {
  const writer = workbook.xlsx as unknown as FileWriter;
  const { model } = workbook;
  for (const [at, sheet] of model.worksheets.entries()) Object.assign(sheet, rows[at]);
  const archive = openArchive(date);
  writer.prepareModel(model, {});
  await writer.addContentTypes(archive, model);
  await writer.addOfficeRels(archive, model);
  await writer.addWorkbookRels(archive, model);
  await writer.addWorksheets(archive, model);
  // Texts and styles are known once the sheets are written.
  await writer.addSharedStrings(archive, model);
  await writer.addThemes(archive, model);
  await writer.addStyles(archive, model);
  await writer.addApp(archive, model);
  await writer.addCore(archive, model);
  await writer.addWorkbook(archive, model);
  return archive.close();
}
