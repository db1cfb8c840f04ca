// Headers that mean a known column though they are not written as the list of columns has them, and such as do not.
import { describe, expect, it } from 'vitest';
import type { SheetName } from '../../src/model/words.js';
import { columns } from '../../src/sheets/columns/columns.js';
import { headerKey } from '../../src/sheets/match-header.js';
import { columnMeant, knownHeaderKeys } from '../../src/sheets/spell-headers.js';

describe('a header with its unit', () => {
  it.each<[SheetName, string, string]>([
    ['schemes', 'Area (%)', 'area%'],
    ['schemes', 'area in percent', 'area%'],
    ['pots', 'Size [ml]', 'sizeml'],
    ['pots', 'size in mL', 'sizeml'],
    ['pots', 'Size_millilitres', 'sizeml'],
    ['pots', 'Keep (ml)', 'keepml'],
    ['pots', 'Empty (g)', 'emptyg'],
    ['paints', 'Density (g/ml)', 'densityg/ml'],
    ['figures', 'Eye (mm)', 'eyemm'],
    ['figures', 'Base (mm)', 'base'],
    ['figures', 'Base high (mm)', 'basehighmm'],
    ['figures', 'area (cm²)', 'areacm2'],
    ['log', 'Before (grams)', 'beforeg'],
    ['log', 'used (ml)', 'usedml'],
  ])('in %s, %s means %s', (sheet, header, key) => {
    expect(columnMeant(sheet, header)).toEqual({ key });
    expect(knownHeaderKeys(sheet).has(headerKey(header))).toBe(true);
  });

  it.each<[SheetName, string]>([
    // What is left may be in percent, ml or grams, so that a unit in its header says more than the column does.
    ['pots', 'left (%)'],
    ['pots', 'left ml'],
    ['pots', 'size'],
    ['pots', 'size (mm)'],
    ['pots', 'keep (g)'],
    ['schemes', 'share (%)'],
    ['figures', 'base (cm)'],
    ['settings', 'value (EUR)'],
    ['army', 'count EUR'],
    ['army', ''],
  ])('in %s, %s means none', (sheet, header) => {
    expect(columnMeant(sheet, header)).toBeUndefined();
  });

  it('means one column only', () => {
    for (const [sheet, list] of Object.entries(columns))
      for (const { header } of list)
        expect(columnMeant(sheet as SheetName, header)).toEqual({ key: headerKey(header) });
  });
});

describe('a header with a currency', () => {
  it.each<[SheetName, string, string, string, boolean]>([
    ['pots', 'Price (€)', 'price', '€', true],
    ['pots', 'price EUR', 'price', 'EUR', true],
    ['pots', 'price_eur', 'price', 'eur', false],
    ['pots', 'price [eur]', 'price', 'eur', true],
    ['pots', 'Price€', 'price', '€', true],
    ['pots', 'PRICE€', 'price', '€', true],
    ['pots', 'price in £', 'price', '£', true],
    ['pots', '£ price', 'price', '£', true],
    ['pots', 'price (zł)', 'price', 'zł', true],
    ['shops', 'Free from (CHF)', 'freefrom', 'CHF', true],
    ['shops', 'Postage, EUR', 'postage', 'EUR', true],
    ['shops', 'least order kr', 'leastorder', 'kr', false],
    ['extras', 'price all', 'price', 'all', false],
  ])('in %s, %s', (sheet, header, key, sign, isSure) => {
    expect(columnMeant(sheet, header)).toEqual({ key, currency: { sign, isSure } });
  });

  it.each<[SheetName, string]>([
    ['pots', 'price paid'],
    ['pots', 'price (each)'],
    ['pots', 'old price €'],
    ['pots', 'EUR'],
    ['pots', '€'],
    ['pots', `price ${'€'.repeat(50)}`],
    ['army', 'price EUR'],
  ])('in %s, %s means none', (sheet, header) => {
    expect(columnMeant(sheet, header)).toBeUndefined();
  });
});
