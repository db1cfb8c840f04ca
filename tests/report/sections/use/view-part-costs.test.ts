import { expect, it } from 'vitest';
import { exactMinor } from '../../../../src/model/money.js';
import { viewPartCosts } from '../../../../src/report/sections/use/view-part-costs.js';
import { numberWords } from '../../../../src/report/words/word-numbers.js';

const words = numberWords({ currency: 'EUR', locale: 'en' });
const amount = (minor: number, atLeast = false) => ({ exactMinor: exactMinor(minor), atLeast });

it('rounds three thirds of ten cents to 4, 3 and 3, so that they add up', () => {
  const third = amount(10 / 3);
  const costs = viewPartCosts(
    new Map([
      ['head', third],
      ['whole', third],
      ['base', third],
    ]),
    words,
  );
  expect(['head', 'whole', 'base', 'hull'].map(costs.of)).toEqual(['€0.04', '€0.03', '€0.03', '']);
  expect(costs.total).toBe('€0.10');
});

it('says "at least" where a price is missing, and "unpriced" where all are', () => {
  const costs = viewPartCosts(
    new Map([
      ['head', amount(0, true)],
      ['whole', amount(12)],
    ]),
    words,
  );
  expect([costs.of('head'), costs.of('whole'), costs.total]).toEqual(['unpriced', '€0.12', 'at least €0.12']);
});
