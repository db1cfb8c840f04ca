import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import type { Offer, Shop } from '../../src/model/sheets.js';
import type { PaintStock } from '../../src/model/stock.js';
import { chooseOrder } from '../../src/order/choose-order.js';
import type { Market } from '../../src/order/open-market.js';
import { orderRestock } from '../../src/order/order-restock.js';
import { prepareBuying } from '../../src/order/prepare-buying.js';
import { solveProgram } from '../../src/order/solver/solve-program.js';
import { makeOffer, makeShop, offerPot } from '../make-sheets.js';

const buying = prepareBuying({});
const marketOf = (offers: readonly Offer[], shops: readonly Shop[] = []): Market => ({
  offers,
  shops: new Map(shops.map((shop) => [shop.shop, shop])),
  assumptions: registry,
});
const orderOf = (needs: Record<string, number>, market: Market) =>
  chooseOrder(
    Object.entries(needs).map(([paint, ml]) => ({ paint, ml })),
    market,
    buying,
  );
const slate = makeOffer({ offer: 'Slate 17', priceMinor: 300, pots: [offerPot('Slate')] });
const oat = makeOffer({ offer: 'Oat 17', priceMinor: 250, pots: [offerPot('Oat')] });
const bought = (order: Awaited<ReturnType<typeof orderOf>>): string[] =>
  order.lines.map(({ shop, offer, count }) => `${count} x ${offer} (${shop})`);

