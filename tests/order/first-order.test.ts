// The order that a search begins with, and that stands where there was no time for any.
import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import type { OrderNeed } from '../../src/model/order.js';
import type { Offer, Shop } from '../../src/model/sheets.js';
import { type Buying, cheapestCounts } from '../../src/order/choose-counts.js';
import { prepareBuying } from '../../src/order/prepare-buying.js';
import { measureSupply, splitNeeds } from '../../src/order/split-needs.js';
import { makeOffer, makeShop, offerPot } from '../make-sheets.js';
import { drawMarket } from './draw-market.mjs';

/** No time at all: nothing is ever found. */
const noTime: Buying = { ...prepareBuying({}), solve: async () => ({ state: 'none found', seconds: 0 }) };

const marketOf = (offers: readonly Offer[], shops: readonly Shop[]) => ({
  offers,
  shops: new Map(shops.map((shop) => [shop.shop, shop])),
  assumptions: registry,
});

async function firstOrder(
  needs: readonly OrderNeed[],
  offers: readonly Offer[],
  shops: readonly Shop[] = [],
) {
  const { wares, counts, totalMinor } = await cheapestCounts(needs, marketOf(offers, shops), noTime);
  const bought = wares.flatMap(({ offer }, at) => (counts[at] ? [[offer.offer, counts[at]] as const] : []));
  return { bought: Object.fromEntries(bought), totalMinor };
}

describe('without time for a search', () => {
  const rust = makeOffer({ offer: 'rust', priceMinor: 300, pots: [offerPot('Rust')] });
  const pair = makeOffer({ offer: 'pair', priceMinor: 500, pots: [offerPot('Rust'), offerPot('Oat')] });
  const many = makeOffer({
    offer: 'many',
    priceMinor: 900,
    pots: [offerPot('Rust', 17, 2), offerPot('Oat')],
  });

  it('a paint that comes in sets alone is bought so, without the most of everything', async () => {
    // 20 ml of each take two pots of 15.98. Oat comes in pairs alone, and two of them hold enough Rust as well.
    const needs = ['Oat', 'Rust'].map((paint) => ({ paint, ml: 20 }));
    expect(await firstOrder(needs, [rust, pair, many])).toEqual({ bought: { pair: 2 }, totalMinor: 1000 });
  });

  it('a shop that the others do without is left, and a least order is reached', async () => {
    // The Mill alone has Oat. Its least order of 9.00 takes three pots; with those of Rust none from the Quay is needed.
    const mill = [
      makeOffer({ shop: 'Mill', offer: 'oat', priceMinor: 300, pots: [offerPot('Oat')] }),
      makeOffer({ shop: 'Mill', offer: 'mill rust', priceMinor: 350, pots: [offerPot('Rust')] }),
    ];
    const shops = [makeShop({ postageMinor: 400 }), makeShop({ shop: 'Mill', leastOrderMinor: 900 })];
    const needs = ['Oat', 'Rust'].map((paint) => ({ paint, ml: 10 }));
    expect(await firstOrder(needs, [rust, ...mill], shops)).toEqual({
      bought: { oat: 2, 'mill rust': 1 },
      totalMinor: 950,
    });
  });

  it.each([1, 2, 3, 4, 5, 6, 7, 8])(
    'of a market with many sets nothing can be left out, seed %i',
    async (seed) => {
      const { needs, offers, shops } = drawMarket(seed, { paints: 12, offers: 26, shops: 3, sets: 0.7 });
      const market = { offers, shops, assumptions: registry };
      const { within } = splitNeeds(needs, measureSupply(market));
      const { wares, counts, aboveBestMinor, totalMinor } = await cheapestCounts(within, market, noTime);
      expect(aboveBestMinor).toBeGreaterThan(0);
      expect(aboveBestMinor).toBeLessThan(totalMinor);
      const heldBy = (taken: readonly number[], paint: string): number =>
        wares.reduce((sum, { mlOf }, at) => sum + (mlOf.get(paint) ?? 0) * (taken[at] ?? 0), 0);
      const goodsOf = (taken: readonly number[], shop: string): number =>
        wares.reduce(
          (sum, { offer }, at) => sum + (offer.shop === shop ? offer.priceMinor * (taken[at] ?? 0) : 0),
          0,
        );
      const isOrder = (taken: readonly number[]): boolean =>
        within.every(({ paint, ml }) => heldBy(taken, paint) >= ml - 1e-6) &&
        [...shops.values()].every(({ shop, leastOrderMinor = 0 }) => {
          const goods = goodsOf(taken, shop);
          return goods === 0 || goods >= leastOrderMinor;
        });
      expect(isOrder(counts)).toBe(true);
      for (const [at, count] of counts.entries()) {
        const less = counts.map((other, place) => (place === at ? other - 1 : other));
        if (count > 0) expect(isOrder(less), wares[at]?.offer.offer).toBe(false);
      }
    },
  );
});
