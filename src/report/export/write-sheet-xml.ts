// Export: one sheet of estimate.xlsx. In: a SheetView, styles. Out: its part, by ISO/IEC 29500-1, 18.3.
import { letters } from '../view/estimate-workbook/sheet-table.js';
import type { Cell, SheetView } from '../view/estimate-workbook/workbook-view.js';
import { guardText } from './guard-text.js';
import type { Styles } from './write-estimate-styles.js';

/** Longest text that a cell may hold, by the published limits of XLSX spreadsheets. */
const longestText = 32767;

/** Headers in row 1, which stays in sight, then the rows; on paper as wide as one page. */
export function writeSheetXml({ columns, rows }: SheetView, styles: Styles, namespace: string): string {
  const widths = columns.map(
    ({ width }, at) => `<col min="${at + 1}" max="${at + 1}" width="${width}" customWidth="1"/>`,
  );
  const places = columns.map((_, at) => letters(at));
  const styleOf = columns.map(({ digits, isFixed }) => ({
    number: styled(styles.of(isFixed ? 'formula' : 'number', digits)),
    formula: styled(styles.of('formula', digits)),
  }));
  const headers = columns.map(({ header }, at) =>
    writeText(header, `${places[at]}1`, styled(styles.of('header'))),
  );
  const lines = rows.map((cells, at) => {
    const row = at + 2;
    let written = `<row r="${row}">`;
    for (const [place, cell] of cells.entries()) {
      if (cell === undefined || cell === '') continue;
      written += writeCell(cell, `${places[place]}${row}`, styleOf[place]);
    }
    return `${written}</row>`;
  });
  return [
    `<worksheet xmlns="${namespace}"><sheetPr><pageSetUpPr fitToPage="1"/></sheetPr>`,
    '<sheetViews><sheetView workbookViewId="0">',
    '<pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/>',
    `</sheetView></sheetViews><cols>${widths.join('')}</cols>`,
    `<sheetData><row r="1">${headers.join('')}</row>${lines.join('')}</sheetData>`,
    '<pageSetup paperSize="9" orientation="landscape" fitToHeight="0"/></worksheet>',
  ].join('');
}

interface CellStyles {
  readonly number: string;
  readonly formula: string;
}

function writeCell(cell: Exclude<Cell, undefined>, address: string, style: CellStyles | undefined): string {
  if (typeof cell === 'string') return writeText(cell, address, '');
  if (typeof cell === 'number') return `<c r="${address}"${style?.number}>${writeValue(cell).xml}</c>`;
  const { kind, xml } = writeValue(cell.result);
  return `<c r="${address}"${style?.formula}${kind}><f>${escapeXml(cell.formula)}</f>${xml}</c>`;
}

const styled = (style: number): string => (style === 0 ? '' : ` s="${style}"`);

/** A number that is none, such as one divided by 0, stands as the error value that a spreadsheet gives. */
function writeValue(value: number | string): { readonly kind: string; readonly xml: string } {
  if (typeof value === 'string') return { kind: ' t="str"', xml: `<v>${escapeXml(value)}</v>` };
  return Number.isFinite(value)
    ? { kind: '', xml: `<v>${value}</v>` }
    : { kind: ' t="e"', xml: '<v>#DIV/0!</v>' };
}

/** Text in the cell itself; blanks at its ends are kept. */
function writeText(text: string, address: string, style: string): string {
  const inCell = escapeXml(cutText(guardText(text)));
  return `<c r="${address}"${style} t="inlineStr"><is><t xml:space="preserve">${inCell}</t></is></c>`;
}

/** Half a character at the cut is left out with the rest. */
const cutText = (text: string): string =>
  text.length <= longestText ? text : text.slice(0, longestText).replace(/[\ud800-\udbff]$/, '');

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' };

/** All that is written as it stands: most names, and formulas without a comparison. */
const plain = /^[ !"#$%'()*+,\-./0-9:;=?@A-Z[\\\]^`a-z{|}~]*$/;

/** What XML 1.0 (2.2, Char) has no place for: control characters, halves of pairs, two that are none. */
const notXml = /(?![\t\n\r])\p{Cc}|[\ufffe\uffff]|\p{Cs}/gu;

/** A reader would take `_x0041_` for a letter (ISO/IEC 29500-1, 22.9.2.19), and makes one line end of all kinds. */
function escapeXml(text: string): string {
  if (plain.test(text)) return text;
  return text
    .replace(/[&<>]/g, (found) => escapes[found] ?? '')
    .replace(notXml, '\ufffd')
    .replace(/_(?=x[0-9a-f]{4}_)/gi, '_x005F_')
    .replace(/\r\n?/g, '\n');
}
