import exceljs from 'exceljs';
import { describe, expect, it, vi } from 'vitest';
import type { Cell, SheetColumn } from '../../../src/report/workbook/estimate/workbook-view.js';
import { guardText } from '../../../src/report/workbook/guard-text.js';
import { writeEstimateWorkbook } from '../../../src/report/workbook/write-estimate-workbook.js';
import { dangerous } from './formula-starts.js';
import { readWorkbook } from './recalculate-workbook.js';

const bookOf = (columns: readonly SheetColumn[], rows: readonly (readonly Cell[])[]): Promise<Uint8Array> =>
  writeEstimateWorkbook({ date: '2026-03-14', sheets: [{ name: 'one', columns, rows }] });

async function sheetOf(columns: readonly SheetColumn[], ...rows: Cell[][]): Promise<exceljs.Worksheet> {
  const sheet = (await readWorkbook(await bookOf(columns, rows))).getWorksheet('one');
  if (sheet === undefined) throw new Error('no sheet');
  return sheet;
}

async function cellOf(cell: Cell): Promise<exceljs.Cell> {
  return (await sheetOf([{ header: 'h', width: 10, digits: 3 }], [cell])).getCell('A2');
}

const blue = { argb: 'FF1F4E9E' };

describe('the cells of estimate.xlsx', () => {
  it('are numbers, text, formulas with their results, or blank', async () => {
    expect((await cellOf(1.5)).value).toBe(1.5);
    expect((await cellOf(1e-7)).value).toBe(1e-7);
    expect((await cellOf(0)).value).toBe(0);
    expect((await cellOf(' plain ')).value).toBe(' plain ');
    expect((await cellOf({ formula: 'IF(1<2,3,4)', result: 3 })).value).toEqual({
      formula: 'IF(1<2,3,4)',
      result: 3,
    });
    expect((await cellOf({ formula: '1-1', result: 0 })).result).toBe(0);
    expect((await cellOf({ formula: 'IF(1>2,"a","")', result: '' })).formula).toBe('IF(1>2,"a","")');
    expect((await cellOf({ formula: 'IF(1<2,"a<b","")', result: 'a<b' })).result).toBe('a<b');
    expect((await cellOf(undefined)).value).toBeNull();
    expect((await cellOf('')).value).toBeNull();
  });

  it('stay in their row and column beside blank ones', async () => {
    const columns = ['a', 'b', 'c'].map((header) => ({ header, width: 10 }));
    const sheet = await sheetOf(columns, [undefined, 1, undefined], [], ['', '', 'last']);
    expect([sheet.getCell('B2').value, sheet.getCell('C4').value]).toEqual([1, 'last']);
    expect([sheet.actualRowCount, sheet.rowCount]).toEqual([3, 4]);
  });

  it('show what may be changed in blue, and the digits of their column', async () => {
    const columns = [0, 1, 3].map((digits) => ({ header: `h${digits}`, width: 10, digits }));
    const formula = { formula: '1+1', result: 2 };
    const sheet = await sheetOf(
      [...columns, { header: 'h', width: 10 }],
      [2, 2, 2, 2],
      Array(4).fill(formula),
    );
    const [numbers, formulas] = [2, 3].map((row) => [1, 2, 3, 4].map((at) => sheet.getCell(row, at)));
    expect(numbers?.map(({ font }) => font.color)).toEqual([blue, blue, blue, blue]);
    expect(formulas?.filter(({ font }) => font?.color?.argb !== undefined)).toEqual([]);
    expect(numbers?.map(({ numFmt }) => numFmt)).toEqual(['0', '0.0', '0.000', undefined]);
    expect(formulas?.map(({ numFmt }) => numFmt)).toEqual(['0', '0.0', '0.000', undefined]);
  });

  it('show text, and numbers that are only to be read, in black', async () => {
    const columns = [{ header: 'h', width: 10, isFixed: true as const, digits: 1 }];
    const sheet = await sheetOf(columns, [7], ['text']);
    expect(sheet.getCell('A2').font?.color?.argb).toBeUndefined();
    expect(sheet.getCell('A2').numFmt).toBe('0.0');
    expect(sheet.getCell('A3').font?.color?.argb).toBeUndefined();
  });

  it('have an error value where a number is none', async () => {
    const error = { error: '#DIV/0!' };
    expect((await cellOf({ formula: '1/0', result: Number.POSITIVE_INFINITY })).result).toEqual(error);
    expect((await cellOf(Number.NaN)).value).toEqual(error);
  });

  it.each(dangerous)('hold %j as guarded text', async (text) => {
    const cell = await cellOf(text);
    expect(cell.type).toBe(exceljs.ValueType.String);
    expect(cell.formula).toBeUndefined();
    expect(cell.value).toBe(guardText(text).replace(/\r\n?/g, '\n'));
  });
});

describe('a sheet of estimate.xlsx', () => {
  // 9 is the width that the library leaves to the sheet's default.
  it('has its headers in bold in row 1, which stays in sight, and its widths', async () => {
    const widths = [4, 9, 9, 120];
    const sheet = await sheetOf(
      widths.map((width) => ({ header: `w${width}`, width })),
      [1],
    );
    expect(sheet.getRow(1).values).toEqual([undefined, 'w4', 'w9', 'w9', 'w120']);
    expect(sheet.getCell('D1').font).toMatchObject({ bold: true, name: 'Calibri', size: 11 });
    expect(sheet.getCell('A2').font.bold).toBeUndefined();
    expect(sheet.views[0]).toMatchObject({ state: 'frozen', ySplit: 1 });
    const found = widths.map((_, at) => sheet.getColumn(at + 1).width ?? sheet.properties.defaultColWidth);
    expect(found).toEqual(widths);
    expect(sheet.pageSetup).toMatchObject({ orientation: 'landscape', fitToPage: true, fitToHeight: 0 });
  });

  it('has the same bytes at any time', async () => {
    const columns = [{ header: 'h', width: 10 }];
    const once = await bookOf(columns, [['a'], [1]]);
    vi.useFakeTimers({ now: new Date('2031-07-08T09:10:11Z'), toFake: ['Date'] });
    try {
      expect(Buffer.from(await bookOf(columns, [['a'], [1]])).equals(Buffer.from(once))).toBe(true);
    } finally {
      vi.useRealTimers();
    }
  });
});
