// Export: the rows of a sheet, as the workbook library models them for its writer. In: a SheetView. Out: models of rows and
// cells. The library's own cells come to the same, but each is an object that can be asked and changed, and making
// thousands of them took a sixth of a workbook's time.
import type { CellErrorValue } from 'exceljs';
import { letters } from './estimate/sheet-table.js';
import type { Cell, Formula, SheetView } from './estimate/workbook-view.js';
import { fitCellText } from './fit-cell-text.js';
import { guardText } from './guard-text.js';
import {
  type CellStyle,
  type ColumnLook,
  findLooks,
  headerRow,
  heightOfHeaders,
  plainRow,
} from './look-cells.js';
import type { ModelledRows } from './open-workbook.js';

interface RowModel {
  readonly number: number;
  /** The first and the last column that holds something. */
  readonly min: number;
  readonly max: number;
  /** In points; left out: as a spreadsheet has it. */
  readonly height?: number;
  readonly style: CellStyle;
  readonly cells: readonly CellModel[];
}

interface CellModel extends Content {
  readonly address: string;
  readonly style: CellStyle;
}

/** One of the library's types of cells, and what such a cell has. */
interface Content {
  readonly type: (typeof types)[keyof typeof types];
  readonly value?: Value;
  readonly formula?: string;
  readonly result?: Value;
}

type Value = string | number | CellErrorValue;

/** As the library's ValueType counts them. */
const types = { number: 2, text: 3, formula: 6, error: 10 } as const;

/**
 * The headers in row 1, in bold, and the rows below, none of which is longer. Blank cells are left out, and rows of nothing
 * but blanks. Text is stored as text, guarded where a spreadsheet could take it for a formula; longer text than a cell
 * may hold is cut. Numbers that are none (a transfer of 0) become error values.
 */
export function modelRows({ columns, rows }: SheetView): ModelledRows {
  const names = columns.map((_, place) => letters(place));
  const headers = columns.map(({ header }) => header);
  const looks = findLooks({ columns, rows });
  const models = [
    {
      ...modelRow(headers, { number: 1, names, looks: looks.headers, style: headerRow }),
      height: heightOfHeaders(columns),
    },
    ...rows.map((cells, at) =>
      modelRow(cells, { number: at + 2, names, looks: looks.cells, style: plainRow }),
    ),
  ].filter(({ cells }) => cells.length > 0);
  return { dimensions: spanOf(models, names), rows: models };
}

interface Placed {
  readonly number: number;
  /** Of the columns: A, B and so on. */
  readonly names: readonly string[];
  readonly looks: readonly ColumnLook[];
  readonly style: CellStyle;
}

function modelRow(cells: readonly Cell[], { number, names, looks, style }: Placed): RowModel {
  const models: CellModel[] = [];
  let [min, max] = [0, 0];
  for (const [place, cell] of cells.entries()) {
    const look = looks[place];
    if (cell === undefined || cell === '' || look === undefined) continue;
    if (min === 0) min = place + 1;
    max = place + 1;
    models.push(modelCell(cell, `${names[place]}${number}`, look));
  }
  return { number, min, max, style, cells: models };
}

function modelCell(cell: string | number | Formula, address: string, look: ColumnLook): CellModel {
  if (typeof cell === 'string')
    return { address, type: types.text, value: fitCellText(guardText(cell)), style: look.text };
  if (typeof cell === 'number') return { address, ...modelNumber(cell), style: look.number };
  const { formula, result } = cell;
  const stored = typeof result === 'string' ? fitCellText(result) : modelNumber(result).value;
  return { address, type: types.formula, formula, result: stored, style: look.formula };
}

/** A number that is none, such as one divided by 0, stands as a spreadsheet has it. */
const modelNumber = (value: number) =>
  Number.isFinite(value) ? { type: types.number, value } : { type: types.error, value: notANumber };

const notANumber: CellErrorValue = { error: '#DIV/0!' };

function spanOf(rows: readonly RowModel[], names: readonly string[]): string {
  let [left, right, bottom] = [names.length, 1, 1];
  for (const { number, min, max } of rows) {
    left = Math.min(left, min);
    right = Math.max(right, max);
    bottom = Math.max(bottom, number);
  }
  return `${names[left - 1] ?? 'A'}${rows[0]?.number ?? 1}:${names[right - 1] ?? 'A'}${bottom}`;
}
