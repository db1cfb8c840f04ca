// Bench: reading a large workbook, against the workbook library. In: a folder for scratch files, the sample, how many army
// rows. Out: milliseconds of whole programs, of their bare imports, and the most memory that they held.
import { readdirSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import exceljs from 'exceljs';
import Papa from 'papaparse';
import { makeArmy } from './make-army.mjs';
import { medianMs, peakMb } from './measure-runs.mjs';

/** Digits that are a name stay text, as whoever types them must see to. */
const textColumns = new Set(['code']);

const typeCell = (header, text) => {
  if (text === '') return null;
  return !textColumns.has(header) && /^\d+(\.\d+)?$/.test(text) ? Number(text) : text;
};

/** A folder of CSV sheets as one workbook, with texts shared as spreadsheet programs share them. */
async function writeWorkbook(folder, path) {
  const workbook = new exceljs.stream.xlsx.WorkbookWriter({ filename: path, useSharedStrings: true });
  for (const file of readdirSync(folder)) {
    const { data } = Papa.parse(readFileSync(join(folder, file), 'utf8'), { skipEmptyLines: true });
    const [headers, ...rows] = data;
    const sheet = workbook.addWorksheet(basename(file, '.csv'));
    sheet.addRow(headers).commit();
    for (const row of rows) sheet.addRow(row.map((text, at) => typeCell(headers[at], text))).commit();
    sheet.commit();
  }
  await workbook.commit();
}

/**
 * All of our reading and checking against no more than the library's `readFile`, of the same file.
 * @param {{ folder: string, sample: string, rows: number }} bench
 */
export async function benchWorkbook({ folder, sample, rows }) {
  const sheets = join(folder, `book-${rows}`);
  const path = `${sheets}.xlsx`;
  makeArmy({ sample, folder: sheets, rows });
  await writeWorkbook(sheets, path);
  const ours = ['tests/bench/read-ours.mjs', path];
  const theirs = ['tests/bench/read-theirs.mjs', path];
  const ms = medianMs({ ours, theirs, oursImport: ours.slice(0, 1), theirsImport: theirs.slice(0, 1) }, 3);
  return { ms, oursMb: peakMb(ours), theirsMb: peakMb(theirs) };
}
