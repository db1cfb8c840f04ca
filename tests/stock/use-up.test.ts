// The log lowers the shelf: which pot, by how much, and how sure one is of it then.
import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { estimateArmy } from '../../src/estimate/estimate-army.js';
import type { LogRow, Pot } from '../../src/model/sheets.js';
import type { ShelfPot } from '../../src/model/stock.js';
import { takeStock } from '../../src/stock/take-stock.js';
import { type LivingPot, useUp } from '../../src/stock/use-up.js';
import { makePaint, makePot, makeSheets, makeStep } from '../make-sheets.js';

const paint = makePaint({ paint: 'Slate', densityGPerMl: 1.2 });
const pot = (usableMl: number, more: Partial<ShelfPot> = {}, since = 0): LivingPot => ({
  pot: {
    ...{ row: 2, sizeMl: 17, container: 'dropper', usableMl, fullUsableMl: 15.98 },
    ...{ ordered: false, readingErrorMl: 0, mark: 'yours' },
    ...more,
  },
  since,
  until: Number.POSITIVE_INFINITY,
});
const used = (usedMl: number, date = '2026-03-01', row = 2): LogRow => ({
  row,
  date,
  paint: 'Slate',
  usedMl,
});
const weighed = (beforeG: number, afterG: number): LogRow => ({
  row: 2,
  date: '2026-03-01',
  paint: 'Slate',
  beforeG,
  afterG,
});
const use = (pots: readonly LivingPot[], rows: readonly LogRow[]): readonly ShelfPot[] =>
  useUp(pots, rows, { paint, assumptions: registry, past: new Map() }).pots;
const leftOf = (pots: readonly LivingPot[], rows: readonly LogRow[]): number[] =>
  use(pots, rows).map(({ usableMl }) => usableMl);

describe('what the log took', () => {
  it.each<[string, LivingPot[], LogRow[], number[]]>([
    ['nothing without rows', [pot(10)], [], [10]],
    ['a volume', [pot(10)], [used(3)], [7]],
    ['two weights over the density: 3.6 g are 3 ml', [pot(10)], [weighed(30, 26.4)], [7]],
    ['weights go before a volume', [pot(10)], [{ ...weighed(30, 26.4), usedMl: 9 }], [7]],
    ['the first pot in use, then the next', [pot(2), pot(10)], [used(3)], [0, 9]],
    ['row after row', [pot(2), pot(10)], [used(1), used(4)], [0, 7]],
    ['no more than there is', [pot(2)], [used(30)], [0]],
    ['nothing of a pot on its way', [pot(2), pot(16, { ordered: true })], [used(5)], [0, 16]],
    ['nothing where only pots on their way are', [pot(16, { ordered: true })], [used(5)], [16]],
  ])('%s', (_, pots, rows, left) => {
    leftOf(pots, rows).forEach((ml, at) => {
      expect(ml).toBeCloseTo(left[at] ?? Number.NaN, 12);
    });
  });

  it.each([{}, { beforeG: 30 }, { afterG: 26.4 }, { unit: 'watch', step: 1, figures: 10 }])(
    'is nothing of a row with %j and no amount, and makes no reading less sure',
    (given) => {
      const pots = [pot(10)];
      const rows = [{ row: 2, date: '2026-03-01', paint: 'Slate', ...given }];
      expect(use(pots, rows)).toEqual(pots.map((one) => one.pot));
    },
  );

  it.each([
    ['in the place of the row or before', 0, 7],
    ['after it', 1, 10],
  ])('of a pot that was looked into %s', (_, since, left) => {
    expect(leftOf([pot(10, {}, since)], [used(3)])).toEqual([left]);
  });

  it('goes to the pot that shows it not yet, though another comes first', () => {
    expect(leftOf([pot(10, {}, 1), pot(8)], [used(3)])).toEqual([10, 5]);
  });

  it('leaves the pots handed in as they were', () => {
    const pots = [pot(10)];
    leftOf(pots, [used(3)]);
    expect(pots[0]?.pot.usableMl).toBe(10);
  });
});

