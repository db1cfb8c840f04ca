import { describe, expect, it } from 'vitest';
import type { Cell } from '../../../src/sheets/table.js';
import { check, checkRight } from './make-tables.js';

const pots = (header: string, ...prices: readonly Cell[]): Cell[][] => [
  ['paint', 'size ml', header],
  ['brick red', 17, prices[0] ?? ''],
  ['earth wash', 24, prices[1] ?? ''],
];

describe('without a currency in settings', () => {
  it.each<[string, Cell[][]]>([
    ['GBP', pots('price', '£3.25', '£4')],
    ['GBP', pots('price (£)', 3.25, 4)],
    ['GBP', pots('price', { kind: 'measured', value: 3, unit: '£' }, 4)],
    ['PLN', pots('cena', '13,50 zł', '')],
    ['USD', pots('price', '$3', '$4')],
    ['CHF', pots('price', 'CHF 3', '4')],
    ['EUR', pots('price', 3, 4)],
  ])('prices are in %s', (currency, rows) => {
    const { settings, defaults } = checkRight({ pots: rows });
    expect(settings.currency).toBe(currency);
    const { meaning } = defaults.find(({ column }) => column === 'currency') ?? {};
    expect(meaning).toBe(currency === 'EUR' ? 'EUR, which is assumed' : `${currency}, which all prices bear`);
  });

  it('several are asked about, and so is one in another currency than that of settings', () => {
    const codes = (settings: Cell[][], ...prices: readonly Cell[]) =>
      check({ pots: pots('price', ...prices), settings }).problems.map(({ code }) => code);
    const name = ['name', 'value'];
    expect(codes([name, ['locale', 'en']], '£3', '$4')).toEqual(['other-currency', 'other-currency']);
    expect(codes([name, ['currency', 'EUR']], '£3', '')).toEqual(['other-currency']);
    expect(codes([name, ['locale', 'en-AU']], '$3', '')).toEqual(['other-currency']);
  });
});
