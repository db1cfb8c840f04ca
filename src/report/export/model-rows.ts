// Export: the rows of a sheet, as the workbook library models them for its writer. In: a SheetView. Out: models of rows and
// cells. The library's own cells come to the same, but each is an object that can be asked and changed, and making
// thousands of them took a sixth of a workbook's time.
import type { Alignment, CellErrorValue, Style } from 'exceljs';
import { letters } from '../view/estimate-workbook/sheet-table.js';
import type { Cell, Formula, SheetColumn, SheetView } from '../view/estimate-workbook/workbook-view.js';
import { fitCellText } from './fit-cell-text.js';
import { guardText } from './guard-text.js';
import { boldFont, type ModelledRows } from './open-workbook.js';

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

type CellStyle = Partial<Style>;

/** How cells of one column look, by what they hold. */
interface ColumnLook {
  readonly text: CellStyle;
  readonly number: CellStyle;
  readonly formula: CellStyle;
}

/**
 * The headers in row 1, in bold, and the rows below, none of which is longer. Blank cells are left out, and rows of nothing
 * but blanks. Text is stored as text, guarded where a spreadsheet could take it for a formula; longer text than a cell
 * may hold is cut. Numbers that are none (a transfer of 0) become error values.
 */
export function modelRows({ columns, rows }: SheetView): ModelledRows {
  const names = columns.map((_, place) => letters(place));
  const headers = columns.map(({ header }) => header);
  const numeric = columns.map((_, place) => holdsNumbers(rows, place));
  const looks = columns.map((column, place) => findLook(column, isNextTo(numeric, place)));
  const headerLooks = columns.map((_, place) => findHeaderLook(numeric, place));
  const models = [
    {
      ...modelRow(headers, { number: 1, names, looks: headerLooks, style: headerRow }),
      height: heightOf(columns),
    },
    ...rows.map((cells, at) => modelRow(cells, { number: at + 2, names, looks, style: plainRow })),
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

// Styles are shared objects: the library works out each once, and anew where it sees another object.

const headerRow: CellStyle = { font: boldFont };
const plainRow: CellStyle = {};

/** Headers are broken into lines where their columns are narrow, and stand over the numbers or texts below. */
const headerLooks = {
  text: headerLook({}),
  number: headerLook({ horizontal: 'right' }),
  indented: headerLook({ horizontal: 'left', indent: 1 }),
};

function headerLook(alignment: Partial<Alignment>): ColumnLook {
  const style: CellStyle = {
    font: boldFont,
    alignment: { wrapText: true, vertical: 'bottom', ...alignment },
  };
  return { text: style, number: style, formula: style };
}

function findHeaderLook(numeric: readonly boolean[], place: number): ColumnLook {
  if (numeric[place] === true) return headerLooks.number;
  return isNextTo(numeric, place) ? headerLooks.indented : headerLooks.text;
}

/** A number to be changed is blue, what is worked out black, as modellers of sums have it. */
const changeable: CellStyle = { font: { color: { argb: 'FF1F4E9E' }, name: 'Calibri', size: 11 } };

const plainText: CellStyle = {};
const indentedText: CellStyle = { alignment: { horizontal: 'left', indent: 1 } };

function findLook({ digits, isFixed }: SheetColumn, isIndented: boolean): ColumnLook {
  const format: CellStyle = digits === undefined ? {} : { numFmt: (0).toFixed(digits) };
  return {
    text: isIndented ? indentedText : plainText,
    number: isFixed ? format : { ...changeable, ...format },
    formula: format,
  };
}

/** Judged by the first cell that is not blank. */
function holdsNumbers(rows: SheetView['rows'], place: number): boolean {
  const first = rows.find((cells) => cells[place] !== undefined && cells[place] !== '')?.[place];
  return typeof (typeof first === 'object' ? first.result : first) === 'number';
}

/** Numbers stand at the right of a column: text that begins where they end would touch them. */
const isNextTo = (numeric: readonly boolean[], place: number): boolean =>
  place > 0 && numeric[place - 1] === true && numeric[place] !== true;

const pointsOfLine = 15;

/** As many lines as the longest header takes in its column, by a bold letter's width and whole words. */
function heightOf(columns: readonly SheetColumn[]): number {
  return (
    pointsOfLine * Math.max(1, ...columns.map(({ header, width }) => countLines(header, width / boldWidth)))
  );
}

/** A bold letter is wider than the digit in which widths are counted. */
const boldWidth = 1.1;

function countLines(text: string, width: number): number {
  let [lines, used] = [1, 0];
  for (const { length } of text.split(' ')) {
    const isNew = used > 0 && used + 1 + length > width;
    lines += isNew ? 1 : 0;
    used = used === 0 || isNew ? length : used + 1 + length;
  }
  return lines;
}
