// Numbers as painters write them: what is read, what is questioned, what is refused.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Mistake } from '../../../../src/sheets/check/read-cell/cell-kind.js';
import { parseMeasure, parseNumber } from '../../../../src/sheets/check/read-cell/parse-number.js';
import { doneStep, figureCount } from '../../../../src/sheets/check/read-cell/read-count.js';
import { dateKind } from '../../../../src/sheets/check/read-cell/read-date.js';
import { hexKind } from '../../../../src/sheets/check/read-cell/read-hex.js';
import {
  baseHeight,
  density,
  eyeHeight,
  keptVolume,
  potVolume,
  scaleWeight,
  surface,
  thinning,
} from '../../../../src/sheets/check/read-cell/read-number.js';
import { readOverride } from '../../../../src/sheets/check/read-cell/read-override.js';
import { priceKind } from '../../../../src/sheets/check/read-cell/read-price.js';
import { surePercentKind } from '../../../../src/sheets/check/read-cell/read-setting.js';
import { leftsKind } from '../../../../src/sheets/check/read-cell/read-several.js';
import { areaShare, mixShare } from '../../../../src/sheets/check/read-cell/read-share.js';
import { baseKind, boxKind } from '../../../../src/sheets/check/read-cell/read-sides.js';
import { longestSearched } from '../../../count-letters.js';

describe('parseNumber', () => {
  it.each([
    ['12.5', 12.5],
    ['12,5', 12.5],
    ['0.125', 0.125],
    ['0,125', 0.125],
    ['.5', 0.5],
    [',5', 0.5],
    ['-3', -3],
    ['\u22123', -3],
    ['+3', 3],
    ['007', 7],
    ['1234', 1234],
    ['1234.567', 1234.567],
    ['1,23', 1.23],
    ['1.2345', 1.2345],
    ['1 234,5', 1234.5],
    ['1\u202f234,5', 1234.5],
    ['1\u2009234.5', 1234.5],
    ['1\u00a0234\u00a0567', 1234567],
    ["1'234.50", 1234.5],
    ['1’234', 1234],
    ['1.234,5', 1234.5],
    ['1,234.5', 1234.5],
    ['1.234,567', 1234.567],
    ['1,234,567', 1234567],
    ['1.234.567', 1234567],
    [12.5, 12.5],
    [3.3000000000000003, 3.3],
  ])('reads %j as %d', (written, value) => {
    expect(parseNumber(written)).toBe(value);
  });

  it.each([
    ['1,234', '1234 or 1.2340'],
    ['1.234', '1234 or 1.2340'],
    ['12.500', '12500 or 12.5000'],
    ['-999,999', '-999999 or -999.9990'],
  ])('questions %j', (written, readings) => {
    expect(parseNumber(written)).toEqual(new Mistake('ambiguous-number', readings));
  });

  it.each([
    '',
    'twelve',
    '12ml',
    '12.',
    '1e3',
    '1E3',
    '0x10',
    'Infinity',
    'NaN',
    '--3',
    '1,23,4',
    '1 23',
    '12 34',
    '1,234,56',
    '1.234.567.8',
    '٣',
    '½',
    '9'.repeat(41),
    Number.NaN,
    Number.POSITIVE_INFINITY,
    true,
  ])('refuses %j', (written) => {
    expect(parseNumber(written)).toBeUndefined();
  });

  it('reads back what it is given with a point or a comma, unless three digits follow', () => {
    const decimals = fc.tuple(fc.integer({ min: 0, max: 1e6 }), fc.stringMatching(/^\d{1,6}$/));
    fc.assert(
      fc.property(decimals, fc.constantFrom('.', ','), ([whole, digits], mark) => {
        const value = parseNumber(`${whole}${mark}${digits}`);
        const doubtful = digits.length === 3 && whole >= 1 && whole <= 999;
        if (doubtful) expect(value).toBeInstanceOf(Mistake);
        else expect(value).toBe(Number(`${whole}.${digits}`));
      }),
    );
  });

  it('answers to any text', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        const value = parseNumber(text);
        expect(value === undefined || value instanceof Mistake || Number.isFinite(value)).toBe(true);
      }),
    );
  });
});

describe('numbers with bounds', () => {
  it.each([
    [potVolume, '0.5', 0.5],
    [potVolume, '2000', 2000],
    [figureCount, '1', 1],
    [figureCount, 20, 20],
    [figureCount, '20,0', 20],
  ])('takes its bounds (%#)', (kind, written, value) => {
    expect(kind.read(written)).toBe(value);
  });

  it.each([
    [potVolume, '0.49', 'too-little'],
    [potVolume, '2000.1', 'too-much'],
    [potVolume, '-1', 'negative'],
    [potVolume, 0, 'zero'],
    [potVolume, true, 'not-a-volume'],
    [figureCount, '2.5', 'not-whole'],
    [figureCount, 2.5, 'not-whole'],
    [figureCount, '1000001', 'too-much'],
    [figureCount, '0', 'zero'],
  ])('questions what lies outside (%#)', (kind, written, code) => {
    expect(kind.read(written)).toMatchObject({ code });
  });
});

