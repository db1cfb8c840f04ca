// Export: the reorder list as a workbook. In: a ReorderView. Out: bytes of an XLSX file: one list by shop, with codes as
// text, numbers as numbers and totals as formulas that carry their results.
import type { Workbook, Worksheet } from 'exceljs';
import { fitCellText } from '../workbook/fit-cell-text.js';
import { addSheet, boldFont, openWorkbook, packWorkbook } from '../workbook/open-workbook.js';
import { listReorderRows, type SheetRow } from './list-reorder-rows.js';
import type { ReorderView } from './view-reorder.js';

const columns = [
  { key: 'for', header: 'For', least: 7, look: 'text' },
  { key: 'shop', header: 'Shop', least: 12, look: 'text' },
  { key: 'offer', header: 'Offer', least: 16, look: 'text' },
  { key: 'paint', header: 'Paint', least: 14, look: 'text' },
  { key: 'sizeMl', header: 'Size ml', least: 8, look: 'number' },
  { key: 'container', header: 'Container', least: 10, look: 'indented' },
  { key: 'pots', header: 'Pots', least: 6, look: 'number' },
  { key: 'offers', header: 'Offers', least: 7, look: 'number' },
  { key: 'price', header: 'Price', least: 13, look: 'number' },
  { key: 'cost', header: 'Cost', least: 14, look: 'number' },
  { key: 'code', header: 'Code', least: 15, look: 'indented' },
  { key: 'coversMl', header: 'Covers ml', least: 10, look: 'number' },
  { key: 'overMl', header: 'Left over ml', least: 13, look: 'number' },
  { key: 'note', header: 'Note', least: 10, look: 'indented' },
] as const;

const widest = 48;

/** Numbers stand at the right; a text beside one keeps off it. */
const alignments = {
  number: { horizontal: 'right' },
  indented: { horizontal: 'left', indent: 1 },
  text: { horizontal: 'left' },
} as const;

/**
 * The whole workbook; the same view gives the same bytes. Text that looks like a formula is stored as text, which no
 * spreadsheet calculates. Nothing to buy gives the header and a total of 0.
 */
export async function writeReorderWorkbook(view: ReorderView): Promise<Uint8Array> {
  const workbook = await openWorkbook(view.date);
  const rows = listReorderRows(view);
  const sheet = addList(workbook, rows);
  for (const row of rows) addRow(sheet, row, currencyFormat(view));
  return packWorkbook(workbook, view.date);
}

function addList(workbook: Workbook, rows: readonly SheetRow[]): Worksheet {
  const sheet = addSheet(workbook, 'reorder');
  sheet.columns = columns.map(({ key, header, least, look }) => ({
    key,
    header,
    style: { alignment: alignments[look] },
    width: Math.min(widest, Math.max(least, ...rows.map((row) => textLength(row[key]) + 2))),
  }));
  sheet.getRow(1).font = boldFont;
  sheet.getRow(1).border = { bottom: { style: 'thin' } };
  return sheet;
}

/** Amounts have a least width of their own, so only text counts here. */
function textLength(value: SheetRow[keyof SheetRow]): number {
  return typeof value === 'string' ? value.length : 0;
}

function addRow(sheet: Worksheet, row: SheetRow, format: string): void {
  const added = sheet.addRow(fitTexts(row));
  if (row.strong) added.font = boldFont;
  added.getCell('price').numFmt = format;
  added.getCell('cost').numFmt = format;
  added.getCell('code').numFmt = '@';
}

const fitTexts = (row: SheetRow): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(row).map(([key, cell]) => [key, typeof cell === 'string' ? fitCellText(cell) : cell]),
  );

/** The ISO 4217 code and as many digits as its minor unit has, such as `[$EUR] #,##0.00`. */
function currencyFormat({ currency, minorDigits }: ReorderView): string {
  const digits = minorDigits === 0 ? '' : `.${'0'.repeat(minorDigits)}`;
  return `[$${currency}] #,##0${digits}`;
}
