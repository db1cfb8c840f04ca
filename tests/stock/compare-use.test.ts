// What a paint took beside its estimate, by hand: a pot of 17 ml holds 17 x 0.94 = 15.98 ml that can be used.
import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import type { LogRow } from '../../src/model/sheets.js';
import { compareUse } from '../../src/stock/compare-use.js';
import { takeStock } from '../../src/stock/take-stock.js';
import { makePaint, makePot, makeSheets, makeUnit } from '../make-sheets.js';
import { wardens } from '../report/a-small-army.js';

const paint = 'Nettle coat';
/** Ten wardens' tunics are estimated at 6.05 ml, of which 0.05 stay behind. */
const work: LogRow = { row: 2, date: '2026-02-01', paint, unit: 'watch', step: 2, figures: 10 };
const count = (share: number): LogRow => ({
  ...{ row: 3, date: '2026-02-02', paint, what: 'counted', left: { how: 'by eye', share } },
});

function compare(log: readonly LogRow[], pots = [makePot({ paint, openedOn: '2026-01-01' })]) {
  const sheets = makeSheets({ pots, log, paints: [makePaint({ paint })] });
  const estimate = { units: [{ unit: makeUnit(), job: wardens }] };
  const stock = takeStock(sheets, new Map(), registry);
  return compareUse(sheets, { stock, estimate }, registry).get(paint);
}
const likely = { estimatedMl: expect.closeTo(6.05, 9) };

describe('a paint', () => {
  it('counted at half has used 7.99 ml where 6.05 were estimated', () => {
    expect(compare([work, count(0.5)])).toEqual({ usedMl: expect.closeTo(7.99, 9), ...likely });
  });

  it('of which the log says an amount is told without a count', () => {
    expect(compare([{ ...work, usedMl: 5 }])).toEqual({ usedMl: expect.closeTo(5, 9), ...likely });
  });

  it('that was bought since has been there', () => {
    const bought: LogRow = { row: 2, date: '2026-01-02', paint, what: 'bought', sizeMl: 17 };
    const arrived: LogRow = { row: 3, date: '2026-01-03', paint, what: 'arrived' };
    expect(compare([bought, arrived, work, count(0.5)], [])).toMatchObject({
      usedMl: expect.closeTo(7.99, 9),
    });
  });
});

describe('nothing is compared', () => {
  it('that nobody measured', () => expect(compare([work])).toBeUndefined());
  it('of use without work that the estimate knows', () => {
    expect(compare([work, { ...work, step: 4, usedMl: 1 }, count(0.5)])).toBeUndefined();
    expect(compare([{ row: 2, date: '2026-02-01', paint, usedMl: 3 }])).toBeUndefined();
  });
  it('that the pots sheet’s reading shows already, that of the day itself too', () => {
    const pot = makePot({ paint, countedOn: '2026-02-01' });
    expect(compare([work, count(0.5)], [pot])).toBeUndefined();
    expect(compare([{ ...work, date: '2026-02-02' }, count(0.5)], [pot])).toEqual({
      ...{ usedMl: expect.closeTo(7.99, 9), ...likely },
    });
  });
});
