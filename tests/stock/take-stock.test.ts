import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import type { LogRow, Pot } from '../../src/model/sheets.js';
import { sortPots } from '../../src/model/sort-pots.js';
import type { CountedStock } from '../../src/model/stock.js';
import { measurePot } from '../../src/stock/measure-pot.js';
import { findShort, takeStock } from '../../src/stock/take-stock.js';
import { makePaint, makePot, makeSheets } from '../make-sheets.js';

const usable = (pot: Partial<Pot>, paint = makePaint({ paint: 'Slate' })): number =>
  measurePot(makePot({ paint: 'Slate', ...pot }), paint, registry).usableMl;

describe('what is left in a pot, by hand', () => {
  it.each<[string, Partial<Pot>, number]>([
    ['a full 17 ml dropper: 17 x 0.94', {}, 15.98],
    ['a full 400 ml can: 400 x 0.6', { sizeMl: 400, container: 'can' }, 240],
    ['60 % by eye: 17 x 0.6 x 0.94', { left: { how: 'by eye', share: 0.6 } }, 9.588],
    ['7.5 ml: 7.5 x 0.94', { left: { how: 'in ml', ml: 7.5 } }, 7.05],
    [
      '31.2 g of which 19.2 g are pot: 12 / 1.2 x 0.94',
      { left: { how: 'weighed', grams: 31.2, emptyGrams: 19.2 } },
      9.4,
    ],
    ['on its way counts as full', { ordered: true, left: { how: 'by eye', share: 0 } }, 15.98],
    ['heavier than full counts as full', { left: { how: 'weighed', grams: 60, emptyGrams: 20 } }, 15.98],
  ])('%s', (_, pot, ml) => {
    expect(usable(pot)).toBeCloseTo(ml, 10);
  });

  it('a wash weighs 1.0, a can 0.8, and the painter knows better', () => {
    const left = { how: 'weighed', grams: 32, emptyGrams: 20 } as const;
    expect(usable({ left }, makePaint({ paint: 'Slate', kind: 'wash' }))).toBeCloseTo(12 * 0.94, 10);
    expect(usable({ left, container: 'can', sizeMl: 400 })).toBeCloseTo((12 / 0.8) * 0.6, 10);
    expect(usable({ left }, makePaint({ paint: 'Slate', densityGPerMl: 1.5 }))).toBeCloseTo(8 * 0.94, 10);
  });
});

describe('which pot is used first', () => {
  it('opened ones by date, begun ones, unopened, on its way', () => {
    const pot = (row: number, more: Partial<Pot> = {}): Pot => makePot({ paint: 'Slate', row, ...more });
    const pots = [
      pot(2, { ordered: true }),
      pot(3),
      pot(4, { left: { how: 'by eye', share: 0.5 } }),
      pot(5, { openedOn: '2026-03-01' }),
      pot(6, { openedOn: '2025-11-20' }),
      pot(7, { left: { how: 'in ml', ml: 17 } }),
    ];
    expect(sortPots(pots).map(({ row }) => row)).toEqual([6, 5, 4, 3, 7, 2]);
  });
});

describe('a paint', () => {
  const stockOf = (
    needMl: number | undefined,
    pots: Partial<Pot>[],
    keepMl?: number,
  ): CountedStock | undefined => {
    const paints = [makePaint({ paint: 'Slate', ...(keepMl === undefined ? {} : { keepMl }) })];
    const sheets = makeSheets({ paints, pots: pots.map((pot) => makePot({ paint: 'Slate', ...pot })) });
    const needs = new Map(needMl === undefined ? [] : [['Slate', { wholeMl: needMl, remainingMl: needMl }]]);
    return takeStock(sheets, needs, registry)[0];
  };

  // One full dropper holds 15.98 usable ml.
  it.each([
    [5, 0],
    [15.98, 0],
    [15.99, 0.01],
    [20, 4.02],
  ])('of which %f ml are needed from one pot lacks %f ml', (needMl, toBuyMl) => {
    expect(stockOf(needMl, [{}])).toMatchObject({ toBuyMl: expect.closeTo(toBuyMl, 9) });
  });

  it('is low only where a pot is on the shelf', () => {
    expect(stockOf(5, [])).toMatchObject({ pots: [], runningLow: false, toBuyMl: 5, keepMl: 0 });
  });

  // 2.55 usable ml are 2.713 of the label.
  it('runs low under 15 % of the largest pot: 2.55 ml; also when the army does not use it', () => {
    expect(stockOf(undefined, [{ left: { how: 'in ml', ml: 2.71 } }])?.runningLow).toBe(true);
    expect(stockOf(undefined, [{ left: { how: 'in ml', ml: 2.72 } }])?.runningLow).toBe(false);
    expect(stockOf(14, [{}])).toMatchObject({
      runningLow: true,
      leftAfterMl: expect.closeTo(1.98, 10),
      keepMl: 2.55,
    });
    expect(stockOf(14, [{}], 1)?.runningLow).toBe(false);
  });

  it('asks to buy only what is missing', () => {
    const [slate] = [stockOf(20, [{}])].flatMap((one) => one ?? []);
    expect(slate && findShort([slate])).toEqual([{ paint: 'Slate', ml: expect.closeTo(4.02, 10) }]);
    const enough = stockOf(5, [{}]);
    expect(enough && findShort([enough])).toEqual([]);
  });

  it('shows apart what is on its way', () => {
    expect(stockOf(1, [{}, { ordered: true }])).toMatchObject({
      haveMl: expect.closeTo(31.96, 10),
      orderedMl: expect.closeTo(15.98, 10),
    });
  });
});

