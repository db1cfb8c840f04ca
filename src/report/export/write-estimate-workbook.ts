// Export: estimate.xlsx. In: a WorkbookView. Out: the bytes of an XLSX file: plain cells, and formulas with their results.
import type { CellErrorValue, CellFormulaValue, Row, Style, Workbook } from 'exceljs';
import type {
  Cell,
  Formula,
  SheetColumn,
  SheetView,
  WorkbookView,
} from '../view/estimate-workbook/workbook-view.js';
import { fitCellText } from './fit-cell-text.js';
import { guardText } from './guard-text.js';
import { addSheet, boldFont, openWorkbook, packWorkbook } from './open-workbook.js';

/**
 * The whole workbook; the same view gives the same bytes. Text is stored as text, guarded where a spreadsheet could take it
 * for a formula; longer text than a cell may hold is cut. Numbers that are none (a transfer of 0) become error values.
 */
export async function writeEstimateWorkbook({ date, sheets }: WorkbookView): Promise<Uint8Array> {
  const workbook = await openWorkbook(date);
  for (const sheet of sheets) writeSheet(workbook, sheet);
  return packWorkbook(workbook, date);
}

/** Headers in row 1, then the rows. */
function writeSheet(workbook: Workbook, { name, columns, rows }: SheetView): void {
  const sheet = addSheet(workbook, name);
  sheet.columns = columns.map(({ width }) => ({ width }));
  sheet.addRow(columns.map(({ header }) => storeCell(header))).font = boldFont;
  const styles = columns.map(findStyles);
  for (const cells of rows) styleRow(sheet.addRow(cells.map(storeCell)), cells, styles);
}

const notANumber: CellErrorValue = { error: '#DIV/0!' };

/** What the library takes for a cell. A number that is none, such as one divided by 0, stands as a spreadsheet has it. */
function storeCell(cell: Cell): undefined | string | number | CellErrorValue | CellFormulaValue {
  if (cell === undefined || cell === '') return undefined;
  if (typeof cell === 'string') return fitCellText(guardText(cell));
  if (typeof cell === 'object') return { formula: cell.formula, result: resultOf(cell) };
  return Number.isFinite(cell) ? cell : notANumber;
}

function resultOf({ result }: Formula): string | number | CellErrorValue {
  if (typeof result === 'string') return fitCellText(result);
  return Number.isFinite(result) ? result : notANumber;
}

type CellStyle = Partial<Style>;

/** How cells of one column look. */
interface ColumnStyles {
  readonly text: CellStyle;
  readonly number: CellStyle;
  readonly formula: CellStyle;
}

/** A number to be changed is blue, what is worked out black, as modellers of sums have it. */
const changeable: CellStyle = { font: { color: { argb: 'FF1F4E9E' }, name: 'Calibri', size: 11 } };

function findStyles({ digits, isFixed }: SheetColumn): ColumnStyles {
  const format: CellStyle = digits === undefined ? {} : { numFmt: (0).toFixed(digits) };
  return { text: {}, number: isFixed ? format : { ...changeable, ...format }, formula: format };
}

/** Cells share the style's object: the library works out once what it has seen before, and anew for each of a cell's own. */
function styleRow(row: Row, cells: readonly Cell[], styles: readonly ColumnStyles[]): void {
  row.eachCell((cell, column) => {
    const style = styles[column - 1]?.[kindOf(cells[column - 1])];
    if (style !== undefined) cell.style = style;
  });
}

function kindOf(cell: Cell): keyof ColumnStyles {
  if (typeof cell === 'number') return 'number';
  return typeof cell === 'object' ? 'formula' : 'text';
}
