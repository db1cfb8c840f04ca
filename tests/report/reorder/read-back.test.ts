// What reorder.csv says, read by the readers of our own sheets: whoever copies a line into pots or offers gets its numbers.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { minorDigits } from '../../../src/model/money.js';
import type { ReorderView } from '../../../src/report/reorder/view-reorder.js';
import { writeReorderCsv } from '../../../src/report/reorder/write-reorder-csv.js';
import { csvMarks, numberWords } from '../../../src/report/words/word-numbers.js';
import { potVolume } from '../../../src/sheets/check/read-cell/read-number.js';
import { priceKind } from '../../../src/sheets/check/read-cell/read-price.js';
import { readCsv } from '../../../src/sheets/read/read-csv.js';
import { line, pot, reorderExample } from './reorder-example.js';

/** One shop's list of one line a price, in a currency and locale. */
function viewOf(prices: readonly number[], currency: string, locale: string): ReorderView {
  const [group] = reorderExample.groups;
  const [shop] = group?.shops ?? [];
  if (group === undefined || shop === undefined) throw new Error('the example has no shop');
  const lines = prices.map((priceMinor) =>
    line({ priceMinor, costMinor: priceMinor * 2, pots: [pot({ sizeMl: 12.5 })] }),
  );
  const groups = [{ ...group, shops: [{ ...shop, lines }] }];
  const settings = { currency, locale, surePercent: 80, restock: 'army', overrides: [] } as const;
  return {
    ...reorderExample,
    currency,
    minorDigits: minorDigits(currency),
    csv: csvMarks(numberWords(settings)),
    groups,
  };
}

/** The cells of a column, from the rows that are pots. */
function cellsOf(view: ReorderView, header: string): readonly unknown[] {
  const { grid } = readCsv(Buffer.from(writeReorderCsv(view)), { file: 'reorder.csv', sheet: 'offers' });
  const [headers, ...rows] = grid?.rows.map(({ cells }) => cells) ?? [];
  const [at, entry] = [headers?.indexOf(header) ?? -1, headers?.indexOf('entry') ?? -1];
  return rows.filter((cells) => cells[entry] === 'pot').map((cells) => cells[at]);
}

describe('reorder.csv', () => {
  // Minor units by ISO 4217: JPY 0, EUR 2, KWD and TND 3, UYW 4 digits.
  it.each([
    ['JPY', 'en'],
    ['EUR', 'en'],
    ['KWD', 'en'],
    ['TND', 'fr'],
    ['KWD', 'it'],
    ['EUR', 'de'],
    ['UYW', 'en'],
  ])('in %s (%s) has prices and sizes that our own sheets take', (currency, locale) => {
    const price = priceKind({ currency, locale });
    const prices = fc.array(fc.integer({ min: 0, max: 9_999_999 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(prices, (minor) => {
        const view = viewOf(minor, currency, locale);
        const read = (header: string) => cellsOf(view, header).map((cell) => price.read(String(cell)));
        expect(read('price')).toEqual(minor);
        expect(read('cost')).toEqual(minor.map((one) => one * 2));
      }),
    );
    const sizes = cellsOf(viewOf([2942], currency, locale), 'size ml');
    expect(sizes.map((cell) => potVolume.read(String(cell)))).toMatchObject([12.5]);
  });
});
