// Export: how the cells of a sheet look. In: a SheetView. Out: styles by column, and the height of the headers.
import type { Alignment, Style } from 'exceljs';
import type { SheetColumn, SheetView } from './estimate/workbook-view.js';
import { boldFont } from './open-workbook.js';

export type CellStyle = Partial<Style>;

/** How cells of one column look, by what they hold. */
export interface ColumnLook {
  readonly text: CellStyle;
  readonly number: CellStyle;
  readonly formula: CellStyle;
}

// Styles are shared objects: the library works out each once, and anew where it sees another object.

export const headerRow: CellStyle = { font: boldFont };
export const plainRow: CellStyle = {};

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

/** How the headers of a sheet look, and the cells below them, by column. */
export function findLooks({ columns, rows }: Pick<SheetView, 'columns' | 'rows'>) {
  const numeric = columns.map((_, place) => holdsNumbers(rows, place));
  return {
    headers: columns.map((_, place) => findHeaderLook(numeric, place)),
    cells: columns.map((column, place) => findLook(column, isNextTo(numeric, place))),
  };
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

/** As spreadsheets have a row of this font: from memory. */
const pointsOfLine = 15;

/** As many lines as the longest header takes in its column, by a bold letter's width and whole words. */
export function heightOfHeaders(columns: readonly SheetColumn[]): number {
  return (
    pointsOfLine * Math.max(1, ...columns.map(({ header, width }) => countLines(header, width / boldWidth)))
  );
}

/** A bold letter is wider than the digit in which widths are counted, by about so much: from memory. */
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
