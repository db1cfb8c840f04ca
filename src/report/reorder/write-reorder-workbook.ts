// Export: the reorder list as a workbook. In: a ReorderView. Out: bytes of an XLSX file: sums, then a sheet for each shop, with
// codes as text, numbers as numbers and totals as formulas that carry their results.
import type { Alignment, CellValue, Workbook } from 'exceljs';
import { toMajor } from '../../model/money.js';
import { fitCellText } from '../workbook/fit-cell-text.js';
import { addSheet, boldFont, openWorkbook, packWorkbook } from '../workbook/open-workbook.js';
import { listOrderSheets, type OrderColumn, type OrderRow, type OrderSheet } from './list-order-sheets.js';
import type { ReorderView } from './view-reorder.js';

const widest = 48;

/**
 * The whole workbook; the same view gives the same bytes. Text that looks like a formula is stored as text, which no
 * spreadsheet calculates.
 */
export async function writeReorderWorkbook(view: ReorderView): Promise<Uint8Array> {
  const workbook = await openWorkbook(view.date);
  for (const sheet of listOrderSheets(view)) writeSheet(workbook, sheet, view);
  return packWorkbook(workbook, view.date);
}

function writeSheet(workbook: Workbook, { name, columns, rows }: OrderSheet, view: ReorderView): void {
  const sheet = addSheet(workbook, name);
  const cells = rows.map((row) => row.cells.map((cell) => cellOf(cell, view)));
  sheet.columns = columns.map(({ header, width }, at) => ({
    header: capital(header),
    style: { alignment: alignmentOf(columns, at) },
    width: Math.min(widest, Math.max(width, ...cells.map((row) => textLength(row[at]) + 2))),
  }));
  sheet.getRow(1).font = boldFont;
  sheet.getRow(1).border = { bottom: { style: 'thin' } };
  for (const [at, { isSum }] of rows.entries()) {
    const added = sheet.addRow([...(cells[at] ?? [])]);
    if (isSum) added.font = boldFont;
    for (const [place, { kind }] of columns.entries()) {
      if (kind === 'money') added.getCell(place + 1).numFmt = currencyFormat(view);
      if (kind === 'code') added.getCell(place + 1).numFmt = '@';
    }
  }
}

const capital = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);

/** Amounts have a least width of their own, so only text counts here. */
const textLength = (cell: CellValue | undefined): number => (typeof cell === 'string' ? cell.length : 0);

/** Numbers stand at the right; a text beside one keeps off it, and a long one is broken. */
function alignmentOf(columns: readonly OrderColumn[], at: number): Partial<Alignment> {
  const isNumeric = (place: number): boolean => ['number', 'money'].includes(columns[place]?.kind ?? 'text');
  if (isNumeric(at)) return { horizontal: 'right', vertical: 'top' };
  const text: Partial<Alignment> = { horizontal: 'left', vertical: 'top', wrapText: true };
  return isNumeric(at - 1) ? { ...text, indent: 1 } : text;
}

function cellOf(cell: OrderRow['cells'][number], { currency }: ReorderView): CellValue {
  if (cell === undefined || cell === '') return null;
  if (typeof cell === 'string') return fitCellText(cell);
  if (typeof cell === 'number') return cell;
  const result = Number(toMajor(cell.minor, currency));
  return cell.formula === undefined ? result : { formula: cell.formula, result };
}

/** The ISO 4217 code and as many digits as its minor unit has, such as `[$EUR] #,##0.00`. */
function currencyFormat({ currency, minorDigits }: ReorderView): string {
  const digits = minorDigits === 0 ? '' : `.${'0'.repeat(minorDigits)}`;
  return `[$${currency}] #,##0${digits}`;
}
