// Export: the reorder list as CSV. In: a ReorderView. Out: text by RFC 4180 with CRLF line ends and a byte order mark,
// by which spreadsheets know UTF-8; marks as in the painter's locale. No cell can run as a formula.
import Papa from 'papaparse';
import { toMajor } from '../../model/money.js';
import { guardText } from '../workbook/guard-text.js';
import { listReorderRows } from './list-reorder-rows.js';
import { reorderColumns } from './reorder-columns.js';
import type { ReorderView } from './view-reorder.js';
import { reorderWords } from './words.js';

const byteOrderMark = '\ufeff';

/** The whole file; see `listReorderRows` for its records. Nothing to buy gives the header and a total of 0. */
export function writeReorderCsv(view: ReorderView): string {
  const { currency, csv } = view;
  const { decimal, delimiter } = csv;
  const headers = reorderColumns.map(({ key }) => reorderWords.columns[key]);
  const records = listReorderRows(view).map((row) =>
    reorderColumns.map(({ kind, value }) => {
      const cell = value(row, currency) ?? '';
      if (typeof cell === 'string') return guardText(cell);
      return (kind === 'money' ? toMajor(cell, currency) : String(cell)).replace('.', decimal);
    }),
  );
  const text = Papa.unparse([headers, ...records], { delimiter, newline: '\r\n', quotes: mustQuote });
  return `${byteOrderMark}${text}\r\n`;
}

/**
 * Beside what RFC 4180 asks for: whatever a spreadsheet of another locale might part, and a code, which is text and keeps
 * its leading zeros.
 */
const mustQuote = (cell: string, column: number): boolean =>
  (/[,;\t]/.test(cell) && !/^-?\d+,\d+$/.test(cell)) ||
  (reorderColumns[column]?.kind === 'code' && /^\d/.test(cell));
