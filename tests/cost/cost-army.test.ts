import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { costWhole } from '../../src/cost/cost-army.js';
import type { Amount } from '../../src/model/money.js';
import type { Plan } from '../../src/model/plan.js';
import type { Sheets } from '../../src/model/sheets.js';
import { planArmy } from '../../src/plan-army.js';
import { certainSettings } from '../make-certain.js';
import {
  makeFigure,
  makeOffer,
  makePot,
  makeSheets,
  makeShop,
  makeStep,
  makeUnit,
  offerPot,
} from '../make-sheets.js';
import { readSample } from '../sample/read-sample.js';

const plan = (parts: Parameters<typeof makeSheets>[0]): Promise<Plan> =>
  planArmy(makeSheets(parts), '2026-11-02', { draws: 1000 });
const minor = (amount: Amount | undefined): number => amount?.exactMinor.toNumber() ?? Number.NaN;

const countsOf = ({ order }: Plan): unknown[] =>
  order.lines.map(({ shop, offer, count }) => [shop, offer, count]);

/** Area 10 cm2 and one coat of 50 µm at 50 %: (0.05 x n / 0.5 + 0.08 a sitting) ml, so 1.08 ml for ten. */
const tenCm2 = makeFigure({ areaCm2: 10 });
const oneCoat = makeStep({ step: 1, coats: 1 });
const need = 1.08;
/** Of a pot of 17 ml at 3.40, 17 x 0.94 ml of it usable, those ten are worth 340 / 15.98 x 1.08 cents. */
const tenMinor = 22.9787234;

describe('cost of use, by hand', () => {
  it('a full 17 ml pot at 3.40 costs 340 / 15.98 a usable ml: 1.08 ml are 22.979 cents', async () => {
    const { costs } = await plan({
      figures: [tenCm2],
      steps: [oneCoat],
      pots: [makePot({ paint: 'Slate', priceMinor: 340 })],
    });
    expect(minor(costs.useWhole)).toBeCloseTo((340 / 15.98) * need, 10);
    expect(minor(costs.units[0]?.use.perFigure)).toBeCloseTo(tenMinor / 10, 7);
    expect(costs).toMatchObject({ cashMinor: 0, unpriced: [] });
    expect(costs.useWhole.atLeast).toBe(false);
  });

  it('an opened pot goes first, then the dearer full one: every line pays the average', async () => {
    const pots = [
      makePot({ paint: 'Slate', row: 2, priceMinor: 680 }),
      makePot({ paint: 'Slate', row: 3, priceMinor: 340, left: { how: 'in ml', ml: 0.5 } }),
    ];
    const { costs } = await plan({ figures: [tenCm2], steps: [oneCoat], pots });
    const opened = 0.5 * 0.94;
    expect(minor(costs.useWhole)).toBeCloseTo((opened * 340) / 15.98 + ((need - opened) * 680) / 15.98, 10);
  });

  it('what must be bought is used last, at its own price', async () => {
    const { costs, order } = await plan({
      figures: [tenCm2],
      steps: [oneCoat],
      pots: [makePot({ paint: 'Slate', priceMinor: 340, left: { how: 'in ml', ml: 0.5 } })],
      offers: [makeOffer({ priceMinor: 400, pots: [offerPot('Slate')] })],
      shops: [makeShop({ postageMinor: 450 })],
    });
    expect(order.totalMinor).toBe(850);
    expect(costs.cashMinor).toBe(850);
    expect(minor(costs.useWhole)).toBeCloseTo((0.47 * 340) / 15.98 + ((need - 0.47) * 400) / 15.98, 10);
  });

  it('extras are per figure, the figures themselves apart', async () => {
    const { costs } = await plan({
      figures: [{ ...tenCm2, priceMinor: 250 }],
      steps: [oneCoat],
      pots: [makePot({ paint: 'Slate', priceMinor: 340 })],
      extras: [{ item: 'brush', priceMinor: 600, serves: 100 }],
    });
    expect(minor(costs.units[0]?.use.perFigure)).toBeCloseTo(tenMinor / 10 + 6, 7);
    expect(minor(costs.extrasWhole)).toBe(60);
    expect(minor(costs.figuresPrice)).toBe(2500);
  });
});