describe('the order', () => {
  it('buys whole pots of the usable volume: 20 ml of 17 ml pots at 15.98 are two', async () => {
    const order = await orderOf({ Slate: 20 }, marketOf([slate]));
    expect(order).toMatchObject({
      status: 'proved',
      totalMinor: 600,
      postageMinor: 0,
      unmet: [],
      aboveBestMinor: 0,
    });
    expect(order.lines).toMatchObject([{ offer: 'Slate 17', count: 2, costMinor: 600 }]);
    expect(order.lines[0]?.pots).toMatchObject([
      { count: 2, usableMl: expect.closeTo(15.98, 10), coversMl: 20, overMl: expect.closeTo(11.96, 10) },
    ]);
  });

  it('leaves nothing over of a pot used up, whatever subtraction leaves', async () => {
    const [line] = (await orderOf({ Slate: 15.98 - 1e-7 }, marketOf([slate]))).lines;
    expect(line?.pots[0]?.overMl).toBe(0);
    const [next] = (await orderOf({ Slate: 15.98 - 1e-5 }, marketOf([slate]))).lines;
    expect(next?.pots[0]?.overMl).toBeCloseTo(1e-5, 9);
  });

  it('names what no offer covers, and orders the rest', async () => {
    const order = await orderOf({ Slate: 20, Oat: 3 }, marketOf([{ ...slate, available: 1 }]));
    expect(order.status).toBe("can't be met");
    expect(bought(order)).toEqual(['1 x Slate 17 (Quay)']);
    expect(order.unmet).toEqual([
      { paint: 'Slate', ml: expect.closeTo(4.02, 10) },
      { paint: 'Oat', ml: 3 },
    ]);
  });

  it('takes a set where it is cheaper than its single pots, also for a paint sold in no other way', async () => {
    const set = makeOffer({ offer: 'set', priceMinor: 500, pots: [offerPot('Slate'), offerPot('Oat')] });
    expect(bought(await orderOf({ Slate: 3, Oat: 3 }, marketOf([slate, oat, set])))).toEqual([
      '1 x set (Quay)',
    ]);
    expect(bought(await orderOf({ Slate: 3 }, marketOf([set])))).toEqual(['1 x set (Quay)']);
    expect(bought(await orderOf({ Slate: 3 }, marketOf([slate, set])))).toEqual(['1 x Slate 17 (Quay)']);
  });

  it('weighs postage: one parcel at 5.80 beats two cheaper halves at 5.50 with 4.00 postage more', async () => {
    const there = makeOffer({ shop: 'Mill', offer: 'Oat here', priceMinor: 280, pots: [offerPot('Oat')] });
    const far = makeOffer({ offer: 'Oat far', priceMinor: 250, pots: [offerPot('Oat')] });
    const near = { ...slate, shop: 'Mill' };
    const shops = [makeShop({ postageMinor: 400 }), makeShop({ shop: 'Mill', postageMinor: 400 })];
    const order = await orderOf({ Slate: 3, Oat: 3 }, marketOf([near, there, far], shops));
    expect(bought(order)).toEqual(['1 x Oat here (Mill)', '1 x Slate 17 (Mill)']);
    expect(order).toMatchObject({ totalMinor: 980, postageMinor: 400 });
  });

  it('fills up to free postage where that is cheaper than the postage, and such a pot covers nothing', async () => {
    const shops = [makeShop({ postageMinor: 400, freeFromMinor: 800 })];
    const order = await orderOf({ Slate: 20 }, marketOf([slate, oat], shops));
    // 600 + 400 postage, or 600 + 250 for a pot more and no postage.
    expect(order).toMatchObject({ totalMinor: 850, postageMinor: 0 });
    expect(order.lines[0]?.pots[0]).toMatchObject({ paint: 'Oat', coversMl: 0 });
  });

  it('keeps to a least order, and leaves a shop alone that can never reach its own', async () => {
    const cheap = makeOffer({
      shop: 'Mill',
      offer: 'Slate cheap',
      priceMinor: 100,
      pots: [offerPot('Slate')],
    });
    const mill = makeShop({ shop: 'Mill', leastOrderMinor: 500 });
    expect(bought(await orderOf({ Slate: 3 }, marketOf([slate, cheap], [mill])))).toEqual([
      '1 x Slate 17 (Quay)',
    ]);
    expect(bought(await orderOf({ Slate: 3 }, marketOf([cheap], [mill])))).toEqual([
      '5 x Slate cheap (Mill)',
    ]);
    const few = { ...cheap, available: 4 };
    expect(await orderOf({ Slate: 3 }, marketOf([few], [mill]))).toMatchObject({
      status: "can't be met",
      lines: [],
    });
  });

  it('breaks ties by shops, then pots, then names', async () => {
    const two = makeOffer({ offer: 'Slate 34', priceMinor: 600, pots: [offerPot('Slate', 34)] });
    expect(bought(await orderOf({ Slate: 30 }, marketOf([slate, two])))).toEqual(['1 x Slate 34 (Quay)']);
    const a = makeOffer({ shop: 'Ash', offer: 'Slate', priceMinor: 300, pots: [offerPot('Slate')] });
    const b = { ...a, shop: 'Beck' };
    expect(bought(await orderOf({ Slate: 5 }, marketOf([b, a])))).toEqual(['1 x Slate (Ash)']);
    const oatThere = { ...oat, shop: 'Beck' };
    expect(bought(await orderOf({ Slate: 5, Oat: 5 }, marketOf([a, b, oatThere])))).toEqual([
      '1 x Oat 17 (Beck)',
      '1 x Slate (Beck)',
    ]);
  });

  it('takes one shop for two even where its set holds many more pots', async () => {
    const there = { ...oat, shop: 'Mill', priceMinor: 300 };
    const set = makeOffer({
      shop: 'Mill',
      offer: 'set of twenty',
      priceMinor: 600,
      pots: [offerPot('Slate', 17, 10), offerPot('Oat', 17, 10)],
    });
    expect(bought(await orderOf({ Slate: 3, Oat: 3 }, marketOf([slate, there, set])))).toEqual([
      '1 x set of twenty (Mill)',
    ]);
  });

  it('says where time ran out before all orders at its cost were compared', async () => {
    const pair = makeOffer({ offer: 'pair', priceMinor: 600, pots: [offerPot('Slate', 17, 2)] });
    const needs = [{ paint: 'Slate', ml: 30 }];
    const market = marketOf([slate, pair]);
    const answered = async (answers: number) => {
      let asked = 0;
      const solve: typeof buying.solve = async (program, limits) =>
        ++asked > answers ? { state: 'none found', seconds: 0 } : solveProgram(program, limits);
      return (await chooseOrder(needs, market, { ...buying, solve })).tiesOpen;
    };
    // The order, then the fewest shops and pots, then the first names.
    expect(await Promise.all([1, 2, 3].map(answered))).toEqual([true, true, undefined]);
    const unsearched = { ...buying, solve: async () => ({ state: 'none found', seconds: 0 }) as const };
    expect(await chooseOrder(needs, market, unsearched)).not.toHaveProperty('tiesOpen');
  });

  it('fills up with the fewest pots where several offers cost the same', async () => {
    const few = makeOffer({ offer: 'b one', priceMinor: 700, pots: [offerPot('Moss')] });
    const many = makeOffer({ offer: 'a six', priceMinor: 700, pots: [offerPot('Moss', 17, 6)] });
    const shops = [makeShop({ leastOrderMinor: 1000 })];
    const order = await orderOf({ Slate: 3 }, marketOf([{ ...slate, available: 1 }, many, few], shops));
    expect(bought(order)).toEqual(['1 x Slate 17 (Quay)', '1 x b one (Quay)']);
  });

  it('never goes under a least order, not even with goods that cost nothing', async () => {
    const gift = makeOffer({ offer: 'gift', priceMinor: 0, pots: [offerPot('Slate')] });
    const shops = [makeShop({ postageMinor: 150, leastOrderMinor: 100 })];
    const order = await orderOf({ Slate: 6 }, marketOf([gift, oat], shops));
    expect(order).toMatchObject({ status: 'proved', totalMinor: 400 });
    expect(order.bills[0]).not.toHaveProperty('belowLeastOrderMinor');
  });

  it('takes a trace for nothing, and needs of tens of litres for what they are', async () => {
    expect(await orderOf({ Slate: 5e-9 }, marketOf([slate]))).toMatchObject({ lines: [], totalMinor: 0 });
    // 50,000 / 15.98 = 3128.9.
    expect(bought(await orderOf({ Slate: 50_000 }, marketOf([slate])))).toEqual(['3129 x Slate 17 (Quay)']);
  });

  it('that no search was made for is the first one, and says how far it may lie above the best', async () => {
    const unsearched = { ...buying, solve: async () => ({ state: 'none found', seconds: 0 }) as const };
    const order = await chooseOrder([{ paint: 'Slate', ml: 20 }], marketOf([slate]), unsearched);
    // 20 ml at 3.00 for 15.98 ml come to 3.755.
    expect(order).toMatchObject({
      status: 'not proved',
      totalMinor: 600,
      aboveBestMinor: 600 - 376,
      passedOver: [],
    });
  });

  it('has nothing to do without needs', async () => {
    expect(await orderOf({}, marketOf([slate]))).toMatchObject({
      status: 'nothing to buy',
      totalMinor: 0,
      lines: [],
      fromOneShop: [],
      passedOver: [],
    });
  });
});

