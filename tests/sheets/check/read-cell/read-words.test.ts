// Prices, dates, codes, colours, shapes, readings and lists: what is read and what is refused.
import { describe, expect, it } from 'vitest';
import { Mistake, readCell } from '../../../../src/sheets/check/read-cell/cell-kind.js';
import { choiceKind, yesKind } from '../../../../src/sheets/check/read-cell/read-choice.js';
import { codeKind, rightCheckDigit } from '../../../../src/sheets/check/read-cell/read-code.js';
import { dateKind } from '../../../../src/sheets/check/read-cell/read-date.js';
import { hexKind } from '../../../../src/sheets/check/read-cell/read-hex.js';
import { listKind, nameKind, readPart } from '../../../../src/sheets/check/read-cell/read-name.js';
import { priceKind } from '../../../../src/sheets/check/read-cell/read-price.js';
import {
  currencyKind,
  localeKind,
  surePercentKind,
} from '../../../../src/sheets/check/read-cell/read-setting.js';
import { leftsKind } from '../../../../src/sheets/check/read-cell/read-several.js';
import { baseKind, boxKind } from '../../../../src/sheets/check/read-cell/read-sides.js';

describe('prices', () => {
  it.each([
    ['3.50', 'EUR', 350],
    ['3,50', 'EUR', 350],
    ['3,5', 'EUR', 350],
    ['3.5000', 'EUR', 350],
    ['0', 'EUR', 0],
    [3.1, 'EUR', 310],
    [3.3000000000000003, 'EUR', 330],
    ['3.50 €', 'EUR', 350],
    ['€3.50', 'EUR', 350],
    ['€ 3.50', 'EUR', 350],
    ['EUR 3.50', 'EUR', 350],
    ['3.50eur', 'EUR', 350],
    ['1.234,50 €', 'EUR', 123450],
    ['$3.50', 'USD', 350],
    ['CA$3.50', 'CAD', 350],
    ['$3.50', 'CAD', 350],
    ['35 kr', 'SEK', 3500],
    ['12,90 zł', 'PLN', 1290],
    // Minor units by ISO 4217: JPY 0, KWD 3 digits.
    ['350', 'JPY', 350],
    ['¥350', 'JPY', 350],
    ['1.2500', 'KWD', 1250],
    ['0.125', 'KWD', 125],
    // Three decimals are what a price in such a currency has; English puts commas between thousands, never points.
    ['2.942', 'KWD', 2942],
    ['KWD 12.500', 'KWD', 12500],
    ['999.999 KWD', 'KWD', 999999],
    ['1,234.500', 'KWD', 1234500],
    ['1,234', 'KWD', 'ambiguous-number'],
    ['2.942', 'EUR', 'ambiguous-number'],
  ])('%j in %s is %s', (written, currency, minor) => {
    const read = priceKind({ currency, locale: 'en' }).read(written);
    expect(read instanceof Mistake ? read.code : read).toBe(minor);
  });

  // Thousands by Unicode CLDR: Italian has a point, French a narrow blank.
  it.each([
    ['fr', '2,942', 2942],
    ['fr', '2.942', 2942],
    ['it', '2,942', 2942],
    ['it', '2.942', 'ambiguous-number'],
    ['ar-KW', '2.942', 2942],
  ])('in %s, %s dinars are %s', (locale, written, minor) => {
    const read = priceKind({ currency: 'TND', locale }).read(written);
    expect(read instanceof Mistake ? read.code : read).toBe(minor);
  });

  it.each([
    ['-3.50', 'EUR', 'negative'],
    ['€-3.50', 'EUR', 'negative'],
    ['\u22123.50', 'EUR', 'negative'],
    ['$3.50', 'EUR', 'other-currency'],
    ['3.50 GBP', 'EUR', 'other-currency'],
    ['35 kr', 'EUR', 'other-currency'],
    ['3.505', 'EUR', 'ambiguous-number'],
    ['0.505', 'EUR', 'too-fine'],
    ['3.5', 'JPY', 'too-fine'],
    [3.505, 'EUR', 'too-fine'],
    ['99999999', 'EUR', 'too-much'],
    ['1e3', 'EUR', 'not-a-price'],
    ['3.50 each', 'EUR', 'not-a-price'],
    ['cheap', 'EUR', 'not-a-price'],
    ['€', 'EUR', 'not-a-price'],
    [true, 'EUR', 'not-a-price'],
  ])('%j in %s is questioned: %s', (written, currency, code) => {
    expect(priceKind({ currency, locale: 'en' }).read(written)).toMatchObject({ code });
  });

  it('take the sign that the locale of the settings uses', () => {
    expect(priceKind({ currency: 'CAD', locale: 'fr-CA' }).read('3,50 $')).toBe(350);
    expect(priceKind({ currency: 'CHF', locale: 'de-CH' }).read('CHF 3.50')).toBe(350);
  });

  it('cannot be blamed for sign or digits without a currency', () => {
    const price = priceKind({ currency: undefined, locale: 'en' });
    // Only which is more, and which is nothing, can be told of prices in no currency.
    expect(['0', '0.001', '$3.5051', '12.90'].map(price.read)).toEqual([0, 1, 351, 1290]);
    expect(price.read('cheap')).toMatchObject({
      code: 'not-a-price',
    });
  });
});

