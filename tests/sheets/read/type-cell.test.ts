import { describe, expect, it } from 'vitest';
import { type CellFormat, plainFormat } from '../../../src/sheets/read/read-format.js';
import { type StoredCell, typeCell } from '../../../src/sheets/read/type-cell.js';
import { WorkbookError } from '../../../src/sheets/read/workbook-error.js';

const around = { strings: ['brick red'], date1904: false };

const inFormat = (kind: CellFormat['kind'], unit = ''): CellFormat => ({ kind, unit });

const stored = (cell: Partial<StoredCell>): StoredCell => ({
  type: '',
  value: undefined,
  inline: '',
  formula: undefined,
  format: plainFormat,
  ...cell,
});

describe('typeCell', () => {
  it.each<[string, Partial<StoredCell>, unknown]>([
    ['nothing', {}, ''],
    ['text', { type: 'str', value: '  brick red ' }, 'brick red'],
    ['encoded text', { type: 'str', value: 'salt &amp; pepper_x000D_' }, 'salt & pepper'],
    ['inline text', { type: 'inlineStr', inline: ' brick red' }, 'brick red'],
    ['shared text', { type: 's', value: '0' }, 'brick red'],
    ['blanks', { type: 'str', value: '   ' }, ''],
    ['a number', { value: '17.5' }, 17.5],
    ['a number of type n', { type: 'n', value: '1.7E1' }, 17],
    ['zero', { value: '0' }, 0],
    ['an empty number', { value: '' }, ''],
    ['true', { type: 'b', value: '1' }, true],
    ['false', { type: 'b', value: '0' }, false],
    ['a formula of a number', { formula: '1+2', value: '3' }, 3],
    ['a formula of text', { formula: 'A1', type: 'str', value: ' red ' }, 'red'],
    ['a formula of an empty text', { formula: 'A1', type: 'str', value: '' }, ''],
    ['a formula of false', { formula: '1=2', type: 'b', value: '0' }, false],
    ['an error', { type: 'e', value: '#N/A' }, { kind: 'broken', why: 'error value', shown: '#N/A' }],
    ['no number', { value: 'x' }, { kind: 'broken', why: 'error value', shown: '#NUM!' }],
    ['a huge number', { value: '1e999' }, { kind: 'broken', why: 'error value', shown: '#NUM!' }],
    [
      'a formula without result',
      { formula: 'B2&amp;C2' },
      { kind: 'broken', why: 'formula without result', shown: '=B2&C2' },
    ],
    [
      'a formula with an empty result',
      { formula: 'B2*2', value: '' },
      { kind: 'broken', why: 'formula without result', shown: '=B2*2' },
    ],
    [
      'a share of a formula without result',
      { formula: '' },
      { kind: 'broken', why: 'formula without result', shown: '=...' },
    ],
    [
      'an ISO date and time',
      { type: 'd', value: '2026-01-31T00:00:00' },
      { kind: 'date', iso: '2026-01-31' },
    ],
    ['a day as text', { type: 'str', value: '2026-01-31' }, '2026-01-31'],
  ])('gives %s as it is meant', (_, cell, expected) => {
    expect(typeCell(stored(cell), around)).toEqual(expected);
  });

  it('misses a shared text', () => {
    for (const value of ['1', '-1', 'x', '0.5'])
      expect(() => typeCell(stored({ type: 's', value }), around)).toThrow(WorkbookError);
  });

  it.each([
    ['0.6', '60%'],
    ['0.075', '7.5%'],
    ['0.07', '7%'],
    ['1', '100%'],
    ['0.30000000000000004', '30%'],
    ['0', '0%'],
  ])('gives %s in a percent format as %s', (value, text) => {
    expect(typeCell(stored({ value, format: inFormat('percent') }), around)).toBe(text);
    expect(typeCell(stored({ value, format: inFormat('percent'), formula: 'A1' }), around)).toBe(text);
  });

  it('keeps what a format writes beside a number, and beside nothing else', () => {
    const format = inFormat('number', '$');
    expect(typeCell(stored({ value: '3.5', format }), around)).toEqual({
      kind: 'measured',
      value: 3.5,
      unit: '$',
    });
    expect(typeCell(stored({ type: 's', value: '0', format }), around)).toBe('brick red');
    expect(typeCell(stored({ type: 'b', value: '1', format }), around)).toBe(true);
    expect(typeCell(stored({ format }), around)).toBe('');
  });

  // ECMA-376 18.17.4.1: serial 1 is 1900-01-01 with a leap day that never was before 61; in the 1904 system 0
  // is 1904-01-01.
  it.each([
    ['61', false, '1900-03-01'],
    ['25569', false, '1970-01-01'],
    ['45000.99999', false, '2023-03-15'],
    ['0', true, '1904-01-01'],
    ['24107', true, '1970-01-01'],
  ])('gives serial %s (1904: %s) as the day %s', (value, date1904, iso) => {
    expect(typeCell(stored({ value, format: inFormat('date') }), { ...around, date1904 })).toEqual({
      kind: 'date',
      iso,
    });
  });

  it('finds a date that no spreadsheet can show', () => {
    for (const value of ['1e12', '4e6', '-1e7'])
      expect(typeCell(stored({ value, format: inFormat('date') }), around)).toMatchObject({ shown: '#####' });
  });
});
