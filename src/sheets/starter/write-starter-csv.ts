// Starter: the sheets as CSV. In: which sheets. Out: file names and texts, one for each sheet and one of explanations.
import Papa from 'papaparse';
import { listStarterSheets, type StarterSheet } from './list-starter-sheets.js';
import { writeHowTo } from './word-how-to.js';

export interface StarterFile {
  readonly name: string;
  readonly content: string | Uint8Array;
}

/** Tells spreadsheets that the text is UTF-8, also once the painter's own letters stand in it. */
const byteOrderMark = '\ufeff';

/** The example, or some sheets of it, as CSV by RFC 4180, and the page that explains every sheet. */
export function writeStarterCsv(sheets = listStarterSheets()): StarterFile[] {
  return [
    ...sheets.map((sheet) => ({ name: `${sheet.sheet}.csv`, content: csvOf(sheet) })),
    { name: 'how-to.txt', content: byteOrderMark + writeHowTo(listStarterSheets()) },
  ];
}

export const csvOf = ({ columns, rows }: Omit<StarterSheet, 'sheet'>): string =>
  `${byteOrderMark}${Papa.unparse([columns.map(({ header }) => header), ...rows.map((row) => [...row])], { newline: '\r\n' })}\r\n`;