describe('what has no price', () => {
  it('is named, counts nothing and makes every sum with it "at least"', async () => {
    const steps = [oneCoat, makeStep({ step: 2, paint: 'Oat', coats: 1 })];
    const pots = [makePot({ paint: 'Slate', priceMinor: 340 }), makePot({ paint: 'Oat' })];
    const { costs } = await plan({ figures: [tenCm2], steps, pots });
    expect(costs.unpriced).toEqual(['Oat']);
    expect(minor(costs.useWhole)).toBeCloseTo(tenMinor, 6);
    expect(costs.useWhole.atLeast).toBe(true);
    expect(costs.units[0]?.use.lines.map(({ atLeast }) => atLeast)).toEqual([false, true]);
    expect(costs.paints.get('Oat')?.perMl).toBeUndefined();
    expect(costs.figuresPrice.atLeast).toBe(true);
  });

  it('in part: what an order brings has a price, what stands on the shelf has none', async () => {
    const pots = [makePot({ paint: 'Slate', left: { how: 'in ml', ml: 0.5 } })];
    const { costs } = await plan({
      figures: [tenCm2],
      steps: [oneCoat],
      pots,
      offers: [makeOffer({ priceMinor: 400, pots: [offerPot('Slate')] })],
      settings: certainSettings,
    });
    expect(costs.paints.get('Slate')?.pricedShare).toBeCloseTo((need - 0.47) / need, 10);
    expect(minor(costs.useWhole)).toBeCloseTo(((need - 0.47) * 400) / 15.98, 10);
    expect(costs.useWhole.atLeast).toBe(true);
  });

  it('is what came for nothing: a gift does not tell what another pot costs', async () => {
    const pots = [makePot({ paint: 'Slate', priceMinor: 0, left: { how: 'in ml', ml: 0.5 } })];
    const { costs } = await plan({ figures: [tenCm2], steps: [oneCoat], pots });
    expect(costs.unpriced).toEqual(['Slate']);
    expect(costs.useWhole.atLeast).toBe(true);
  });
});

describe('a need beyond the pots that no offer covers', () => {
  const figures = [tenCm2];
  const army = [makeUnit({ count: 60 })];
  const steps = [oneCoat, makeStep({ step: 2, paint: 'Oat', coats: 1 })];
  // Each paint: 0.1 x 60 + 6 x 0.08 = 6.48 ml. Slate 0.47 ml are there, at 340 / 15.98 a ml; another pot would cost the
  // same. Oat: 0.94 ml in the pot of 2.00, and the newest, which is empty, cost 4.00.
  const pots = [
    makePot({ paint: 'Slate', row: 2, priceMinor: 340, left: { how: 'in ml', ml: 0.5 } }),
    makePot({
      paint: 'Oat',
      row: 3,
      priceMinor: 400,
      openedOn: '2026-01-09',
      left: { how: 'by eye', share: 0 },
    }),
    makePot({ paint: 'Oat', row: 4, priceMinor: 200, openedOn: '2024-03-02', left: { how: 'in ml', ml: 1 } }),
  ];
  const slate = (6.48 * 340) / 15.98;
  const oat = (0.94 * 200 + (6.48 - 0.94) * 400) / 15.98;

  it('costs what the newest pot of it did: 60 figures, two paints, both priced, no offers', async () => {
    const { costs, order } = await plan({ figures, steps, pots, army, settings: certainSettings });
    expect(order.unmet.map(({ ml }) => ml)).toEqual([expect.closeTo(6.01, 9), expect.closeTo(5.54, 9)]);
    expect(minor(costs.useWhole)).toBeCloseTo(slate + oat, 9);
    expect(costs.useWhole.atLeast).toBe(false);
    expect(costs.unpriced).toEqual([]);
    expect([...costs.paints.values()].map(({ likeNewestMl }) => likeNewestMl)).toEqual([
      expect.closeTo(6.01, 9),
      expect.closeTo(5.54, 9),
    ]);
  });

  it('does so beside offers of other paints, and past what an offer has left', async () => {
    const offers = [makeOffer({ priceMinor: 500, pots: [offerPot('Slate', 4)], available: 1 })];
    const { costs } = await plan({ figures, steps, pots, army, offers, settings: certainSettings });
    // 3.76 usable ml of the pot on offer at 5.00, then Slate at the price of the pot that is owned.
    expect(minor(costs.useWhole)).toBeCloseTo(500 + ((6.48 - 3.76) * 340) / 15.98 + oat, 9);
    expect(costs.useWhole.atLeast).toBe(false);
  });
});

describe('work done and work to do', () => {
  const steps = [oneCoat, makeStep({ step: 2, coats: 1 })];
  const pots = [makePot({ paint: 'Slate', priceMinor: 340 })];
  const extras = [{ item: 'brush', priceMinor: 600, serves: 100 }];

  it('the whole scheme is the cost of a figure; what is still to be done stands beside it', async () => {
    const { costs } = await plan({ figures: [tenCm2], steps, pots, extras, army: [makeUnit({ done: 1 })] });
    expect(minor(costs.useWhole)).toBeCloseTo(2 * tenMinor + 60, 6);
    expect(minor(costs.useRemaining)).toBeCloseTo(tenMinor + 60, 6);
  });

  it('a finished unit costs nothing more and keeps its cost per figure', async () => {
    const { costs } = await plan({ figures: [tenCm2], steps, pots, extras, army: [makeUnit({ done: 2 })] });
    expect(minor(costs.useRemaining)).toBe(0);
    expect(minor(costs.units[0]?.use.perFigure)).toBeCloseTo(tenMinor / 5 + 6, 7);
  });
});

