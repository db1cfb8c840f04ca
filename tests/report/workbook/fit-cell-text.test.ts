import { describe, expect, it } from 'vitest';
import { writeReorderWorkbook } from '../../../src/report/reorder/write-reorder-workbook.js';
import { fitCellText } from '../../../src/report/workbook/fit-cell-text.js';
import { writeEstimateWorkbook } from '../../../src/report/workbook/write-estimate-workbook.js';
import { withText } from '../reorder/reorder-example.js';
import { harmless } from './formula-starts.js';
import { readWorkbook } from './recalculate-workbook.js';

/** What comes back of a text out of estimate.xlsx. */
async function inEstimate(text: string): Promise<unknown> {
  const columns = [{ header: 'h', width: 10 }];
  const sheets = [{ name: 'one', columns, rows: [[text]] }];
  const book = await readWorkbook(await writeEstimateWorkbook({ date: '2026-03-14', sheets }));
  return book.getWorksheet('one')?.getCell('A2').value;
}

/** The same of reorder.xlsx. */
async function inReorder(text: string): Promise<unknown> {
  const book = await readWorkbook(await writeReorderWorkbook(withText(text)));
  return book.getWorksheet('sums')?.getCell('B2').value;
}

// What XML 1.0 (2.2) has no place for becomes U+FFFD; the rest comes back. A reader takes _x0041_ for a letter by
// ISO/IEC 29500-1, 22.9.2.19; both workbooks are read by a library that does so.
const odd: [string, string][] = [
  ['<a href="x">&amp;</a>', '<a href="x">&amp;</a>'],
  ['bell \u0007 and null \u0000', 'bell \ufffd and null \ufffd'],
  ['delete \u007f and next line \u0085', 'delete \ufffd and next line \ufffd'],
  ['half \ud83d a pair', 'half \ufffd a pair'],
  ['none \uffff', 'none \ufffd'],
  ['two\r\nlines', 'two\nlines'],
  ['\u05e9\u05dc\u05d5\u05dd \u202e \ud83c\udfa8', '\u05e9\u05dc\u05d5\u05dd \u202e \ud83c\udfa8'],
  ['__proto__', '__proto__'],
  ['constructor', 'constructor'],
  ['_x0041_ and _x005F_', '_x0041_ and _x005F_'],
  [' blanks at the ends ', ' blanks at the ends '],
  ['x'.repeat(32_767), 'x'.repeat(32_767)],
  // 32,767 characters a cell: published limit of XLSX spreadsheets. A character is not halved at the cut.
  ['x'.repeat(40_000), 'x'.repeat(32_767)],
  [`${'x'.repeat(32_766)}\ud83c\udfa8`, 'x'.repeat(32_766)],
];

describe.each([
  ['estimate.xlsx', inEstimate],
  ['reorder.xlsx', inReorder],
])('a text in %s', (_, read) => {
  it.each(odd.map(([text, wanted]) => [text.slice(0, 40), text, wanted]))('%j', async (_, text, wanted) => {
    expect(await read(text)).toBe(wanted);
  });
});

describe('fitCellText', () => {
  it.each(harmless)('leaves %j as it is', (text) => {
    expect(fitCellText(text)).toBe(text);
  });
});
