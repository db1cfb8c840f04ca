// Headers that mean a known column though they are not written as the list of columns has them, and such as do not.
import { describe, expect, it } from 'vitest';
import type { SheetName } from '../../src/model/words.js';
import { columns } from '../../src/sheets/columns/columns.js';
import { headerKey } from '../../src/sheets/match-header.js';
import { columnMeant, knownHeaderKeys, namesOf } from '../../src/sheets/spell-headers.js';

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
    expect(columnMeant({ sheet }, header)).toEqual({ key, isOwn: true });
    expect(knownHeaderKeys(sheet).has(headerKey(header))).toBe(true);
  });

  it.each<[SheetName, string]>([
    // What is left may be in percent, ml or grams, so that a unit in its header says more than the column does.
    ['pots', 'left (%)'],
    ['pots', 'left ml'],
    ['pots', 'size (mm)'],
    ['pots', 'keep (g)'],
    ['schemes', 'share (%)'],
    ['figures', 'base (cm)'],
    ['settings', 'value (EUR)'],
    ['army', 'count EUR'],
    ['army', ''],
  ])('in %s, %s means none', (sheet, header) => {
    expect(columnMeant({ sheet }, header)).toBeUndefined();
  });

  // Phrases of dictionary words: French, German, Italian, Spanish, English.
  it.each<[SheetName, string, string]>([
    ['pots', 'Nom de la couleur', 'paint'],
    ['pots', 'Name der Farbe', 'paint'],
    ['pots', 'nome del colore', 'paint'],
    ['pots', 'prix payé', 'price'],
    ['pots', 'The price paid', 'price'],
    ['pots', 'Farbe / Colour', 'paint'],
  ])('in %s, every word of %s means %s', (sheet, header, key) => {
    expect(columnMeant({ sheet }, header)).toEqual({ key, isOwn: false });
  });

  it.each(['volume left', 'price level', 'the', 'nom de la boutique', 'Farbe / Preis'])(
    'in pots, the words of %s do not mean one column',
    (header) => {
      expect(columnMeant({ sheet: 'pots' }, header)).toBeUndefined();
    },
  );

  it('means one column only', () => {
    for (const [sheet, list] of Object.entries(columns))
      for (const { header } of list)
        expect(columnMeant({ sheet: sheet as SheetName }, header)).toEqual({
          key: headerKey(header),
          isOwn: true,
        });
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
    expect(columnMeant({ sheet }, header)).toEqual({ key, isOwn: true, currency: { sign, isSure } });
  });

  it.each<[SheetName, string]>([
    ['pots', 'price (each)'],
    ['pots', 'old price €'],
    ['pots', 'EUR'],
    ['pots', '€'],
    ['pots', `price ${'€'.repeat(50)}`],
    ['army', 'price EUR'],
  ])('in %s, %s means none', (sheet, header) => {
    expect(columnMeant({ sheet }, header)).toBeUndefined();
  });
});

describe('a header in other words', () => {
  // Dictionary words; the first column of two that share one counts.
  it.each<[SheetName, string, string]>([
    ['pots', 'Colour', 'paint'],
    ['pots', 'Farbe', 'paint'],
    ['pots', 'Inhalt (ml)', 'sizeml'],
    ['pots', 'Contenido en ml', 'sizeml'],
    ['pots', 'Pojemność ml', 'sizeml'],
    ['pots', 'Füllstand', 'left'],
    ['pots', 'Fullstand', 'left'],
    ['pots', 'How full', 'left'],
    ['pots', 'Zostało', 'left'],
    ['pots', 'price paid', 'price'],
    ['pots', 'Farbe / Colour', 'paint'],
    ['army', 'Einheit', 'unit'],
    ['army', 'Nombre', 'count'],
    ['log', 'Gewicht vorher', ''],
  ])('in %s, %s means %j', (sheet, header, key) => {
    const meant = columnMeant({ sheet }, header);
    expect(meant).toEqual(key === '' ? undefined : { key, isOwn: false });
  });

  it('is no word of another column of its sheet', () => {
    for (const list of Object.values(columns)) {
      const words = list.flatMap((column) => [...new Set(namesOf(column).map(headerKey))]);
      expect(words.filter((word, at) => words.indexOf(word) !== at)).toEqual([]);
    }
  });

  it('that means two columns means none', () => {
    expect(columnMeant({ sheet: 'pots' }, 'Farbe / Preis')).toBeUndefined();
  });

  it('with a currency is a price too', () => {
    expect(columnMeant({ sheet: 'pots' }, 'Prix (€)')).toEqual({
      key: 'price',
      isOwn: false,
      currency: { sign: '€', isSure: true },
    });
  });
});
