// The stages together: what only the whole plan can show.
import { describe, expect, it } from 'vitest';
import type { Order } from '../src/model/order.js';
import type { Sheets } from '../src/model/sheets.js';
import { solveProgram } from '../src/order/solver/solve-program.js';
import { planArmy } from '../src/plan-army.js';
import { certainSettings } from './make-certain.js';
import {
  makeFigure,
  makeOffer,
  makePaint,
  makePot,
  makeSheets,
  makeShop,
  makeStep,
  makeUnit,
  offerPot,
} from './make-sheets.js';
import { readSample } from './sample/read-sample.js';

const today = '2026-11-02';

/** Two units by priority; 10 cm2 a figure, one coat: 0.1 ml a figure and 0.08 ml a sitting of ten. */
const army = [
  makeUnit({ unit: 'archers', row: 2, count: 120, priority: 2 }),
  makeUnit({ unit: 'watch', row: 3, count: 150, priority: 1 }),
];
const sheets = makeSheets({
  figures: [makeFigure({ areaCm2: 10 })],
  steps: [makeStep({ step: 1, coats: 1 })],
  pots: [makePot({ paint: 'Slate', priceMinor: 300, left: { how: 'in ml', ml: 2.5 } })],
  offers: [makeOffer({ priceMinor: 300, pots: [offerPot('Slate')] })],
  shops: [makeShop({ postageMinor: 200 })],
  army,
  settings: certainSettings,
});
/** To nine digits, since sums are made in another order. */
const tidy = (order: unknown): unknown =>
  JSON.parse(JSON.stringify(order, (_, one) => (typeof one === 'number' ? Number(one.toFixed(9)) : one)));
const orderOf = async (of: Sheets) => (await planArmy(of, today)).order;

// 2.35 ml are 21 of the watch (2.1 + 3 x 0.08 = 2.34), and one more would take 2.44. Where it has only 21, all of them.
it('says to which figure the pots last, of the part of the army that is planned', async () => {
  const reachOf = async (until: number) => {
    const part = [makeUnit({ unit: 'watch', count: until })];
    const { summary } = await planArmy(sheets, today, { army: part });
    return summary.lasting.reach.get('Slate');
  };
  const at = { figures: 21, unit: 'watch', ofUnit: 21 };
  expect(await reachOf(22)).toEqual({ likely: at, low: at });
  expect(await reachOf(21)).toEqual({ likely: undefined, low: undefined });
  expect((await planArmy(sheets, today)).summary.lasting.reach.get('Slate')?.likely).toEqual(at);
});

it.each([
  [150, 'watch'],
  [149, undefined],
])('of 150 figures the first %d are a finished unit: %s', async (until, finished) => {
  const part = [makeUnit({ unit: 'watch', row: 3, count: until })];
  const { summary } = await planArmy(sheets, today, { army: part });
  expect(summary.ahead.firstFinished?.unit).toBe(finished);
});

describe('a budget', () => {
  // The watch takes 16.2 ml (15 + 15 x 0.08), of which 2.35 are there; a pot of 15.98 ml leaves 2.13 ml: 19 archers take
  // 1.9 + 2 x 0.08 = 2.06, 20 would take 2.16.
  it('finishes by priority, cuts a unit short, and shows the order of a plan for just that', async () => {
    const { budget } = await planArmy(sheets, today, { budgetMinor: 500 });
    expect(budget).toMatchObject({
      units: [
        { unit: 'watch', figures: 150, finished: 150 },
        { unit: 'archers', figures: 120, finished: 19 },
      ],
      nextSteps: [{ unit: 'archers', figures: 101, extraMinor: 300 }],
      proved: true,
      notTried: 0,
    });
    const cut = {
      ...sheets,
      army: army.map((unit) => (unit.unit === 'archers' ? { ...unit, count: 19 } : unit)),
    };
    // Other ways to buy are told of the army's own order only.
    expect(tidy(budget?.order)).toEqual(tidy({ ...(await orderOf(cut)), passedOver: [], fromOneShop: [] }));
    expect(budget?.order.totalMinor).toBe(500);
  });

  // 21 take 2.1 + 3 x 0.08 = 2.34 ml of the 2.35.
  it('of nothing finishes what the shelf finishes', async () => {
    const { budget } = await planArmy(sheets, today, { budgetMinor: 0 });
    expect(budget?.units.map(({ finished }) => finished)).toEqual([21, 0]);
    expect(budget?.order).toMatchObject({ status: 'nothing to buy', totalMinor: 0 });
  });
});

describe('progress without an amount', () => {
  // The watch's 15 sittings put out 150 x 0.1 + 15 x 0.08 = 16.2 ml; the archers' own stay as they are.
  it('is work done, and no weighing', async () => {
    const row = { row: 2, date: '2026-10-01', paint: 'Slate', unit: 'watch', step: 1, figures: 150 };
    const after = await planArmy({ ...sheets, log: [row] }, today);
    const before = await planArmy(sheets, today);
    const needMl = ({ estimate }: typeof after) => estimate.needs.get('Slate')?.remainingMl ?? 0;
    expect(needMl(before) - needMl(after)).toBeCloseTo(16.2, 9);
    expect([after.learned, after.assumptions]).toEqual([before.learned, before.assumptions]);
    // That is more than the 2.35 ml that the pot held.
    expect([before.stock[0]?.haveMl, after.stock[0]?.haveMl]).toEqual([expect.closeTo(2.35, 9), 0]);
  });
});

