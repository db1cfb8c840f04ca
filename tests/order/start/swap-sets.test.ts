// Sets swapped for others, to begin a search with.
import { describe, expect, it } from 'vitest';
import { registry } from '../../../src/assumptions/registry.js';
import type { OrderNeed } from '../../../src/model/order.js';
import type { Offer, Shop } from '../../../src/model/sheets.js';
import { findFirstOrder, reachesLeastOrders } from '../../../src/order/first-order.js';
import { findHolders, heldMl, listWares } from '../../../src/order/list-wares.js';
import type { Market } from '../../../src/order/open-market.js';
import { measureSupply, splitNeeds } from '../../../src/order/split-needs.js';
import { swapSets } from '../../../src/order/start/swap-sets.js';
import { costOfCounts } from '../../../src/order/write-order.js';
import { makeOffer, makeShop, offerPot } from '../../make-sheets.js';
import { drawMarket } from '../draw-market.mjs';
import { tryEveryOrder } from '../try-every-order.js';

const marketOf = (offers: readonly Offer[], shops: readonly Shop[]): Market => ({
  offers,
  shops: new Map(shops.map((shop) => [shop.shop, shop])),
  assumptions: registry,
});

const needsOf = (...paints: string[]): OrderNeed[] => paints.map((paint) => ({ paint, ml: 10 }));

const set = (priceMinor: number, ...paints: string[]): Offer =>
  makeOffer({ offer: paints.join(' and '), priceMinor, pots: paints.map((paint) => offerPot(paint)) });

const pots = ['Oat', 'Rust', 'Moss', 'Slate'].map((paint) => set(300, paint));

interface Asked {
  readonly held?: Readonly<Record<string, number>>;
  readonly mostWork?: number;
}

/** From the known order, by offer, to the one that swapping finds. */
function swap(market: Market, needs: readonly OrderNeed[], from: object, { held, mostWork }: Asked = {}) {
  const wares = listWares(needs, market);
  const countsOf = (by: object) =>
    wares.map(({ offer }) => new Map(Object.entries(by)).get(offer.offer) ?? 0);
  const shelves = { wares, holders: findHolders(wares), held: countsOf(held ?? {}) };
  const known = countsOf(from);
  const { counts, work } = swapSets(needs, shelves, market, { known, mostWork: mostWork ?? 1e6 });
  const bought = wares.flatMap(({ offer }, place) => (counts[place] ? [[offer.offer, counts[place]]] : []));
  return { bought: Object.fromEntries(bought), totalMinor: costOfCounts(wares, counts, market), work };
}