describe('dates', () => {
  it.each([
    ['2026-03-14', '2026-03-14'],
    ['2026-3-4', '2026-03-04'],
    ['2026/03/14', '2026-03-14'],
    ['14.3.2026', '2026-03-14'],
    ['14. 3. 2026', '2026-03-14'],
    ['2024-02-29', '2024-02-29'],
    ['2000-02-29', '2000-02-29'],
    // Year last: one of the two numbers is no month, or both orders are the same day.
    ['17/05/2026', '2026-05-17'],
    ['5/17/2026', '2026-05-17'],
    ['13-12-2026', '2026-12-13'],
    ['3/3/2026', '2026-03-03'],
    ['29/2/2024', '2024-02-29'],
  ])('%j is %s', (written, iso) => {
    expect(dateKind.read(written)).toBe(iso);
  });

  it.each([
    ['05/06/2026', 'day-or-month-first', '2026-05-06 or 2026-06-05'],
    ['3-4-2026', 'day-or-month-first', '2026-03-04 or 2026-04-03'],
    ['11/12/2026', 'day-or-month-first', '2026-11-12 or 2026-12-11'],
    ['29/2/2025', 'no-such-day', ''],
    ['2026-02-29', 'no-such-day', ''],
    ['1900-02-29', 'no-such-day', ''],
    ['2026-13-01', 'no-such-day', ''],
    ['31.4.2026', 'no-such-day', ''],
    ['40/40/2026', 'no-such-day', ''],
    ['46095', 'number-for-date', ''],
    [46095, 'number-for-date', ''],
    ['14.3.26', 'not-a-date', ''],
    ['March 2026', 'not-a-date', ''],
    [true, 'not-a-date', ''],
  ])('%j is questioned: %s', (written, code, expected) => {
    expect(dateKind.read(written)).toMatchObject({ code, expected });
  });

  it('are taken from a workbook as they are, and refused where a number is wanted', () => {
    expect(readCell(dateKind, { kind: 'date', iso: '2026-03-14' })).toBe('2026-03-14');
    expect(readCell(hexKind, { kind: 'date', iso: '2026-03-14' })).toMatchObject({
      code: 'date-not-wanted',
      expected: 'a colour',
    });
  });
});

describe('codes', () => {
  it('have the check digit of the example in GS1 General Specifications, 7.9.1 (eighteen digits, clause from memory)', () => {
    expect(rightCheckDigit('376104250021234569')).toBeUndefined();
    expect(rightCheckDigit('376104250021234560')).toBe(9);
  });

  // Of every length, for use inside a shop: prefix 2, or 02 where the code is of 13 digits and came of twelve.
  it.each(['2000310000217', '0230471200207', '20047115', '200031000011', '00200031000011'])(
    '%s is right',
    (code) => {
      expect(codeKind.read(code)).toBe(code);
      expect(rightCheckDigit(code)).toBeUndefined();
    },
  );

  it.each([
    ['2000310000219', 7],
    ['0230471200201', 7],
    ['20047110', 5],
    ['200031000013', 1],
  ])('the last digit of %s should be %d', (code, digit) => {
    expect(rightCheckDigit(code)).toBe(digit);
  });

  it('are text, without blanks and hyphens', () => {
    expect(codeKind.read('0 230471-20020 7')).toBe('0230471200207');
    expect(codeKind.read(2000310000217)).toBe('2000310000217');
    for (const written of ['12345', '6.29104E+12', '200031000021X', 20003100001]) {
      expect(codeKind.read(written)).toMatchObject({ code: 'not-a-code' });
    }
  });
});

