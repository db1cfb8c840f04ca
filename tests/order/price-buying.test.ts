import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import type { Offer } from '../../src/model/sheets.js';
import { chooseOrder } from '../../src/order/choose-order.js';
import { prepareBuying } from '../../src/order/prepare-buying.js';
import { isOnOffer, openPrices } from '../../src/order/price-buying.js';
import { takeStock } from '../../src/stock/take-stock.js';
import { makeOffer, makePot, makeSheets, makeShop, offerPot } from '../make-sheets.js';

const market = (offers: readonly Offer[], shops = [makeShop()]) => ({
  offers,
  shops: new Map(shops.map((shop) => [shop.shop, shop])),
  assumptions: registry,
});
const single = (paint: string, priceMinor: number, sizeMl = 17, more: Partial<Offer> = {}): Offer =>
  makeOffer({ offer: `${paint} ${sizeMl}`, priceMinor, pots: [offerPot(paint, sizeMl)], ...more });
const set = makeOffer({ offer: 'set', priceMinor: 600, pots: [offerPot('Moss'), offerPot('Rust', 17, 2)] });

describe('on offer', () => {
  it('is what a shop sells by itself or in a set, as long as it lasts', () => {
    const canBuy = isOnOffer(market([single('Slate', 300), set, single('Chalk', 200, 17, { available: 0 })]));
    expect(['Slate', 'Moss', 'Rust', 'Chalk', 'Umber'].filter(canBuy)).toEqual(['Slate', 'Moss', 'Rust']);
  });

  it('is a paint that another offer still holds', () => {
    const canBuy = isOnOffer(market([single('Slate', 300, 17, { available: 0 }), single('Slate', 900, 60)]));
    expect(canBuy('Slate')).toBe(true);
  });

  it('is nothing where nobody sells', () => {
    expect(isOnOffer(market([]))('Slate')).toBe(false);
  });

  it('is nothing of a shop whose goods can not reach its least order', () => {
    const shops = [makeShop({ leastOrderMinor: 5000 })];
    const few = [single('Slate', 300, 17, { available: 2 })];
    expect(isOnOffer(market(few, shops))('Slate')).toBe(false);
    expect(isOnOffer(market([single('Slate', 300)], shops))('Slate')).toBe(true);
  });
});

describe('a ml more', () => {
  it('costs what the order pays for it; of another paint what the cheapest single offer asks', async () => {
    const offers = [
      single('Slate', 300),
      single('Slate', 800, 60),
      set,
      single('Chalk', 240),
      single('Chalk', 400, 17),
    ];
    const shelves = market(offers, [makeShop({ postageMinor: 500 })]);
    const needs = [
      { paint: 'Slate', ml: 10 },
      { paint: 'Moss', ml: 3 },
    ];
    const order = await chooseOrder(needs, shelves, prepareBuying({}));
    expect(order.lines.map(({ offer }) => offer).sort()).toEqual(['Slate 17', 'set']);
    const perMl = openPrices(order, shelves, []);
    // One pot of 15.98 usable ml at 3.00; postage is left out.
    expect(perMl('Slate')).toBeCloseTo(300 / 15.98, 9);
    expect(perMl('Chalk')).toBeCloseTo(240 / 15.98, 9);
    // A line's pots share its price: Moss and two of Rust add up to 6.00.
    expect(15.98 * (perMl('Moss') ?? 0) + 2 * 15.98 * (perMl('Rust') ?? 0)).toBeCloseTo(600, 6);
    expect(perMl('Umber')).toBeUndefined();
  });

  it('of a paint that comes in sets alone is unknown before one is bought', async () => {
    const order = await chooseOrder([], market([set]), prepareBuying({}));
    expect(openPrices(order, market([set]), [])('Moss')).toBeUndefined();
  });

  it('of a paint that nobody sells by itself costs what its newest pot with a price did; an offer comes before', async () => {
    const stock = takeStock(
      makeSheets({
        pots: [
          makePot({ paint: 'Moss', row: 2, priceMinor: 200, openedOn: '2024-05-01' }),
          makePot({ paint: 'Moss', row: 3, priceMinor: 340, openedOn: '2025-05-01' }),
          makePot({ paint: 'Slate', row: 4, priceMinor: 340 }),
          makePot({ paint: 'Rust', row: 5 }),
        ],
      }),
      new Map(),
      registry,
    );
    const shelves = market([set, single('Slate', 300)]);
    const order = await chooseOrder([], shelves, prepareBuying({}));
    const perMl = openPrices(order, shelves, stock);
    expect(['Moss', 'Slate', 'Rust'].map(perMl)).toEqual([
      expect.closeTo(340 / 15.98, 9),
      expect.closeTo(300 / 15.98, 9),
      undefined,
    ]);
  });

  it('counts every pot of an offer of several alike', async () => {
    const pair = makeOffer({ offer: 'pair', priceMinor: 500, pots: [offerPot('Slate', 17, 2)] });
    const order = await chooseOrder([], market([pair]), prepareBuying({}));
    expect(openPrices(order, market([pair]), [])('Slate')).toBeCloseTo(500 / 31.96, 9);
  });
});
