import { describe, expect, it } from 'vitest';
import {
  exactMinor,
  minorDigits,
  priceToMinor,
  roundMinor,
  splitWhole,
  toMajor,
} from '../../src/model/money.js';

describe('minor units, ISO 4217 list one', () => {
  it.each([
    ['EUR', 2],
    ['GBP', 2],
    ['HUF', 2],
    ['JPY', 0],
    ['KRW', 0],
    ['ISK', 0],
    ['UGX', 0],
    ['XOF', 0],
    ['BHD', 3],
    ['IQD', 3],
    ['KWD', 3],
    ['TND', 3],
    ['CLF', 4],
    ['UYW', 4],
  ])('%s has %i digits', (currency, digits) => {
    expect(minorDigits(currency)).toBe(digits);
  });

  it('differs from Intl where Intl leaves the standard', () => {
    const intl = new Intl.NumberFormat('en', { style: 'currency', currency: 'IQD' }).resolvedOptions();
    expect(intl.maximumFractionDigits).not.toBe(minorDigits('IQD'));
  });
});

describe('half up, worked by hand', () => {
  // 24.785 is 24.784999... and 1.005 is 1.00499... as binary numbers: exact decimals round them as written.
  it.each([
    ['24.785', '24.79'],
    ['2.675', '2.68'],
    ['1.005', '1.01'],
    ['1.0049', '1.00'],
  ])('%s is %s', (exact, shown) => {
    expect(toMajor(exactMinor(exact).times(100), 'EUR')).toBe(shown);
  });

  it('rounds minor units half up', () => {
    expect(roundMinor(exactMinor('2478.5'))).toBe(2479);
    expect(roundMinor(exactMinor('2478.4999999'))).toBe(2478);
  });

  it('keeps the digits of the currency, or more when asked', () => {
    expect(toMajor(1250, 'EUR')).toBe('12.50');
    expect(toMajor(5, 'EUR')).toBe('0.05');
    expect(toMajor(0, 'EUR')).toBe('0.00');
    expect(toMajor(-5, 'EUR')).toBe('-0.05');
    expect(toMajor(Number.MAX_SAFE_INTEGER, 'EUR')).toBe('90071992547409.91');
    expect(toMajor(1250, 'JPY')).toBe('1250');
    expect(toMajor(1250, 'KWD')).toBe('1.250');
    expect(toMajor(7, 'UYW')).toBe('0.0007');
    expect(toMajor(exactMinor('0.123456789'), 'EUR', 6)).toBe('0.001235');
  });
});

describe('prices as written', () => {
  it('become whole minor units', () => {
    expect(priceToMinor('24.79', 'EUR')).toBe(2479);
    expect(priceToMinor(0.1 + 0.2, 'EUR')).toBeUndefined();
    expect(priceToMinor('3.505', 'EUR')).toBeUndefined();
    expect(priceToMinor('3.505', 'KWD')).toBe(3505);
    expect(priceToMinor('380', 'JPY')).toBe(380);
    expect(priceToMinor('380.5', 'JPY')).toBeUndefined();
  });
});

describe('largest remainder (Hamilton)', () => {
  it.each([
    // Worked example of apportionment textbooks: votes over 10 seats.
    [10, [47000, 16000, 15800, 12000, 6100, 3100], [5, 2, 1, 1, 1, 0]],
    [44, [21878, 9713, 4167, 3252, 1065], [24, 11, 5, 3, 1]],
    [1000, [1, 1, 1], [334, 333, 333]],
    [0, [1, 2], [0, 0]],
    [5, [0, 0], [0, 0]],
    [7, [], []],
  ])('%i over %j', (whole, weights, parts) => {
    expect(splitWhole(whole, weights)).toEqual(parts);
  });
});
