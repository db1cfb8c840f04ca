// Numbers as text: digits of ISO 4217, half up, locales, shares that are not quite 0 or 1.
import { describe, expect, it } from 'vitest';
import { exactMinor } from '../../../src/model/money.js';
import type { Settings } from '../../../src/model/sheets.js';
import { formOf } from '../../../src/report/words/form-of.js';
import {
  countOf,
  listOf,
  listOr,
  mlDigits,
  numberWords,
  wordDate,
  wordNumerals,
} from '../../../src/report/words/word-numbers.js';

const settings = (locale: string, currency: string): Settings => ({
  locale,
  currency,
  surePercent: 90,
  restock: 'army',
  overrides: [],
});
/** Intl puts no-break spaces between number and sign. */
const plainSpaces = (text: string): string => text.replace(/[\u00a0\u202f]/g, ' ');

describe('money', () => {
  it.each([
    ['EUR', 999.4, '€9.99'],
    ['EUR', 999.5, '€10'],
    ['EUR', 14920, '€149'],
    ['JPY', 9, '¥9'],
  ])('that is no more than likely has no cents from ten on: %s, %d', (currency, minor, about) => {
    expect(numberWords(settings('en', currency)).about(minor)).toBe(about);
  });

  // Digits after the point: ISO 4217 list one. Intl's own tables differ for IQD (0) and HUF (0 in some forms).
  it.each([
    ['en-GB', 'EUR', 1250, '€12.50'],
    ['de-DE', 'EUR', 123456, '1.234,56 €'],
    ['en', 'JPY', 1250, '¥1,250'],
    ['en', 'IQD', 12345, 'IQD 12.345'],
    ['en', 'HUF', 12345, 'HUF 123.45'],
    ['en', 'CLF', 12345, 'CLF 1.2345'],
    ['en', 'EUR', 9007199254740991, '€90,071,992,547,409.91'],
  ])('%s %s %d is %s', (locale, currency, minor, text) => {
    expect(plainSpaces(numberWords(settings(locale, currency)).money(minor))).toBe(text);
  });

  it.each([
    ['2478.5', false, '€24.79'],
    ['267.4999', false, '€2.67'],
    ['100.5', true, 'at least €1.01'],
    ['0', true, 'unpriced'],
    ['0', false, '€0.00'],
    ['0.3', false, 'under €0.01'],
    ['0.3', true, 'under €0.01'],
  ])('%s minor units, something unpriced %s: %s', (exact, atLeast, text) => {
    const words = numberWords(settings('en-GB', 'EUR'));
    expect(words.amount({ exactMinor: exactMinor(exact), atLeast })).toBe(text);
  });
});

describe('volumes and shares', () => {
  const words = numberWords(settings('en', 'EUR'));

  it.each([
    [0, '0.0 ml'],
    [0.004, 'under 0.01 ml'],
    [0.05, '0.05 ml'],
    [12.25, '12.3 ml'],
    [1234.5, '1,235 ml'],
  ])('%d ml is %s', (ml, text) => expect(plainSpaces(words.ml(ml))).toBe(text));

  it.each([
    [0, '0%'],
    [0.001, 'under 1%'],
    [0.5, '50%'],
    [0.999, 'over 99%'],
    [1, '100%'],
  ])('a share of %d is %s', (share, text) => expect(words.percent(share)).toBe(text));

  it('gives small volumes two digits and a litre none', () => {
    expect([0, 0.3, 1, 999, 1000].map(mlDigits)).toEqual([1, 2, 1, 1, 0]);
  });

  it('follows the locale', () => {
    expect(plainSpaces(numberWords(settings('de-DE', 'EUR')).ml(12.25))).toBe('12,3 ml');
  });
});

describe('numerals, for whoever reads numbers back', () => {
  // Decimal marks and digits of Unicode's CLDR, as Intl has them.
  it.each([
    ['en-GB', '.', '0123456789'],
    ['de-CH', '.', '0123456789'],
    ['de-DE', ',', '0123456789'],
    ['ar-EG', '\u066b', '\u0660\u0661\u0662\u0663\u0664\u0665\u0666\u0667\u0668\u0669'],
  ])('of %s', (locale, decimal, digits) =>
    expect(wordNumerals(numberWords(settings(locale, 'EUR')))).toEqual({ decimal, digits }),
  );
});

describe('lists and dates', () => {
  it.each([
    [[], ''],
    [['a'], 'a'],
    [['a', 'b'], 'a and b'],
    [['a', 'b', 'c'], 'a, b and c'],
    [['a', 'b', 'c', 'd', 'e', 'f', 'g'], 'a, b, c, d, e and 2 more'],
  ])('%j reads "%s"', (names, text) => {
    expect(listOf(names)).toBe(text);
    expect(listOr(names)).toBe(text.replace(' and ', ' or '));
  });

  it.each([
    [0, '0 boxes'],
    [1, '1 box'],
    [2, '2 boxes'],
    [1001, '1,001 boxes'],
  ])('counts %d as "%s"', (count, text) =>
    expect(countOf(numberWords(settings('en', 'EUR')), count, 'box', 'boxes')).toBe(text),
  );

  // Unicode's CLDR: of English cardinals, one is 1 without digits after the point.
  it.each([
    [0, 'are'],
    [1, 'is'],
    [1.5, 'are'],
    [2, 'are'],
  ])('of %d there %s', (count, form) => expect(formOf(count, 'is', 'are')).toBe(form));

  it('words a date in the language of the page, whatever the time zone', () => {
    expect(wordDate('2026-10-05', 'en-GB')).toBe('5 October 2026');
    expect(wordDate('not a date', 'en')).toBe('not a date');
  });
});