describe('numbers with their unit', () => {
  // Prefixes by the SI Brochure (BIPM), table 7: 1 l = 1000 ml, 1 cl = 10 ml, 1 cm = 10 mm, 1 cm2 = 100 mm2.
  it.each([
    [potVolume, '17 ml', 17],
    [potVolume, '17ml', 17],
    [potVolume, '12,5 ML', 12.5],
    [potVolume, '0.4 l', 400],
    [potVolume, '0,4 Litre', 400],
    [potVolume, '1.7 cl', 17],
    [potVolume, '1,234.5 ml', 1234.5],
    [keptVolume, '0 ml', 0],
    [eyeHeight, '28mm', 28],
    [eyeHeight, '2.8 cm', 28],
    [baseHeight, '3 mm', 3],
    [scaleWeight, '1.5 g', 1.5],
    [scaleWeight, '0.0312 kg', 31.2],
    [surface, '9 cm2', 9],
    [surface, '9,5 cm\u00b2', 9.5],
    [surface, '950 mm2', 9.5],
    [density, '1.2 g/ml', 1.2],
    [density, '1.2 kg/l', 1.2],
  ])('%#: %j, %j is %d', (kind, written, value) => {
    expect(kind.read(written)).toBe(value);
  });

  it.each([
    [potVolume, '17 g', 'not-a-volume'],
    [potVolume, '0.5 fl oz', 'not-a-volume'],
    [potVolume, '17 ml or so', 'not-a-volume'],
    [potVolume, 'ml', 'not-a-volume'],
    [potVolume, '3 l', 'too-much'],
    [potVolume, '0.2 ml', 'too-little'],
    [potVolume, '-1 ml', 'negative'],
    [eyeHeight, '1 inch', 'not-a-length'],
    [surface, '9 mm', 'not-an-area'],
    [figureCount, '20 ml', 'not-a-count'],
    [thinning, '1 ml', 'not-a-number'],
  ])('%#: %j, %j is questioned: %s', (kind, written, code) => {
    expect(kind.read(written)).toMatchObject({ code });
  });

  it('can be ambiguous like any other', () => {
    expect(parseMeasure('1.500 l', 'ml')).toEqual(new Mistake('ambiguous-number', '1500 l or 1.5000 l'));
  });

  it('stand in the settings too, with the unit of their assumption', () => {
    const like = { name: 'brush wet film', low: 1, likely: 2, high: 3, mark: 'yours', source: '' } as const;
    const read = (written: string, unit: string) => readOverride(written, { ...like, unit });
    expect(read('50 \u03bcm', '\u00b5m')).toMatchObject({ likely: 50 });
    expect(read('40 / 60 / 90 \u00b5m', '\u00b5m')).toMatchObject({ low: 40, likely: 60, high: 90 });
    expect(read('0.05 ml', 'ml a sitting')).toMatchObject({ likely: 0.05 });
    expect(read('1.1 / 1.2 g/ml / 1.3 g/ml', 'g/ml')).toMatchObject({ low: 1.1, likely: 1.2, high: 1.3 });
    expect(read('50 mm', '\u00b5m')).toEqual(new Mistake('not-a-range'));
    expect(read('60 %', 'of stature')).toMatchObject({ likely: 0.6 });
  });
});

describe('cells that go on and on', () => {
  const surely = {
    name: 'painter',
    low: 1,
    likely: 2,
    high: 3,
    unit: '',
    mark: 'yours',
    source: '',
  } as const;
  const readers = {
    left: leftsKind,
    volume: potVolume,
    count: doneStep,
    share: areaShare,
    mix: mixShare,
    'sure %': surePercentKind,
    price: priceKind({ currency: 'EUR', locale: 'en' }),
    date: dateKind,
    colour: hexKind,
    base: baseKind,
    box: boxKind,
    assumption: { read: (cell: string) => readOverride(cell, surely) },
  };

  // A cell may hold 32,767 letters; some of these patterns went over it once for each of them.
  it.each(Object.entries(readers))('are no %s, and little of them is searched', (_, { read }) => {
    for (const between of [' ', '%', '1', '\u2009']) {
      const cell = `1${between.repeat(32_000)}x`;
      expect(longestSearched(() => expect(read(cell)).toBeInstanceOf(Mistake))).toBeLessThanOrEqual(100);
    }
  });
});

describe('shares', () => {
  it.each([
    ['60', 0.6],
    ['60%', 0.6],
    ['60 %', 0.6],
    ['12,5%', 0.125],
    ['0.6%', 0.006],
    ['100', 1],
    [60, 0.6],
    [1, 0.01],
  ])('reads %j as %d', (written, share) => {
    expect(areaShare.read(written)).toBeCloseTo(share, 12);
  });

  it.each([
    [0.6, 'ambiguous-number', '60% or 0.6%'],
    ['0.07', 'ambiguous-number', '7% or 0.07%'],
    ['0', 'zero', 'a share'],
    ['-5%', 'negative', 'a share'],
    ['101%', 'over-whole', ''],
    ['%', 'not-a-share', 'a percentage, such as 60%'],
  ])('questions %j', (written, code, expected) => {
    expect(areaShare.read(written)).toMatchObject({ code, expected });
  });

  it('tells percent from parts in a mix', () => {
    expect(mixShare.read('50%')).toEqual({ how: 'percent', value: 50 });
    expect(mixShare.read('2')).toEqual({ how: 'parts', value: 2 });
    expect(mixShare.read(0.5)).toEqual({ how: 'parts', value: 0.5 });
    expect(mixShare.read('0')).toMatchObject({ code: 'zero' });
  });
});