describe('instances of which every order was tried by hand', () => {
  // Usable is 0.94 of a label, so needs are written as 0.94 of the instance's ml.
  it.each([
    [1, 275, ['1 x 12 ml']],
    [20, 550, ['2 x 12 ml']],
    [38, 900, ['2 x 12 ml', '1 x 17 ml']],
    [77, 1440, ['1 x 17 ml', '1 x 60 ml']],
    [120, 2180, ['2 x 60 ml']],
  ])('%i ml from pots of 12, 17 and 60 ml cost %i', async (ml, cost, lines) => {
    const pots = [
      [12, 275],
      [17, 350],
      [60, 1090],
    ].map(([sizeMl = 0, priceMinor = 0]) =>
      makeOffer({ offer: `${sizeMl} ml`, priceMinor, pots: [offerPot('Slate', sizeMl)] }),
    );
    const order = await orderOf({ Slate: ml * 0.94 }, marketOf(pots));
    expect(order).toMatchObject({ status: 'proved', totalMinor: cost });
    expect(bought(order)).toEqual(lines.map((line) => `${line} (Quay)`));
  });

  it('14 paints on which buying the largest set first fails: 2 sets, not 3', async () => {
    const sets: [string, number[]][] = [
      ['A', [1, 8]],
      ['B', [2, 3, 9, 10]],
      ['C', [4, 5, 6, 7, 11, 12, 13, 14]],
      ['R1', [1, 2, 3, 4, 5, 6, 7]],
      ['R2', [8, 9, 10, 11, 12, 13, 14]],
    ];
    const offers = sets.map(([offer, paints]) =>
      makeOffer({ offer, priceMinor: 1000, pots: paints.map((paint) => offerPot(`paint ${paint}`)) }),
    );
    const needs = Object.fromEntries(Array.from({ length: 14 }, (_, index) => [`paint ${index + 1}`, 1]));
    const order = await orderOf(needs, marketOf(offers));
    expect(order).toMatchObject({ status: 'proved', totalMinor: 2000 });
    expect(bought(order)).toEqual(['1 x R1 (Quay)', '1 x R2 (Quay)']);
  });
});