describe('a level without a pot', () => {
  it('is low where the painter names the level: keep 3 ml of a paint not owned', () => {
    const sheets = makeSheets({ paints: [makePaint({ paint: 'Slate', keepMl: 3 })] });
    expect(takeStock(sheets, new Map(), registry)).toMatchObject([
      { paint: 'Slate', runningLow: true, keepMl: 3, mark: 'yours' },
    ]);
  });
});

describe('a log in any order of rows that commute', () => {
  const left = fc.integer({ min: 0, max: 17 }).map((ml) => ({ how: 'in ml', ml }) as const);
  const pots = fc.integer({ min: 1, max: 3 });
  const sizeMl = fc.constantFrom(12, 17);
  const event = fc.oneof(
    { weight: 3, arbitrary: fc.record({ usedMl: fc.integer({ min: 1, max: 6 }) }) },
    fc.record({ what: fc.constant('bought'), pots, sizeMl, shop: fc.constantFrom('Quay', 'Lock') }),
    fc.record({ what: fc.constant('arrived'), pots }),
    fc.record({ what: fc.constant('counted'), pots, left }),
    fc.record({ what: fc.constant('thrown away') }),
  );
  const place = {
    paint: fc.constantFrom('Slate', 'Rust'),
    date: fc.constantFrom('2026-03-01', '2026-03-02', '2026-03-03'),
  };
  const rowOf = fc
    .tuple(fc.record(place), event)
    .map(([at, more]) => ({ ...at, ...more }) as Omit<LogRow, 'row'>);
  const shelves = { pots: ['Slate', 'Slate', 'Rust'].map((paint, at) => makePot({ paint, row: at + 2 })) };

  const shelfAfter = (log: readonly LogRow[]) =>
    takeStock(makeSheets({ ...shelves, log }), new Map(), registry).map(({ paint, pots: there }) => [
      paint,
      ...there.map(({ row, sizeMl: size, ordered, usableMl }) => [row, size, ordered, usableMl.toFixed(9)]),
    ]);

  /** Rows of one paint and day stay in their order, unless all of them are uses. */
  function keepOrder(mixed: readonly LogRow[]): LogRow[] {
    const alike = (one: LogRow) =>
      mixed.filter(({ paint, date }) => paint === one.paint && date === one.date);
    return mixed.map((one) => {
      const group = alike(one);
      if (group.every(({ what }) => what === undefined)) return one;
      return group.toSorted((a, b) => a.row - b.row)[group.indexOf(one)] as LogRow;
    });
  }

  it('leaves the same on the shelf: other paints, other days, uses of one day', () => {
    const logs = fc.array(rowOf, { minLength: 2, maxLength: 14 }).chain((rows) => {
      const log = rows.map((one, at): LogRow => ({ ...one, row: at + 2 }));
      const mixed = fc.shuffledSubarray(log, { minLength: log.length }).map(keepOrder);
      return fc.tuple(fc.constant(log), mixed);
    });
    let moved = 0;
    fc.assert(
      fc.property(logs, ([log, mixed]) => {
        if (log.some((one, at) => one !== mixed[at])) moved += 1;
        expect(shelfAfter(mixed)).toEqual(shelfAfter(log));
      }),
      { numRuns: 500 },
    );
    expect(moved).toBeGreaterThan(250);
  });
});
