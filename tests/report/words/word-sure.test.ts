// Chances and ranges in plain words.
import { describe, expect, it } from 'vitest';
import { numberWords } from '../../../src/report/words/word-numbers.js';
import {
  readPaint,
  wordChance,
  wordCostRange,
  wordReached,
  wordTimes,
} from '../../../src/report/words/word-sure.js';

const settings = { currency: 'EUR', locale: 'en', surePercent: 80, restock: 'army', overrides: [] } as const;
const words = numberWords(settings);
const german = numberWords({ ...settings, locale: 'de' });
const plainSpaces = (text: string): string => text.replaceAll('\u00a0', ' ');

describe('chances', () => {
  // Draws never show that something can't be.
  it.each([
    [0, 'under 1%', 'under 1 of 100'],
    [0.004, 'under 1%', 'under 1 of 100'],
    [0.005, '1%', '1 of 100'],
    [0.264, '26%', '26 of 100'],
    [0.9951, 'over 99%', 'over 99 of 100'],
    [1, 'over 99%', 'over 99 of 100'],
  ])('%d is %s, or %s', (chance, percent, times) => {
    expect([wordChance({ chance, error: 0 }, words), wordTimes({ chance, error: 0 }, words)]).toEqual([
      percent,
      times,
    ]);
  });

  it('carry their standard error', () => {
    expect(wordReached({ chance: 0.8177, error: 0.00386 }, words)).toBe('81.8% ± 0.4%');
    // No number of draws shows that something can't be, or can't fail.
    expect(wordReached({ chance: 0, error: 0.0001 }, words)).toBe('under 0.1%');
    expect(wordReached({ chance: 1, error: 0.0001 }, words)).toBe('over 99.9%');
    expect(plainSpaces(wordReached({ chance: 0.8177, error: 0.00386 }, german))).toBe('81,8 % ± 0,4 %');
  });
});

describe('ranges', () => {
  it('of money are rounded once', () => {
    expect(wordCostRange({ low: 48.61, high: 90.92 }, words)).toBe('€0.49 to €0.91');
    expect(wordCostRange({ low: 48.9, high: 49.2 }, words)).toBe('€0.49');
  });
});

it('tells the reading of a pot from an assumption', () => {
  expect([readPaint('reading of Oat'), readPaint('brush wet film')]).toEqual(['Oat', undefined]);
});
