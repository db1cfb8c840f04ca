import { inflateRawSync } from 'node:zlib';
import exceljs from 'exceljs';
import { describe, expect, it } from 'vitest';
import { guardText } from '../../../src/report/export/guard-text.js';
import { packZip } from '../../../src/report/export/pack-zip.js';
import { writeEstimateWorkbook } from '../../../src/report/export/write-estimate-workbook.js';
import type { Cell } from '../../../src/report/view/estimate-workbook/workbook-view.js';
import { dangerous } from './formula-starts.js';
import { readWorkbook } from './recalculate-workbook.js';

const bookOf = (...cells: Cell[]): Uint8Array =>
  writeEstimateWorkbook({
    date: '2026-03-14',
    sheets: [
      {
        name: 'one',
        columns: cells.map((_, at) => ({ header: `h${at}`, width: 10, digits: 3 })),
        rows: [cells],
      },
    ],
  });

/** A part of an archive, found by its name in the header before it (APPNOTE 4.3.7). */
function partOf(bytes: Uint8Array, name: string): string {
  const archive = Buffer.from(bytes);
  const at = archive.indexOf(name) - 30;
  const start = at + 30 + name.length;
  return inflateRawSync(archive.subarray(start, start + archive.readUInt32LE(at + 18))).toString('utf8');
}

async function cellOf(cell: Cell): Promise<exceljs.Cell> {
  const book = await readWorkbook(bookOf(cell));
  const sheet = book.getWorksheet('one');
  if (sheet === undefined) throw new Error('no sheet');
  return sheet.getCell('A2');
}

describe('the cells of estimate.xlsx', () => {
  it('are numbers, text, formulas with their results, or blank', async () => {
    expect((await cellOf(1.5)).value).toBe(1.5);
    expect((await cellOf(1e-7)).value).toBe(1e-7);
    expect((await cellOf(' plain ')).value).toBe(' plain ');
    expect((await cellOf({ formula: 'IF(1<2,3,4)', result: 3 })).value).toEqual({
      formula: 'IF(1<2,3,4)',
      result: 3,
    });
    expect((await cellOf({ formula: 'IF(1>2,"a","")', result: '' })).formula).toBe('IF(1>2,"a","")');
    expect((await cellOf(undefined)).value).toBeNull();
  });

  it('show what may be changed in blue, and the digits of their column', async () => {
    const number = await cellOf(2);
    const formula = await cellOf({ formula: '1+1', result: 2 });
    expect(number.font.color).toEqual({ argb: 'FF1F4E9E' });
    expect(formula.font.color).toBeUndefined();
    expect([number.numFmt, formula.numFmt]).toEqual(['0.000', '0.000']);
  });

  it('show numbers that are only to be read in black', async () => {
    const columns = [{ header: 'h', width: 10, isFixed: true as const }];
    const view = { date: '2026-03-14', sheets: [{ name: 'one', columns, rows: [[7]] }] };
    const sheet = (await readWorkbook(writeEstimateWorkbook(view))).getWorksheet('one');
    expect(sheet?.getCell('A2').font?.color).toBeUndefined();
  });

  it('have an error value where a number is none', async () => {
    const cell = await cellOf({ formula: '1/0', result: Number.POSITIVE_INFINITY });
    expect(cell.result).toEqual({ error: '#DIV/0!' });
  });

  it.each(dangerous)('hold %j as guarded text', async (text) => {
    const cell = await cellOf(text);
    expect(cell.type).toBe(exceljs.ValueType.String);
    expect(cell.formula).toBeUndefined();
    expect(cell.value).toBe(guardText(text).replace(/\r\n?/g, '\n'));
  });

  // What XML 1.0 (2.2) has no place for becomes U+FFFD; the rest comes back.
  it.each([
    ['<a href="x">&amp;</a>', '<a href="x">&amp;</a>'],
    ['bell \u0007 and null \u0000', 'bell \ufffd and null \ufffd'],
    ['half \ud83d a pair', 'half \ufffd a pair'],
    ['none \uffff', 'none \ufffd'],
    ['two\r\nlines', 'two\nlines'],
    ['\u05e9\u05dc\u05d5\u05dd \u202e \ud83c\udfa8', '\u05e9\u05dc\u05d5\u05dd \u202e \ud83c\udfa8'],
    ['__proto__', '__proto__'],
  ])('give %j as %j', async (text, read) => {
    expect((await cellOf(text)).value).toBe(read);
  });

  // ISO/IEC 29500-1, 22.9.2.19: the underline itself is escaped, so that no letter is read out of it.
  it('keep text that looks like an escape', () => {
    expect(partOf(bookOf('_x0041_'), 'xl/worksheets/sheet1.xml')).toContain('>_x005F_x0041_<');
  });

  // 32,767 characters a cell: published limit of XLSX spreadsheets.
  it('end where a cell ends, never in the middle of a character', async () => {
    expect(String((await cellOf('x'.repeat(40_000))).value)).toHaveLength(32_767);
    expect(String((await cellOf(`${'x'.repeat(32_766)}\ud83c\udfa8`)).value)).toBe('x'.repeat(32_766));
  });
});

describe('packZip', () => {
  it('gives the same bytes each time, and the day of the plan', () => {
    expect(Buffer.from(bookOf('a', 1)).equals(Buffer.from(bookOf('a', 1)))).toBe(true);
    const one = Buffer.from(packZip([{ name: 'a', text: 'x' }], '2026-03-14'));
    // APPNOTE 4.4.6: years since 1980, month, day in 7, 4 and 5 bits.
    expect(one.readUInt16LE(12)).toBe((46 << 9) | (3 << 5) | 14);
  });

  it('holds each part whole', () => {
    const text = 'größe '.repeat(500);
    const archive = Buffer.from(packZip([{ name: 'part.xml', text }], '2026-03-14'));
    expect(partOf(archive, 'part.xml')).toBe(text);
    expect(archive.readUInt32LE(22)).toBe(Buffer.byteLength(text));
  });
});