describe('use that is only estimated', () => {
  const row: LogRow = { row: 2, date: '2026-03-01', paint: 'Slate', unit: 'watch', step: 1, figures: 10 };
  const [line] =
    estimateArmy(makeSheets({ steps: [makeStep({ step: 1 })] }), registry).units[0]?.job.lines ?? [];
  const past = new Map([[row, { lines: line ? [line] : [], figure: 'guard', likelyMl: 4 }]]);

  it('lowers the pot, marks it as weakly as the work is known, and says nothing of the error of its reading', () => {
    const { pots, unmeasured } = useUp([pot(10), pot(8)], [row], { paint, assumptions: registry, past });
    expect(pots).toMatchObject([
      { usableMl: 6, mark: 'from memory', readingErrorMl: 0 },
      { usableMl: 8, mark: 'yours' },
    ]);
    expect(unmeasured).toMatchObject({
      pots: [{ usableMl: 10 }, { usableMl: 8 }],
      takes: [{ from: [0, 1], ml: 0 }],
    });
  });

  it('has the error of what was measured after it, beside the reading before', () => {
    const rows = [row, used(3, '2026-03-02'), used(2, '2026-03-02')];
    const { unmeasured } = useUp([pot(10)], rows, { paint, assumptions: registry, past });
    expect(unmeasured).toMatchObject({
      pots: [{ readingErrorMl: 0 }],
      takes: [{ ml: 5, weighedMl: 0, errorMl: expect.closeTo(Math.hypot(0.85, 0.85), 12) }],
    });
  });

  it('is told apart from use that was weighed by a density which nobody measured', () => {
    const unknown = { assumptions: registry, past, paint: makePaint({ paint: 'Slate' }) };
    const rows = [used(1), weighed(30, 26.4)];
    expect(useUp([pot(10)], rows, unknown)).toMatchObject({
      pots: [{ usableMl: expect.closeTo(6, 12) }],
      weighed: {
        pots: [{ usableMl: 9 }],
        takes: [{ ml: 0, weighedMl: expect.closeTo(3, 12), density: 'density', work: [] }],
      },
    });
    expect(useUp([pot(10)], rows, { ...unknown, paint })).toEqual({ pots: [expect.anything()] });
    const estimated = useUp([pot(10)], [...rows, row], unknown);
    expect(estimated.weighed).toBeUndefined();
    expect(estimated.unmeasured?.takes).toMatchObject([
      { weighedMl: expect.closeTo(3, 12), work: [{ likelyMl: 4 }] },
    ]);
  });
});

describe('how sure one is of what is left', () => {
  const errorOf = (readingErrorMl: number, rows: readonly LogRow[]): number | undefined =>
    use([pot(15, { readingErrorMl })], rows)[0]?.readingErrorMl;

  it.each<[string, number, LogRow[], number]>([
    ['a reading alone', 1.7, [], 1.7],
    // 0.3 g twice over 1.2 g/ml.
    ['a sealed pot of which a use was weighed', 0, [weighed(30, 26.4)], (Math.SQRT2 * 0.3) / 1.2],
    // 5 % of a 17 ml pot.
    ['a sealed pot of which a volume was written', 0, [used(3)], 0.85],
    ['both add up in squares', 1.7, [used(3)], Math.hypot(1.7, 0.85)],
    ['each use once more', 0, [used(3), used(2)], Math.hypot(0.85, 0.85)],
  ])('%s', (_, reading, rows, errorMl) => {
    expect(errorOf(reading, rows)).toBeCloseTo(errorMl, 12);
  });

  it('does not change for a pot that gave nothing', () => {
    const [first, second] = use([pot(15), pot(15)], [used(3)]);
    expect([first?.readingErrorMl, second?.readingErrorMl]).toEqual([expect.closeTo(0.85, 12), 0]);
  });
});

const stockOf = (pots: readonly Pot[], log: readonly LogRow[]) =>
  takeStock(makeSheets({ pots, log }), new Map(), registry)[0];

describe('the day of a count', () => {
  // The day of the reading shows that day's use already.
  it.each([
    ['2026-02-28', 12.98],
    ['2026-03-01', 15.98],
    ['2026-03-02', 15.98],
  ])('on %s leaves %f ml after a use of 3 ml on 2026-03-01', (countedOn, left) => {
    expect(stockOf([makePot({ paint: 'Slate', countedOn })], [used(3)])?.haveMl).toBeCloseTo(left, 9);
  });

  it('does not depend on the order of the rows in the sheet', () => {
    const rows = [used(1, '2026-03-03', 4), used(3, '2026-03-01', 3), used(2, '2026-03-02', 2)];
    const pots = [
      makePot({ paint: 'Slate', openedOn: '2026-01-01' }),
      makePot({ paint: 'Slate', row: 3, countedOn: '2026-03-02' }),
    ];
    expect(stockOf(pots, rows)).toEqual(stockOf(pots, [...rows].reverse()));
  });
});

describe('the stock', () => {
  it('is what the pots held less what their own log took', () => {
    const sheets = makeSheets({
      pots: [makePot({ paint: 'Slate' }), makePot({ paint: 'Rust', row: 3 })],
      log: [used(6), { ...used(2), row: 3 }],
    });
    const [slate, rust] = takeStock(sheets, new Map(), registry);
    expect([slate?.haveMl, rust?.haveMl]).toEqual([expect.closeTo(15.98 - 8, 9), expect.closeTo(15.98, 9)]);
  });
});