describe('colours', () => {
  it.each([
    ['#8A2B2B', '#8a2b2b'],
    ['8a2b2b', '#8a2b2b'],
    ['#abc', '#aabbcc'],
    [123456, '#123456'],
  ])('%j is %s', (written, hex) => {
    expect(hexKind.read(written)).toBe(hex);
  });

  it.each(['abc', '#12345', '#12345g', 'red', 8000])('%j is none', (written) => {
    expect(hexKind.read(written)).toMatchObject({ code: 'not-a-colour' });
  });
});

describe('bases and boxes', () => {
  it.each([
    ['round 25', { shape: 'round', acrossMm: 25 }],
    ['Round 28,5 mm', { shape: 'round', acrossMm: 28.5 }],
    ['square 20', { shape: 'rectangle', longMm: 20, wideMm: 20 }],
    ['25x50', { shape: 'rectangle', longMm: 50, wideMm: 25 }],
    ['25 × 50 mm', { shape: 'rectangle', longMm: 50, wideMm: 25 }],
    ['oval 60x35', { shape: 'oval', longMm: 60, wideMm: 35 }],
    ['none', 'none'],
  ])('%j', (written, base) => {
    expect(baseKind.read(written)).toEqual(base);
  });

  it.each([
    ['25', 'not-a-base'],
    [25, 'not-a-base'],
    ['oval 60', 'not-a-base'],
    ['square 20x25', 'not-a-base'],
    ['20x20x20', 'not-a-base'],
    ['round', 'not-a-base'],
    ['round 0', 'zero'],
    ['round 1500', 'too-much'],
    ['round 1', 'too-little'],
    ['1,234x50', 'ambiguous-number'],
  ])('%j is questioned: %s', (written, code) => {
    expect(baseKind.read(written)).toMatchObject({ code });
  });

  it('reads a box', () => {
    expect(boxKind.read('90x30x20')).toEqual({ longMm: 90, wideMm: 30, highMm: 20 });
    expect(boxKind.read('90 X 30,5 x 20 mm')).toEqual({ longMm: 90, wideMm: 30.5, highMm: 20 });
    for (const written of ['90x30', '90x30x20x25x9', 'big', 90]) {
      expect(boxKind.read(written)).toMatchObject({ code: 'not-a-box' });
    }
    const box = { longMm: 90, wideMm: 30, highMm: 20 };
    expect(boxKind.read('90x30x20x20,5')).toEqual({ ...box, ridgeMm: 20.5 });
    expect(boxKind.read('90x30x20x20')).toEqual({ ...box, ridgeMm: 20 });
    expect(boxKind.read('90x30x20x19.9')).toMatchObject({ code: 'ridge-under-eaves' });
    expect(boxKind.read('90x0x20')).toMatchObject({ code: 'zero' });
  });
});

describe('what is left', () => {
  it.each([
    ['full', { how: 'by eye', share: 1 }],
    ['Empty', { how: 'by eye', share: 0 }],
    ['60%', { how: 'by eye', share: 0.6 }],
    ['60 %', { how: 'by eye', share: 0.6 }],
    ['0%', { how: 'by eye', share: 0 }],
    ['7.5 ml', { how: 'in ml', ml: 7.5 }],
    ['7,5ML', { how: 'in ml', ml: 7.5 }],
    ['31.2 g', { how: 'in g', grams: 31.2 }],
  ])('%j', (written, reading) => {
    expect(leftsKind.read(written)).toEqual(reading);
  });

  it.each([
    ['7.5', 'left-without-unit', '7.5 ml, 7.5% or 7.5 g'],
    [0.6, 'left-without-unit', '0.6 ml, 60% or 0.6 g'],
    ['110%', 'over-whole', ''],
    ['-5 ml', 'negative', 'what is left'],
    ['1,234 g', 'ambiguous-number', '1234 g or 1.2340 g'],
    ['a lot', 'not-a-reading', ''],
    ['7 spoons', 'not-a-reading', ''],
  ])('%j is questioned: %s', (written, code, expected) => {
    expect(leftsKind.read(written)).toMatchObject({ code, expected });
  });
});