describe('what is sold out', () => {
  const single = (shop: string, priceMinor: number, available?: number) =>
    makeOffer({
      shop,
      priceMinor,
      pots: [offerPot('Slate')],
      ...(available === undefined ? {} : { available }),
    });
  const planOf = (...offers: Sheets['offers']) =>
    planArmy({ ...sheets, offers, settings: { ...certainSettings, restock: 'shelf' } }, today, {
      budgetMinor: 900,
    });

  it('is ordered around, whatever is asked', async () => {
    const { order, choices, restock, budget } = await planOf(single('Quay', 300, 0), single('Mill', 400));
    const orders = [order, ...choices, restock, budget?.order];
    const shops = orders.flatMap((one) => (one?.lines ?? []).map(({ shop }) => shop));
    expect(new Set(shops)).toEqual(new Set(['Mill']));
  });

  it('leaves a paint that nobody else sells without a shop', async () => {
    const { order, summary } = await planOf(single('Quay', 300, 0));
    expect([order.totalMinor, order.unmet.length]).toEqual([0, 1]);
    expect(summary.order.alike).toMatchObject([{ paint: 'Slate', priceMinor: 300 }]);
  });
});

describe('the staircase', () => {
  it("stands at the order's cash where the army ends", async () => {
    const { stairs, order } = await planArmy(sheets, today);
    expect(stairs.mostFigures).toBe(540);
    expect(stairs.steps.findLast(({ figures }) => figures <= 270)?.cashMinor).toBe(order.totalMinor);
    expect(stairs.steps[0]).toMatchObject({ figures: 0, cashMinor: 0, because: [] });
  });
});

describe('the chosen way to buy', () => {
  const planOf = async (way: Pick<Sheets['settings'], 'surePercent' | 'buy'>) => {
    const settings = { currency: 'EUR', locale: 'en', restock: 'shelf' as const, overrides: [], ...way };
    const paints = [makePaint({ paint: 'Slate', keepMl: 8 })];
    const unsure = { ...sheets, settings, paints: new Map(paints.map((one) => [one.paint, one])) };
    const { order } = await planArmy(unsure, today);
    return { order, plan: await planArmy(unsure, today, { budgetMinor: order.totalMinor }) };
  };
  const mlOf = (order: Order | undefined) =>
    (order?.lines ?? [])
      .flatMap(({ pots }) => pots)
      .reduce((sum, { count, usableMl }) => sum + count * usableMl, 0);

  it.each([{ buy: 'likely' }, { buy: 'goes' }, { surePercent: 95 }] as const)(
    'decides stairs, budget, shelf and colours: %j',
    async (way) => {
      const { order, plan } = await planOf(way);
      const { stairs, budget, frontier, restock, stock } = plan;
      expect(stairs.steps.findLast(({ figures }) => figures <= 270)?.cashMinor).toBe(order.totalMinor);
      expect(budget?.units.map(({ finished }) => finished)).toEqual([150, 120]);
      expect(budget?.order.totalMinor).toBe(order.totalMinor);
      expect(frontier.points[0]?.cashMinor).toBe(order.totalMinor);
      const toBuyMl = stock[0]?.toBuyMl ?? 0;
      expect(mlOf(order)).toBeGreaterThanOrEqual(toBuyMl);
      expect(mlOf(order) + mlOf(restock)).toBeGreaterThanOrEqual(toBuyMl + 8);
    },
  );

  it('is not one and the same', async () => {
    const sums = [await planOf({ buy: 'likely' }), await planOf({ surePercent: 95 })].map(({ plan }) => [
      plan.order.totalMinor,
      plan.frontier.points[0]?.cashMinor,
      mlOf(plan.order) + mlOf(plan.restock),
    ]);
    for (const [place, likely] of (sums[0] ?? []).entries())
      expect(sums[1]?.[place]).toBeGreaterThan(likely ?? 0);
  });
});

describe('a plan whose every search takes long', () => {
  it('searches no longer than it is told to in all, and has an answer to every question', async () => {
    const { sheets: sample } = await readSample('folder');
    // Sixteen streets with the same shops, so that few programs are small enough to be searched without the solver.
    const streets = ['', ...Array.from({ length: 15 }, (_, at) => ` ${at + 2}`)];
    const town: typeof sample = {
      ...sample,
      offers: streets.flatMap((street) =>
        sample.offers.map((offer) => ({ ...offer, shop: offer.shop + street })),
      ),
      shops: new Map(
        streets.flatMap((street) =>
          [...sample.shops.values()].map((one) => [one.shop + street, { ...one, shop: one.shop + street }]),
        ),
      ),
    };
    let [spent, asked] = [0, 0];
    const plan = await planArmy(town, today, {
      ...{ seconds: 25, budgetMinor: 4000 },
      solve: async (program, limits) => {
        spent += limits.seconds;
        asked++;
        // Broken off soon, but counted as if it had taken all of its time.
        const soon = { ...limits, seconds: Math.min(0.1, limits.seconds) };
        return { ...(await solveProgram(program, soon)), seconds: limits.seconds };
      },
    });
    expect(asked).toBeGreaterThan(10);
    expect(spent).toBeGreaterThan(12);
    expect(spent).toBeLessThanOrEqual(25);
    expect(plan.order.status).toBe("can't be met");
    expect(plan.budget?.order.totalMinor).toBeLessThanOrEqual(4000);
    expect(plan.frontier.points).toHaveLength(4);
    expect(new Set(plan.stairs.steps.map(({ proved }) => proved))).toEqual(new Set([true, false]));
  });
});