describe('why this order', () => {
  it('says what a tempting set would cost more, and what one shop alone would ask', async () => {
    const set = makeOffer({ offer: 'set', priceMinor: 700, pots: [offerPot('Slate'), offerPot('Oat')] });
    const there = makeOffer({
      shop: 'Mill',
      offer: 'Slate there',
      priceMinor: 290,
      pots: [offerPot('Slate')],
    });
    const order = await orderOf({ Slate: 3, Oat: 3 }, marketOf([slate, oat, set, there]));
    expect(order.totalMinor).toBe(540);
    expect(order.passedOver).toEqual([{ shop: 'Quay', offer: 'set', extraMinor: 160 }]);
    expect(order.fromOneShop).toEqual([{ shop: 'Quay', totalMinor: 550 }]);
  });
});

describe('a set with a least order of its own', () => {
  it('is weighed with what that order takes: 2100 against 550', async () => {
    const set = makeOffer({
      shop: 'Mill',
      offer: 'set',
      priceMinor: 700,
      pots: [offerPot('Slate'), offerPot('Oat')],
    });
    const shops = [makeShop({ shop: 'Mill', leastOrderMinor: 2000 })];
    const order = await orderOf({ Slate: 3, Oat: 3 }, marketOf([slate, oat, set], shops));
    expect(order).toMatchObject({ totalMinor: 550, passedOver: [{ offer: 'set', extraMinor: 2100 - 550 }] });
  });
});

