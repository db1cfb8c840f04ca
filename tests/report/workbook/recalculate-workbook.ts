// Tests: a workbook worked out again by a general-purpose formula library, from the bytes that are written to disk.
import exceljs from 'exceljs';
import { HyperFormula } from 'hyperformula';

type Value = string | number | boolean | null;

export interface Recalculated {
  /** What a cell gives now, by sheet and address such as B2. */
  readonly value: (sheet: string, address: string) => Value;
  /** Changes a cell that holds no formula. */
  readonly change: (sheet: string, address: string, value: number) => void;
  /** The row in which a column holds a text, or a number. */
  readonly rowOf: (sheet: string, column: string, wanted: string | number) => number;
  /** Rows of a sheet as objects by header; later headers of a name win. */
  readonly rows: (sheet: string) => Record<string, Value>[];
  readonly formulas: readonly StoredFormula[];
}

interface StoredFormula {
  readonly sheet: string;
  readonly address: string;
  readonly formula: string;
  /** What the file says that it gives. */
  readonly stored: Value;
}

export async function readWorkbook(bytes: Uint8Array): Promise<exceljs.Workbook> {
  const workbook = new exceljs.Workbook();
  await workbook.xlsx.load(Uint8Array.from(bytes).buffer as ArrayBuffer);
  return workbook;
}

/** Text is handed over with an apostrophe, so that the library keeps it as it is. */
export async function recalculate(bytes: Uint8Array): Promise<Recalculated> {
  const workbook = await readWorkbook(bytes);
  const formulas: StoredFormula[] = [];
  const contents: Record<string, (string | number | null)[][]> = {};
  for (const sheet of workbook.worksheets) {
    const rows: (string | number | null)[][] = [];
    sheet.eachRow({ includeEmpty: true }, (row, number) => {
      const cells: (string | number | null)[] = [];
      row.eachCell({ includeEmpty: true }, (cell, column) => {
        cells[column - 1] = contentOf(cell);
        if (cell.formula === undefined) return;
        const stored = typeof cell.result === 'object' ? String(cell.result) : (cell.result ?? '');
        formulas.push({ sheet: sheet.name, address: cell.address, formula: cell.formula, stored });
      });
      rows[number - 1] = Array.from(cells, (cell) => cell ?? null);
    });
    contents[sheet.name] = Array.from(rows, (row) => row ?? []);
  }
  const engine = HyperFormula.buildFromSheets(contents, { licenseKey: 'gpl-v3', smartRounding: false });
  return { formulas, ...openEngine(engine) };
}

function contentOf(cell: exceljs.Cell): string | number | null {
  if (cell.formula !== undefined) return `=${cell.formula}`;
  if (typeof cell.value === 'number') return cell.value;
  return cell.value === null ? null : `'${String(cell.value)}`;
}

function openEngine(engine: HyperFormula): Omit<Recalculated, 'formulas'> {
  const sheetOf = (name: string): number => {
    const id = engine.getSheetId(name);
    if (id === undefined) throw new Error(`no sheet called ${name}`);
    return id;
  };
  const addressOf = (sheet: string, address: string) => {
    const found = engine.simpleCellAddressFromString(address, sheetOf(sheet));
    if (found === undefined) throw new Error(`no cell ${address}`);
    return found;
  };
  const plain = (value: unknown): Value =>
    typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' || value === null
      ? value
      : `error ${(value as { value?: string }).value}`;
  const valuesOf = (sheet: string): Value[][] =>
    engine.getSheetValues(sheetOf(sheet)).map((row) => row.map(plain));
  const headersOf = (sheet: string): string[] => (valuesOf(sheet)[0] ?? []).map(String);
  return {
    value: (sheet, address) => plain(engine.getCellValue(addressOf(sheet, address))),
    change: (sheet, address, value) => {
      const at = addressOf(sheet, address);
      if (engine.doesCellHaveFormula(at)) throw new Error(`${sheet}!${address} holds a formula`);
      engine.setCellContents(at, [[value]]);
    },
    rowOf: (sheet, column, wanted) => {
      const place = headersOf(sheet).indexOf(column);
      const found = valuesOf(sheet).findIndex((row, at) => at > 0 && row[place] === wanted);
      if (place < 0 || found < 0) throw new Error(`${sheet} has no ${wanted} in ${column}`);
      return found + 1;
    },
    rows: (sheet) => {
      const headers = headersOf(sheet);
      const [, ...rows] = valuesOf(sheet);
      return rows.map((row) => Object.fromEntries(headers.map((header, at) => [header, row[at] ?? null])));
    },
  };
}
