// Export: the reorder list as a workbook. In: a ReorderView. Out: bytes of an XLSX file: one list by shop, with codes as
// text, numbers as numbers and totals as formulas that carry their results.
import type { Alignment, CellValue, Worksheet } from 'exceljs';
import { letters } from '../workbook/estimate/sheet-table.js';
import { fitCellText } from '../workbook/fit-cell-text.js';
import { addSheet, boldFont, openWorkbook, packWorkbook } from '../workbook/open-workbook.js';
import { majorNumber } from './format-amount.js';
import { type Cost, listReorderRows, type ReorderRow } from './list-reorder-rows.js';
import { reorderColumns } from './reorder-columns.js';
import type { ReorderView } from './view-reorder.js';
import { reorderWords } from './words.js';

const columns = reorderColumns.filter(({ width }) => width !== undefined);
const widest = 48;

/** The letter of a column. */
const letterOf = (key: (typeof columns)[number]['key']): string =>
  letters(columns.findIndex((column) => column.key === key));
const [offers, price, cost] = [letterOf('offers'), letterOf('price'), letterOf('cost')];

/** The list's first row stands under the headers. */
const firstRow = 2;

/**
 * The whole workbook; the same view gives the same bytes. Text that looks like a formula is stored as text, which no
 * spreadsheet calculates. Nothing to buy gives the header and a total of 0.
 */
export async function writeReorderWorkbook(view: ReorderView): Promise<Uint8Array> {
  const workbook = await openWorkbook(view.date);
  const sheet = addSheet(workbook, reorderWords.sheet);
  const rows = listReorderRows(view);
  const cells = rows.map((row, at) => columns.map((column) => cellOf(row, at, { column, view })));
  sheet.columns = columns.map((column, at) => ({
    header: capital(reorderWords.columns[column.key]),
    style: { alignment: alignmentOf(at) },
    width: Math.min(widest, Math.max(column.width ?? 0, ...cells.map((row) => textLength(row[at]) + 2))),
  }));
  sheet.getRow(1).font = boldFont;
  sheet.getRow(1).border = { bottom: { style: 'thin' } };
  for (const [at, row] of rows.entries()) addRow(sheet, row, { cells: cells[at] ?? [], view });
  return packWorkbook(workbook, view.date);
}

const capital = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1);

/** Amounts have a least width of their own, so only text counts here. */
const textLength = (cell: CellValue | undefined): number => (typeof cell === 'string' ? cell.length : 0);

/** Numbers stand at the right; a text beside one keeps off it. */
function alignmentOf(at: number): Partial<Alignment> {
  if (isNumeric(at)) return { horizontal: 'right' };
  return isNumeric(at - 1) ? { horizontal: 'left', indent: 1 } : { horizontal: 'left' };
}

const isNumeric = (at: number): boolean => ['number', 'money'].includes(columns[at]?.kind ?? 'text');

interface CellInputs {
  readonly column: (typeof columns)[number];
  readonly view: ReorderView;
}

function cellOf(row: ReorderRow, at: number, { column, view }: CellInputs): CellValue {
  const { currency, minorDigits } = view;
  const value = column.value(row, currency);
  if (value === undefined || value === '') return null;
  if (typeof value === 'string') return fitCellText(value);
  if (column.kind !== 'money') return value;
  const formula = column.key === 'cost' ? formulaOf(row.cost?.from, at + firstRow) : '';
  const result = majorNumber(value, minorDigits);
  return formula === '' ? result : { formula, result };
}

/** '' for an amount that comes from no others. */
function formulaOf(from: Cost['from'], row: number): string {
  if (from === undefined) return '';
  if (from === 'offers') return `${offers}${row}*${price}${row}`;
  if ('first' in from) return `SUM(${cost}${from.first + firstRow}:${cost}${from.last + firstRow})`;
  return from.map((one) => `${cost}${one + firstRow}`).join('+');
}

interface RowInputs {
  readonly cells: readonly CellValue[];
  readonly view: ReorderView;
}

/** Sums stand out. */
function addRow(sheet: Worksheet, { entry }: ReorderRow, { cells, view }: RowInputs): void {
  const added = sheet.addRow([...cells]);
  if (entry === 'shop total' || entry === 'total') added.font = boldFont;
  for (const [at, { kind }] of columns.entries()) {
    if (kind === 'money') added.getCell(at + 1).numFmt = currencyFormat(view);
    if (kind === 'code') added.getCell(at + 1).numFmt = '@';
  }
}

/** The ISO 4217 code and as many digits as its minor unit has, such as `[$EUR] #,##0.00`. */
function currencyFormat({ currency, minorDigits }: ReorderView): string {
  const digits = minorDigits === 0 ? '' : `.${'0'.repeat(minorDigits)}`;
  return `[$${currency}] #,##0${digits}`;
}
