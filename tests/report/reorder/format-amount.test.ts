import { describe, expect, it } from 'vitest';
import { formatAmount, majorNumber, roundMl } from '../../../src/report/reorder/format-amount.js';

describe('amounts', () => {
  // Digits of the minor unit by ISO 4217: EUR 2, JPY 0, IQD 3, UYW 4.
  it.each([
    [1250, 2, '12.50', 12.5],
    [5, 2, '0.05', 0.05],
    [0, 2, '0.00', 0],
    [-5, 2, '-0.05', -0.05],
    [1250, 0, '1250', 1250],
    [1250, 3, '1.250', 1.25],
    [7, 4, '0.0007', 0.0007],
    [Number.MAX_SAFE_INTEGER, 2, '90071992547409.91', 90071992547409.91],
  ])('%d minor units with %d digits are %s', (minor, digits, text, number) => {
    expect(formatAmount(minor, digits)).toBe(text);
    expect(majorNumber(minor, digits)).toBe(number);
  });

  it.each([
    [3.1459, 3.15],
    [3.1, 3.1],
    [0.0001, 0.01],
    [0, 0],
    [2.3, 2.3],
  ])('%d ml are listed as %d', (ml, shown) => {
    expect(roundMl(ml)).toBe(shown);
  });
});
