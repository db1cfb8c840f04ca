// Which pot tells what another one of its paint would cost.
import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { newestPaid } from '../../src/model/newest-paid.js';
import type { Pot } from '../../src/model/sheets.js';
import { takeStock } from '../../src/stock/take-stock.js';
import { makePot, makeSheets } from '../make-sheets.js';

/** The row of the pot that tells the price, of one paint's pots. */
function rowOf(...pots: readonly Partial<Pot>[]): number | undefined {
  const rows = pots.map((pot, at) => makePot({ paint: 'Slate', row: at + 2, ...pot }));
  const [stock] = takeStock(makeSheets({ pots: rows }), new Map(), registry);
  return newestPaid(stock?.pots ?? [])?.row;
}

describe('the newest pot with a price', () => {
  it('is the one opened last, whatever its row', () => {
    const [later, earlier] = [{ openedOn: '2026-01-09' }, { openedOn: '2024-03-02' }];
    expect(rowOf({ priceMinor: 300, ...later }, { priceMinor: 200, ...earlier })).toBe(2);
  });

  it('is of two opened on one day, or of two unopened ones, the one in the lower row', () => {
    const openedOn = '2026-01-09';
    expect(rowOf({ priceMinor: 300, openedOn }, { priceMinor: 200, openedOn })).toBe(3);
    expect(rowOf({ priceMinor: 300 }, { priceMinor: 200 })).toBe(3);
  });

  it('is one that nobody has opened yet before one that is open, and one on its way before both', () => {
    const opened = { priceMinor: 200, openedOn: '2026-01-09' };
    expect(rowOf({ priceMinor: 300 }, opened)).toBe(2);
    expect(rowOf({ priceMinor: 400, ordered: true }, { priceMinor: 300 }, opened)).toBe(2);
  });

  it('is never one without a price, nor one that came for nothing', () => {
    expect(rowOf({ priceMinor: 300, openedOn: '2024-03-02' }, {}, { priceMinor: 0 })).toBe(2);
    expect(rowOf({ priceMinor: 0 }, {})).toBeUndefined();
    expect(rowOf()).toBeUndefined();
  });
});
