// Money so far, by hand: a pot is worth its price times what of it is left.
import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import type { LogRow, Pot } from '../../src/model/sheets.js';
import { takeStock } from '../../src/stock/take-stock.js';
import { valueShelf } from '../../src/stock/value-shelf.js';
import { makePaint, makePot, makeSheets } from '../make-sheets.js';

const row = (what: LogRow['what'], date: string, more: Partial<LogRow> = {}): LogRow => ({
  ...{ row: 2, date, paint: 'Slate' },
  ...(what === undefined ? {} : { what }),
  ...more,
});

function money(pots: readonly Pot[], log: readonly LogRow[]) {
  const sheets = makeSheets({ pots, log, paints: [makePaint({ paint: 'Slate' })] });
  const { begunWith, standing, onWay, used, ...rest } = valueShelf(
    sheets,
    takeStock(sheets, new Map(), registry),
    registry,
  );
  const [begun, stands, coming, gone] = [begunWith, standing, onWay, used].map(Number);
  return { ...rest, begun, stands, coming, gone };
}

/** 17 ml at 60 % for 3.00. */
const pot = makePot({
  paint: 'Slate',
  priceMinor: 300,
  left: { how: 'by eye', share: 0.6 },
  openedOn: '2026-01-01',
});

describe('money', () => {
  it('stands in the pots without a log', () => {
    expect(money([pot, makePot({ paint: 'Slate', row: 3 })], [])).toEqual({
      ...{ spent: [], boughtMinor: 0, unpricedPots: 1 },
      ...{ begun: 180, stands: 180, coming: 0, gone: expect.closeTo(0, 9) },
    });
  });

  it('is spent by month and shop, comes, stands, is used', () => {
    const log = [
      row('bought', '2026-02-27', {
        ...{ sizeMl: 17, pots: 2, priceMinor: 590, postageMinor: 400, shop: 'Quay' },
      }),
      row('bought', '2026-03-01', { sizeMl: 12, priceMinor: 200 }),
      row('bought', '2026-02-02', { sizeMl: 17, priceMinor: 300, shop: 'Quay' }),
      row('bought', '2026-02-02', { sizeMl: 17 }),
      row('arrived', '2026-03-02', { sizeMl: 17, pots: 1 }),
      row('counted', '2026-03-03', { left: { how: 'by eye', share: 0.1 } }),
    ];
    // Postage is spent, and in no pot. Used: half of a pot of 3.00. One of 3.00 has come; 5.90 and 2.00 have not.
    expect(money([pot], log)).toEqual({
      spent: [
        { month: '2026-02', shop: 'Quay', minor: 1290 },
        { month: '2026-03', shop: '', minor: 200 },
      ],
      ...{ boughtMinor: 1090, unpricedPots: 1 },
      ...{ begun: 180, stands: expect.closeTo(330, 9), coming: 790, gone: expect.closeTo(150, 9) },
    });
  });

  it('is spent on postage where no price is said', () => {
    expect(money([], [row('bought', '2026-03-01', { sizeMl: 17, postageMinor: 250 })])).toMatchObject({
      ...{ spent: [{ minor: 250 }], boughtMinor: 0 },
    });
  });

  it('thrown away is used', () => {
    expect(money([pot], [row('thrown away', '2026-03-01')])).toMatchObject({
      begun: 180,
      stands: 0,
      gone: 180,
    });
  });

  it('of a row of which nobody knows the size is spent, and in no pot', () => {
    expect(money([], [row('bought', '2026-03-01', { priceMinor: 300 })])).toMatchObject({
      ...{ spent: [{ minor: 300 }], boughtMinor: 0, gone: 0 },
    });
  });
});
