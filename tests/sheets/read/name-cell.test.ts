import { expect, it } from 'vitest';
import { cellAddress, columnLetters, columnNumber } from '../../../src/sheets/read/name-cell.js';

// The last column of a worksheet, 16,384, is XFD (Excel specifications and limits).
it.each([
  [1, 'A'],
  [26, 'Z'],
  [27, 'AA'],
  [52, 'AZ'],
  [702, 'ZZ'],
  [703, 'AAA'],
  [16_384, 'XFD'],
])('names column %i %s, and finds it by name', (column, letters) => {
  expect(columnLetters(column)).toBe(letters);
  expect(columnNumber(letters)).toBe(column);
  expect(cellAddress(column, 14)).toBe(`${letters}14`);
});

it('counts letters of any case, and none as 0', () => {
  expect(columnNumber('ab')).toBe(28);
  expect(columnNumber('')).toBe(0);
  expect(columnLetters(0)).toBe('');
});