describe('swapping sets', () => {
  const pairs = [
    set(490, 'Oat', 'Rust'),
    set(490, 'Moss', 'Slate'),
    set(450, 'Oat', 'Moss'),
    set(450, 'Rust', 'Slate'),
  ];
  const four = needsOf('Oat', 'Rust', 'Moss', 'Slate');
  const known = { 'Oat and Rust': 1, 'Moss and Slate': 1 };

  it('gets past orders that no single change makes cheaper', () => {
    // Two pairs of 4.90. Without one of them two pots of 3.00 are bought, 1.10 more; in exchange for one of 4.50 it takes a pot more,
    // 2.60 more. Both exchanged cost 9.00. A need costs 2.45, so that at first 1.715 more are allowed.
    const { bought, totalMinor } = swap(marketOf([...pots, ...pairs], [makeShop()]), four, known);
    expect(bought).toEqual({ 'Oat and Moss': 1, 'Rust and Slate': 1 });
    expect(totalMinor).toBe(900);
  });

  it('leaves the order as it is where there is no work to be done', () => {
    const market = marketOf([...pots, ...pairs], [makeShop()]);
    expect(swap(market, four, known, { mostWork: 0 })).toMatchObject({ bought: known, totalMinor: 980 });
  });

  it('keeps what must be held', () => {
    // With Oat and Rust held, Moss and Slate cost 4.90 at the least.
    const held = { 'Oat and Rust': 1 };
    expect(swap(marketOf([...pots, ...pairs], [makeShop()]), four, known, { held }).bought).toEqual(known);
    // With three pots of Oat held, 9.00, the rest costs 7.50: Rust and Slate, and a pot of Moss.
    const pot = { ...known, Oat: 3 };
    expect(
      swap(marketOf([...pots, ...pairs], [makeShop()]), four, pot, { held: { Oat: 3 } }).totalMinor,
    ).toBe(900 + 300 + 450);
  });

  it('counts postage and least orders', () => {
    // The Mill's pair saves 2.00 of the pots' 6.00 and asks 2.50 of postage: not worth it. From 4.00 on it comes free: worth it.
    const there = { ...set(400, 'Oat', 'Rust'), shop: 'Mill' };
    const needs = needsOf('Oat', 'Rust');
    const at = (mill: Partial<Shop>): number =>
      swap(
        marketOf(
          [...pots, there],
          [makeShop({ postageMinor: 0 }), makeShop({ shop: 'Mill', postageMinor: 250, ...mill })],
        ),
        needs,
        {
          Oat: 1,
          Rust: 1,
        },
      ).totalMinor;
    expect(at({})).toBe(600);
    expect(at({ freeFromMinor: 401 })).toBe(600);
    expect(at({ freeFromMinor: 400 })).toBe(400);
    // Under its least order nothing can be bought there.
    expect(at({ freeFromMinor: 400, leastOrderMinor: 400 })).toBe(400);
    expect(at({ freeFromMinor: 400, leastOrderMinor: 401 })).toBe(600);
  });

  it('buys no more than there is', () => {
    const one = { ...set(400, 'Oat', 'Rust'), available: 1 };
    const needs = needsOf('Oat', 'Rust').map((need) => ({ ...need, ml: 30 }));
    // Two pots of each are needed: two sets would cost 8.00, one set and two pots cost 10.00.
    const from = { Oat: 2, Rust: 2 };
    expect(swap(marketOf([...pots, one], [makeShop()]), needs, from).bought).toEqual({
      'Oat and Rust': 1,
      Oat: 1,
      Rust: 1,
    });
  });

  /**
   * Of 60 small markets, those in which no order holds more than three of an offer, so that all can be tried; and for how many
   * of them it finds the cheapest.
   */
  function countMet(termsOf: (shop: Shop) => Shop): { met: number; tried: number } {
    let [met, tried] = [0, 0];
    for (let seed = 1; seed <= 60; seed++) {
      const size = { paints: 4, offers: 6, shops: 2, sets: 0.6, sizesMl: [12, 17] };
      const { needs: asked, offers, shops: drawn } = drawMarket(seed, size);
      const shops = new Map([...drawn].map(([name, shop]) => [name, termsOf(shop)]));
      const market = { offers, shops, assumptions: registry };
      const needs = splitNeeds(asked, measureSupply(market)).within;
      const wares = listWares(needs, market);
      const holders = findHolders(wares);
      const shelves = { wares, holders, held: wares.map(() => 0) };
      const known = findFirstOrder(needs, shelves, market);
      const { counts } = swapSets(needs, shelves, market, { known, mostWork: 1e6 });
      for (const { paint, ml } of needs)
        expect(heldMl(holders, paint, (column) => counts[column] ?? 0)).toBeGreaterThan(ml - 1e-6);
      expect(reachesLeastOrders(wares, counts, market)).toBe(true);
      const needOf = new Map(needs.map(({ paint, ml }) => [paint, ml]));
      const best = tryEveryOrder(needOf, offers, shops, 3)?.costMinor ?? Number.POSITIVE_INFINITY;
      if (wares.some(({ most }) => most > 3)) continue;
      const found = costOfCounts(wares, counts, market);
      expect(found, `seed ${seed}`).toBeGreaterThanOrEqual(best);
      tried++;
      if (found === best) met++;
    }
    return { met, tried };
  }

  it('finds the cheapest of all orders in 57 of 60 markets whose shops charge for goods alone', () => {
    expect(countMet(({ shop }) => ({ shop, postageMinor: 0 }))).toEqual({ met: 57, tried: 60 });
  });

  it('and in all 12 of those that can be tried with postage, sums and least orders', () => {
    expect(countMet((shop) => shop)).toEqual({ met: 12, tried: 12 });
  });
});