describe('names, lists and choices', () => {
  it('tidies names', () => {
    expect(nameKind.read('  Brick \u00a0 red ')).toBe('Brick red');
    expect(nameKind.read('e\u0301clat')).toBe('\u00e9clat');
    expect(nameKind.read(1)).toBe('1');
  });

  it.each([
    ['weapon, round shield', ['weapon', 'round shield']],
    ['weapon; ;round  shield;', ['weapon', 'round shield']],
    ['a 12,5%, b', ['a 12,5%', 'b']],
    ['a 12,5%; b, c 7,5', ['a 12,5%', 'b', 'c 7,5']],
    ['a\nb', ['a', 'b']],
    [',', []],
  ])('parts %j', (written, pieces) => {
    expect(listKind.read(written)).toEqual(pieces);
  });

  it('takes no list that goes on and on', () => {
    expect(listKind.read('a,'.repeat(200))).toHaveLength(200);
    expect(listKind.read('a,'.repeat(201))).toMatchObject({
      code: 'too-much',
      expected: 'the longest list, 200 pieces',
    });
  });

  it('looks for a share at the end of no part that is longer than any', () => {
    // 100 letters at the most: beyond them the share is not even looked for.
    const name = 'x'.repeat(96);
    expect(readPart(`${name} 50%`, () => 0.5)).toEqual({ name, share: 0.5 });
    expect(readPart(`${name}x 50%`, () => 0.5)).toEqual({ name: `${name}x 50%`, share: 1 });
  });

  it('tells a part from its share', () => {
    expect(readPart('upper arms 50 %', () => 0.5)).toEqual({ name: 'upper arms', share: 0.5 });
    expect(readPart('upper arms', () => 0.5)).toEqual({ name: 'upper arms', share: 1 });
  });

  it('finds a word of a list whatever its case, blanks and hyphens', () => {
    const kind = choiceKind('a layer', ['base coat', 'tidy-up']);
    for (const written of ['base coat', 'Base-Coat', 'BASECOAT', 'base_coat'])
      expect(kind.read(written)).toBe('base coat');
    expect(kind.read('tidy up')).toBe('tidy-up');
    expect(kind.read('tidy')).toMatchObject({ code: 'not-a-choice' });
    expect(kind.read(1)).toMatchObject({ code: 'not-a-choice', expected: 'base coat or tidy-up' });
  });

  it('reads yes and no', () => {
    expect(['yes', 'Y', 'TRUE', true].map((one) => yesKind.read(one))).toEqual([true, true, true, true]);
    expect(['no', 'N', false].map((one) => yesKind.read(one))).toEqual([false, false, false]);
    expect(yesKind.read('maybe')).toMatchObject({ code: 'not-a-choice' });
  });
});

describe('settings', () => {
  it('takes currencies of ISO 4217 and locales of BCP 47', () => {
    expect(currencyKind.read('eur')).toBe('EUR');
    expect(currencyKind.read('XYZ')).toMatchObject({ code: 'not-a-currency' });
    expect(localeKind.read('de_at')).toBe('de-AT');
    for (const written of ['english', 'xx', 'd', '', 'en US']) {
      expect(localeKind.read(written)).toMatchObject({ code: 'not-a-locale' });
    }
  });

  it('takes a promise between even chances and near certainty', () => {
    expect(['80', '80%', 80, '99'].map((one) => surePercentKind.read(one))).toEqual([80, 80, 80, 99]);
    expect(surePercentKind.read('49')).toMatchObject({ code: 'too-little' });
    expect(surePercentKind.read('100%')).toMatchObject({ code: 'too-much' });
    expect(surePercentKind.read('quite')).toMatchObject({ code: 'not-a-number' });
  });
});