describe('cash per unit', () => {
  const army = (counts: readonly number[]): Sheets['army'] =>
    counts.map((count, index) => makeUnit({ unit: `unit ${index}`, row: index + 2, count }));
  const offers = [makeOffer({ priceMinor: 333, pots: [offerPot('Slate')] })];
  const shops = [makeShop({ postageMinor: 401 })];

  it('goes by the need that the pots cover: 30 and 10 figures share 7.34', async () => {
    // (0.1 x 30 + 3 x 0.08) = 3.24 ml and 1.08 ml: three quarters and one quarter of 734, rounded to add up.
    const { costs } = await plan({
      figures: [tenCm2],
      steps: [oneCoat],
      army: army([30, 10]),
      offers,
      shops,
    });
    expect(costs.units.map(({ cashMinor }) => cashMinor)).toEqual([551, 183]);
  });

  it('adds up to the order, whatever the units', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.integer({ min: 1, max: 300 }), { minLength: 1, maxLength: 12 }),
        async (counts) => {
          const { costs, order } = await plan({
            figures: [tenCm2],
            steps: [oneCoat],
            army: army(counts),
            offers,
            shops,
          });
          expect(costs.units.reduce((sum, { cashMinor }) => sum + cashMinor, 0)).toBe(order.totalMinor);
        },
      ),
      { numRuns: 50 },
    );
  });
});

describe('a plan', () => {
  it('covers every need or says what is unmet, and does not mind the order of rows', async () => {
    const offers = [makeOffer({ priceMinor: 333, pots: [offerPot('Slate')] })];
    const pots = [makePot({ paint: 'Slate', row: 2, priceMinor: 300 }), makePot({ paint: 'Slate', row: 3 })];
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.integer({ min: 1, max: 500 }), { minLength: 1, maxLength: 6 }),
        async (counts) => {
          const army = counts.map((count, index) =>
            makeUnit({ unit: `unit ${index}`, row: index + 2, count }),
          );
          const there = await plan({ figures: [tenCm2], steps: [oneCoat], army, offers, pots });
          const back = await plan({
            figures: [tenCm2],
            steps: [oneCoat],
            army: [...army].reverse(),
            offers,
            pots,
          });
          const bought = there.order.lines
            .flatMap((line) => line.pots)
            .reduce((ml, pot) => ml + pot.count * pot.usableMl, 0);
          const [slate] = there.stock;
          expect(bought).toBeGreaterThanOrEqual((slate?.toBuyMl ?? 0) - 1e-9);
          expect(back.order.totalMinor).toBe(there.order.totalMinor);
          expect(countsOf(back)).toEqual(countsOf(there));
          expect(minor(back.costs.useWhole)).toBeCloseTo(minor(there.costs.useWhole), 6);
        },
      ),
      { numRuns: 50 },
    );
  });

  it('restocks only when asked, and takes the date of the settings first', async () => {
    const parts = { figures: [tenCm2], steps: [oneCoat] };
    const asked = makeSheets(parts);
    const shelf: Sheets = { ...asked, settings: { ...asked.settings, restock: 'shelf', date: '2026-01-31' } };
    expect(await plan(parts)).toMatchObject({ restock: undefined, date: '2026-11-02' });
    expect(await planArmy(shelf, '2026-11-02')).toMatchObject({
      restock: { status: 'nothing to buy' },
      date: '2026-01-31',
    });
  });
});

describe('cost of use by zone and layer', () => {
  it('adds up to the paint still to be used: 22.979 cents a coat on the whole, extras apart', async () => {
    const steps = [
      makeStep({ step: 1, coats: 1, zone: 'head' }),
      makeStep({ step: 2, coats: 1 }),
      makeStep({ step: 3, layer: 'wash', paint: 'Oat' }),
    ];
    const pots = [makePot({ paint: 'Slate', priceMinor: 340 }), makePot({ paint: 'Oat' })];
    const extras = [{ item: 'brush', priceMinor: 600, serves: 100 }];
    const { costs } = await plan({ figures: [tenCm2], steps, pots, extras });
    const sum = (of: ReadonlyMap<string, Amount>): number =>
      [...of.values()].reduce((all, one) => all + minor(one), 0);
    expect([...costs.zones.keys()]).toEqual(['head', 'whole']);
    expect([...costs.layers.keys()]).toEqual(['base coat', 'wash']);
    expect(minor(costs.zones.get('whole'))).toBeCloseTo(tenMinor, 6);
    expect(costs.zones.get('whole')?.atLeast).toBe(true);
    expect(costs.layers.get('base coat')?.atLeast).toBe(false);
    for (const parts of [costs.zones, costs.layers]) {
      expect(sum(parts)).toBeCloseTo(minor(costs.useRemaining) - minor(costs.extrasWhole), 9);
    }
  });
});

describe('cost of use of the whole scheme alone', () => {
  it('is that of the whole reckoning, unpriced paint and extras included', async () => {
    for (const { sheets } of [await readSample('folder'), { sheets: makeSheets({ steps: [oneCoat] }) }]) {
      const one = await planArmy(sheets, '2026-11-02');
      const alone = costWhole(sheets, one);
      expect(minor(alone)).toBeCloseTo(minor(one.costs.useWhole), 9);
      expect(alone.atLeast).toBe(one.costs.useWhole.atLeast);
      expect(alone.atLeast).toBe(true);
    }
  });
});
