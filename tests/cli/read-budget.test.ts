import { describe, expect, it } from 'vitest';
import { readBudget } from '../../src/cli/read-budget.js';

const settings = { surePercent: 80, restock: 'army', overrides: [] } as const;

describe('--budget', () => {
  // Minor units by ISO 4217: EUR 2, KWD 3 digits.
  it.each([
    ['60', 'EUR', 6000],
    ['59,50', 'EUR', 5950],
    ['2.500', 'KWD', 2500],
    ['2.942 KWD', 'KWD', 2942],
  ])('%s in %s is %d of its smallest coin', (text, currency, minor) => {
    expect(readBudget(text, { ...settings, currency, locale: 'en' })).toBe(minor);
  });

  it.each([
    ['2.500', 'EUR'],
    ['2,500', 'KWD'],
    ['all', 'EUR'],
  ])('%s in %s is asked about', (text, currency) => {
    expect(() => readBudget(text, { ...settings, currency, locale: 'en' })).toThrow(
      `"${text}" is not a sum in ${currency}.`,
    );
  });
});
