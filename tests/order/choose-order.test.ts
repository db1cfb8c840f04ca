import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import type { PaintStock } from '../../src/model/plan.js';
import { chooseByPaint, type Market } from '../../src/order/choose-order.js';
import { orderRestock } from '../../src/order/order-restock.js';
import { makeOffer, makeShop, offerPot } from '../make-sheets.js';

const marketOf = (offers: Market['offers'], shops: ReturnType<typeof makeShop>[] = []): Market => ({
  offers,
  shops: new Map(shops.map((shop) => [shop.shop, shop])),
  assumptions: registry,
});
const slate = makeOffer({ offer: 'Slate 17', priceMinor: 300, pots: [offerPot('Slate')] });

describe('an order by paint', () => {
  it('buys whole pots of the usable volume: 20 ml of 17 ml pots at 16.32 are two', () => {
    const order = chooseByPaint([{ paint: 'Slate', ml: 20 }], marketOf([slate]));
    expect(order.lines).toMatchObject([{ offer: 'Slate 17', count: 2, costMinor: 600 }]);
    expect(order.lines[0]?.pots).toMatchObject([{ count: 2, usableMl: expect.closeTo(16.32, 10) }]);
    expect(order).toMatchObject({ totalMinor: 600, postageMinor: 0, unmet: [], status: 'by paint' });
  });

  it('names what no offer covers, and buys what there is', () => {
    const few = { ...slate, available: 1 };
    const order = chooseByPaint(
      [
        { paint: 'Slate', ml: 20 },
        { paint: 'Oat', ml: 3 },
      ],
      marketOf([few]),
    );
    expect(order.lines).toMatchObject([{ count: 1 }]);
    expect(order.unmet).toEqual([
      { paint: 'Slate', ml: expect.closeTo(3.68, 10) },
      { paint: 'Oat', ml: 3 },
    ]);
  });

  it('takes a pack of several pots of one paint, and leaves sets of several paints alone', () => {
    const three = makeOffer({ offer: 'three', priceMinor: 750, pots: [offerPot('Slate', 17, 3)] });
    const set = makeOffer({ offer: 'set', priceMinor: 10, pots: [offerPot('Slate'), offerPot('Oat')] });
    const order = chooseByPaint([{ paint: 'Slate', ml: 40 }], marketOf([slate, three, set]));
    expect(order.lines).toMatchObject([{ offer: 'three', count: 1, pots: [{ count: 3 }] }]);
  });

  it('adds postage a shop, free from a sum, and says when a least order is missed', () => {
    const oat = makeOffer({ shop: 'Mill', offer: 'Oat 17', priceMinor: 250, pots: [offerPot('Oat')] });
    const shops = [
      makeShop({ postageMinor: 450, freeFromMinor: 600 }),
      makeShop({ shop: 'Mill', postageMinor: 390, leastOrderMinor: 1000 }),
    ];
    const needs = [
      { paint: 'Slate', ml: 20 },
      { paint: 'Oat', ml: 2 },
    ];
    const order = chooseByPaint(needs, marketOf([slate, oat], shops));
    expect(order.bills).toEqual([
      { shop: 'Quay', goodsMinor: 600, postageMinor: 0 },
      { shop: 'Mill', goodsMinor: 250, postageMinor: 390, belowLeastOrderMinor: 1000 },
    ]);
    expect(order.totalMinor).toBe(600 + 250 + 390);
  });

  it('has nothing to do without needs', () => {
    expect(chooseByPaint([], marketOf([slate]))).toMatchObject({
      status: 'nothing to buy',
      totalMinor: 0,
      lines: [],
    });
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
    toBuyMl: 0,
    keepMl: 3,
    state: 'enough',
    runningLow: true,
    mark: 'yours',
  });
  const none = chooseByPaint([], marketOf([]));

  it('brings a low paint back to its level', () => {
    const order = orderRestock(
      { stock: [low('Slate', 1, 0)], army: none, choose: chooseByPaint },
      marketOf([slate]),
    );
    expect(order.lines).toMatchObject([{ offer: 'Slate 17', count: 1 }]);
  });

  it('counts what the army order leaves over', () => {
    const market = marketOf([slate]);
    const army = chooseByPaint([{ paint: 'Slate', ml: 5 }], market);
    const order = orderRestock({ stock: [low('Slate', 1, 6)], army, choose: chooseByPaint }, market);
    expect(order).toMatchObject({ status: 'nothing to buy', totalMinor: 0 });
  });

  it('pays postage only beyond the army order, and not from an offer sold out to it', () => {
    const few = { ...slate, available: 1 };
    const oat = makeOffer({ offer: 'Oat 17', priceMinor: 250, pots: [offerPot('Oat')] });
    const market = marketOf([few, oat], [makeShop({ postageMinor: 450 })]);
    const army = chooseByPaint([{ paint: 'Slate', ml: 15 }], market);
    const stock = [low('Slate', 0, 15), low('Oat', 0, 0)];
    const order = orderRestock({ stock, army, choose: chooseByPaint }, market);
    expect(army).toMatchObject({ totalMinor: 750, postageMinor: 450 });
    expect(order).toMatchObject({ totalMinor: 250, postageMinor: 0 });
    expect(order.unmet).toEqual([{ paint: 'Slate', ml: expect.closeTo(3 - 1.32, 10) }]);
  });
});