describe('restocking the shelf', () => {
  const low = (paint: string, haveMl: number, needMl: number): PaintStock => ({
    paint,
    pots: [],
    needMl,
    haveMl,
    orderedMl: 0,
    leftAfterMl: Math.max(0, haveMl - needMl),
    toBuyMl: Math.max(0, needMl - haveMl),
    keepMl: 3,
    state: 'enough',
    runningLow: true,
    mark: 'yours',
  });

  const asLikely = () => 1;

  it('brings a low paint back to its level', async () => {
    const market = marketOf([slate]);
    const army = await orderOf({}, market);
    const order = await orderRestock(
      { stock: [low('Slate', 1, 0)], army, marginOf: asLikely },
      market,
      buying,
    );
    expect(bought(order)).toEqual(['1 x Slate 17 (Quay)']);
  });

  it('counts what the army order leaves over', async () => {
    const market = marketOf([slate]);
    const army = await orderOf({ Slate: 5 }, market);
    const order = await orderRestock(
      { stock: [low('Slate', 1, 6)], army, marginOf: asLikely },
      market,
      buying,
    );
    expect(order).toMatchObject({ status: 'nothing to buy', totalMinor: 0 });
  });

  // One pot of Slate leaves 15.98 - 10 = 5.98 ml of the likely 10, over its level of 3; of 14, which are provided for, 1.98.
  it('counts as needed what the chosen way to buy provides for, and no less than is likely', async () => {
    const market = marketOf([slate]);
    const army = await orderOf({ Slate: 14 }, market);
    const restock = (margin: number, haveMl = 0) =>
      orderRestock({ stock: [low('Slate', haveMl, 10)], army, marginOf: () => margin }, market, buying);
    expect(bought(await restock(1))).toEqual([]);
    expect((await restock(1.4)).lines[0]?.pots[0]?.coversMl).toBeCloseTo(3 - 1.98, 10);
    expect(await restock(0.1)).toEqual(await restock(1));
  });

  it('pays postage only beyond the army order, and not from an offer sold out to it', async () => {
    const market = marketOf([{ ...slate, available: 1 }, oat], [makeShop({ postageMinor: 450 })]);
    const army = await orderOf({ Slate: 15 }, market);
    const stock = [low('Slate', 0, 15), low('Oat', 0, 0)];
    const order = await orderRestock({ stock, army, marginOf: asLikely }, market, buying);
    expect(army).toMatchObject({ totalMinor: 750, postageMinor: 450 });
    expect(order).toMatchObject({ totalMinor: 250, postageMinor: 0, status: "can't be met" });
    expect(order.unmet).toEqual([{ paint: 'Slate', ml: expect.closeTo(3 - 0.98, 10) }]);
  });

  it('takes the postage back where only both together travel free', async () => {
    const market = marketOf([slate, oat], [makeShop({ postageMinor: 100, freeFromMinor: 550 })]);
    // One pot of Slate leaves 3.98 ml, over its level of 3; only Oat is still to come.
    const army = await orderOf({ Slate: 12 }, market);
    const order = await orderRestock(
      { stock: [low('Slate', 0, 12), low('Oat', 0, 0)], army, marginOf: asLikely },
      market,
      buying,
    );
    expect(army.totalMinor).toBe(400);
    expect(order).toMatchObject({ totalMinor: 150, postageMinor: -100 });
  });
});

describe('a need a hair above so many pots', () => {
  // 2 x 11.28 ml hold 22.56; 1.5e-6 ml more is no rounding, and takes a third pot of b, or what holds it.
  const pot = (paint: string, sizeMl: number) => ({ ...offerPot(paint), sizeMl });
  const offers = [
    makeOffer({ shop: 'Y', offer: 'a 17', priceMinor: 100, pots: [pot('a', 17)] }),
    makeOffer({ shop: 'Y', offer: 'set', priceMinor: 300, pots: [pot('a', 12), pot('b', 12)] }),
    makeOffer({ shop: 'X', offer: 'a 400', priceMinor: 300, pots: [pot('a', 400)], available: 2 }),
  ];
  const shops = [
    makeShop({ shop: 'Y', postageMinor: 0, freeFromMinor: 60_000, leastOrderMinor: 50_000 }),
    makeShop({ shop: 'X', postageMinor: 350, freeFromMinor: 300 }),
  ];
  const needs = [
    { paint: 'a', ml: 1128 },
    { paint: 'b', ml: 2 * 11.28 + 1.5e-6 },
  ];

  it.each([
    ['our own search', buying],
    ['the solver', { ...buying, solve: solveProgram }],
  ])('is ordered by %s, and is no reason for a dear first order', async (_, by) => {
    const order = await chooseOrder(needs, marketOf(offers, shops), by);
    // Three sets hold 33.84 ml of b, and both large pots 752 of a; pots of 17 fill up Y's least order of 500.
    expect(order).toMatchObject({ status: 'proved', aboveBestMinor: 0 });
    const held = order.lines.find(({ offer }) => offer === 'set')?.count;
    expect(held).toBeGreaterThanOrEqual(3);
  });
});
