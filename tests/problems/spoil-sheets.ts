// Short ways to write a case: the four short sheets with some of them replaced, as CSV or as a workbook.
import { join } from 'node:path';
import { fourShortSheets, type ProblemCase, writeSheets } from './problem-case.js';

/** The four short sheets with these sheets added or written over, each as its lines. */
export function spoil(
  code: string,
  sheets: Readonly<Record<string, readonly string[]>>,
  ...says: readonly string[]
): ProblemCase {
  const files = Object.fromEntries(
    Object.entries(sheets).map(([name, lines]) => [`${name}.csv`, `${lines.join('\n')}\n`]),
  );
  return { code, says, make: (dir) => writeSheets(dir, { ...fourShortSheets, ...files }) };
}

type TypedCell =
  | string
  | number
  | boolean
  | Date
  | { readonly formula: string }
  | { readonly error: '#N/A' }
  | ShownNumber;

/** A number, and the number format by which its cell is shown. */
interface ShownNumber {
  readonly value: number;
  readonly numFmt: string;
}

const isShown = (cell: TypedCell): cell is ShownNumber => typeof cell === 'object' && 'numFmt' in cell;

/** The four short sheets as a workbook, with these sheets in their place; numbers, dates and formulas keep their type. */
export function spoilWorkbook(
  code: string,
  sheets: Readonly<Record<string, readonly (readonly TypedCell[])[]>>,
  ...says: readonly string[]
): ProblemCase {
  const path = (dir: string): string => join(dir, 'army.xlsx');
  return { code, says, path, make: (dir) => writeWorkbook(path(dir), { ...shortSheetCells(), ...sheets }) };
}

function shortSheetCells(): Record<string, TypedCell[][]> {
  return Object.fromEntries(
    Object.entries(fourShortSheets).map(([name, text]) => [
      name.replace('.csv', ''),
      text
        .trimEnd()
        .split('\n')
        .map((line) => line.split(',').map((cell) => (/^\d+$/.test(cell) ? Number(cell) : cell))),
    ]),
  );
}

async function writeWorkbook(
  path: string,
  sheets: Readonly<Record<string, readonly (readonly TypedCell[])[]>>,
): Promise<void> {
  const { default: exceljs } = await import('exceljs');
  const workbook = new exceljs.Workbook();
  for (const [name, rows] of Object.entries(sheets)) {
    const sheet = workbook.addWorksheet(name);
    for (const [at, row] of rows.entries()) {
      sheet.addRow(row.map((cell) => (isShown(cell) ? cell.value : cell)));
      for (const [index, cell] of row.entries())
        if (isShown(cell)) sheet.getCell(at + 1, index + 1).numFmt = cell.numFmt;
    }
  }
  await workbook.xlsx.writeFile(path);
}
