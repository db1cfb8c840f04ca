// Numbers as painters write them: what is read, what is questioned, what is refused.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Mistake } from '../../../../src/sheets/check/read-cell/cell-kind.js';
import { parseNumber } from '../../../../src/sheets/check/read-cell/parse-number.js';
import { figureCount } from '../../../../src/sheets/check/read-cell/read-count.js';
import { potVolume } from '../../../../src/sheets/check/read-cell/read-number.js';
import { areaShare, mixShare } from '../../../../src/sheets/check/read-cell/read-share.js';

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
