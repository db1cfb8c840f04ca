// Starter: the sheets as one workbook with dropdowns and a page of explanations. In: nothing. Out: bytes of an XLSX file.
import type { Workbook, Worksheet } from 'exceljs';
import { wordColumn, wordSheet } from '../columns/columns.js';
import { addDropdowns } from './add-dropdowns.js';
import { listStarterSheets, type StarterSheet } from './list-starter-sheets.js';
import { howToStart, wordZones } from './word-how-to.js';
import type { StarterFile } from './write-starter-csv.js';

const neededFill = { type: 'pattern', pattern: 'solid', fgColor: { argb: 'FFE7E2D3' } } as const;

/** One file, `sheets.xlsx`. */
export async function writeStarterWorkbook(): Promise<StarterFile> {
  const { default: exceljs } = await import('exceljs');
  const workbook = new exceljs.Workbook();
  workbook.creator = 'Halfpot';
  const sheets = listStarterSheets();
  addHowTo(workbook, sheets);
  for (const sheet of sheets) addSheet(workbook, sheet);
  return { name: 'sheets.xlsx', content: new Uint8Array(await workbook.xlsx.writeBuffer()) };
}

function addSheet(workbook: Workbook, starter: StarterSheet): void {
  const sheet = workbook.addWorksheet(starter.sheet, { views: [{ state: 'frozen', ySplit: 1 }] });
  sheet.columns = starter.columns.map(({ header, isDigits }, at) => ({
    header,
    width: Math.max(header.length, ...starter.rows.map((row) => row[at]?.length ?? 0)) + 3,
    ...(isDigits ? { style: { numFmt: '@' } } : {}),
  }));
  sheet.getRow(1).font = { bold: true };
  for (const [at, { needed }] of starter.columns.entries())
    if (needed) sheet.getCell(1, at + 1).fill = neededFill;
  for (const row of starter.rows) addRow(sheet, starter, row);
  addDropdowns(sheet, starter);
}

/** Cells as if typed into a spreadsheet: see `typeText`. */
function addRow(sheet: Worksheet, { columns }: StarterSheet, texts: readonly string[]): void {
  const row = sheet.addRow([]);
  for (const [at, text] of texts.entries()) {
    if (text === '') continue;
    const typed = columns[at]?.isDigits ? { value: text } : typeText(text);
    const cell = row.getCell(at + 1);
    cell.value = typed.value;
    if (typed.format !== undefined) cell.numFmt = typed.format;
  }
}

interface Typed {
  readonly value: string | number | Date;
  readonly format?: string;
}

/** Digits become a number, 60% a number shown in percent, 2025-03-08 a date; all else stays text. */
function typeText(text: string): Typed {
  if (/^\d{4}-\d\d-\d\d$/.test(text)) return { value: new Date(`${text}T00:00:00Z`), format: 'yyyy-mm-dd' };
  const [, digits, percent] = /^(\d+(?:\.\d+)?)(%?)$/.exec(text) ?? [];
  if (digits === undefined) return { value: text };
  return percent === '%' ? { value: Number(digits) / 100, format: '0%' } : { value: Number(digits) };
}

function addHowTo(workbook: Workbook, sheets: readonly StarterSheet[]): void {
  const page = workbook.addWorksheet('how to', { views: [{ showGridLines: false }] });
  page.columns = [{ width: 12 }, { width: 16 }, { width: 9 }, { width: 90 }];
  for (const line of howToStart) page.addRow([line]);
  for (const { sheet, columns } of sheets) {
    page.addRow([]);
    page.addRow([sheet, '', '', wordSheet(sheet)]).font = { bold: true };
    for (const column of columns)
      page.addRow(['', column.header, column.needed ? 'needed' : '', wordColumn(column)]);
  }
  page.addRow([]);
  for (const line of wordZones()) page.addRow([line]);
  page.getColumn(4).alignment = { wrapText: true, vertical: 'top' };
}
