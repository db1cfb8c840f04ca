import type { CellValue } from 'exceljs';
import { describe, expect, it } from 'vitest';
import { kindOfFormat, typeCell } from '../../../src/sheets/read/type-cell.js';

const plain = { numberFormat: undefined, date1904: false };
const as = (numberFormat: string, date1904 = false) => ({ numberFormat, date1904 });

describe('typeCell', () => {
  it.each<[string, CellValue, unknown]>([
    ['nothing', null, ''],
    ['text', '  brick red ', 'brick red'],
    ['blanks', '   ', ''],
    ['a number', 17.5, 17.5],
    ['zero', 0, 0],
    ['true', true, true],
    ['false', false, false],
    ['rich text', { richText: [{ text: 'brick ' }, { text: 'red', font: { bold: true } }] }, 'brick red'],
    ['a link', { text: 'brick red', hyperlink: 'https://example.org' }, 'brick red'],
    ['a formula of a number', { formula: '1+2', result: 3, date1904: false }, 3],
    ['a formula of text', { formula: 'A1', result: ' red ', date1904: false }, 'red'],
    ['a formula of false', { formula: '1=2', result: false, date1904: false }, false],
    ['an error', { error: '#N/A' }, { kind: 'broken', why: 'error value', shown: '#N/A' }],
    [
      'a formula of an error',
      { formula: '1/0', result: { error: '#DIV/0!' }, date1904: false },
      { kind: 'broken', why: 'error value', shown: '#DIV/0!' },
    ],
    [
      'a formula without result',
      { formula: 'B2*2', date1904: false },
      { kind: 'broken', why: 'formula without result', shown: '=B2*2' },
    ],
    ['an ISO date and time', '2026-01-31T00:00:00', { kind: 'date', iso: '2026-01-31' }],
    ['a day as text', '2026-01-31', '2026-01-31'],
  ])('gives %s as it is meant', (_, value, cell) => {
    expect(typeCell(value, plain)).toEqual(cell);
  });

  it.each([
    [0.6, '0%', '60%'],
    [0.075, '0.0%', '7.5%'],
    [0.07, '0%', '7%'],
    [1, '0 %', '100%'],
    [0.1 + 0.2, '0%', '30%'],
    [0, '0%', '0%'],
  ])('gives %d in the format %s as %s', (value, format, text) => {
    expect(typeCell(value, as(format))).toBe(text);
    expect(typeCell({ formula: 'A1', result: value, date1904: false }, as(format))).toBe(text);
  });

  // ECMA-376 18.17.4.1: serial 1 is 1900-01-01 with a leap day that never was before 61; in the 1904 system 0
  // is 1904-01-01.
  it.each([
    [61, false, '1900-03-01'],
    [25_569, false, '1970-01-01'],
    [45_000.99999, false, '2023-03-15'],
    [0, true, '1904-01-01'],
    [24_107, true, '1970-01-01'],
  ])('gives serial %d (1904: %s) as the day %s', (serial, date1904, iso) => {
    expect(typeCell(serial, as('dd/mm/yyyy', date1904))).toEqual({ kind: 'date', iso });
  });

  it('keeps the day of a date in UTC', () => {
    const day = { kind: 'date', iso: '2026-01-31' };
    expect(typeCell(new Date('2026-01-31T00:00:00Z'), as('yyyy-mm-dd'))).toEqual(day);
    expect(typeCell(new Date('2026-01-31T23:59:59Z'), as('yyyy-mm-dd'))).toEqual(day);
  });

  it('finds a date that no spreadsheet can show', () => {
    for (const value of [1e12, 4e6, -1e7]) {
      expect(typeCell(value, as('yyyy-mm-dd'))).toMatchObject({ kind: 'broken', shown: '#####' });
    }
    expect(typeCell(new Date(Number.NaN), as('yyyy-mm-dd'))).toMatchObject({ kind: 'broken' });
  });

  it('takes a number back that was taken for a date', () => {
    const wrongly = new Date(Math.round((12.34 - 25_569) * 86_400_000));
    expect(typeCell(wrongly, as('0.00_m'))).toBe(12.34);
  });
});

describe('kindOfFormat', () => {
  it.each([
    [undefined, 'number'],
    ['General', 'number'],
    ['0.00', 'number'],
    ['#,##0.00\\ [$€-407]', 'number'],
    ['0.0" ml"', 'number'],
    ['0.0\\ \\m\\l', 'number'],
    ['_-* #,##0.00_-;-* #,##0.00_-', 'number'],
    ['0.00E+00', 'number'],
    ['[Red]0;[DBNum1]0', 'number'],
    ['@', 'number'],
    ['0%', 'percent'],
    ['0.00%;[Red]-0.00%', 'percent'],
    ['0"%"', 'number'],
    ['yyyy-mm-dd', 'date'],
    ['DD/MM/YYYY', 'date'],
    ['[$-407]d. mmmm yyyy', 'date'],
    ['h:mm AM/PM', 'date'],
    ['[h]:mm', 'date'],
    ['mm-dd-yy', 'date'],
  ])('takes %s for a %s', (format, kind) => {
    expect(kindOfFormat(format)).toBe(kind);
  });
});
