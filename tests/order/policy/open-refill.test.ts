// Later orders on paper: as any order of what is left, whatever is remembered of those before.
import { describe, expect, it } from 'vitest';
import { usableShare } from '../../../src/assumptions/look-up.js';
import { registry } from '../../../src/assumptions/registry.js';
import { cheapestCounts } from '../../../src/order/choose-counts.js';
import { type Left, listGoods } from '../../../src/order/policy/list-goods.js';
import { openRefill } from '../../../src/order/policy/open-refill.js';
import type { Solve } from '../../../src/order/solver/integer-program.js';
import { searchAlone } from '../../../src/order/solver/search-first.js';
import { measureSupply, splitNeeds } from '../../../src/order/split-needs.js';
import { makeOffer, makeShop, offerPot } from '../../make-sheets.js';
import { drawFrom, drawMarket } from '../draw-market.mjs';

const limits = { seconds: 1 };
const usable = usableShare(registry, 'dropper');
/** A pot of this label holds so many ml to use. */
const pot = (paint: string, ml: number) => offerPot(paint, ml / usable);

describe('by hand', () => {
  const market = {
    offers: [
      makeOffer({ offer: 'Slate', priceMinor: 300, pots: [pot('Slate', 10)], available: 2 }),
      makeOffer({ offer: 'Slate, large', priceMinor: 900, pots: [pot('Slate', 20)] }),
      makeOffer({ offer: 'Oat', priceMinor: 200, pots: [pot('Oat', 10)] }),
    ],
    shops: new Map([['Quay', makeShop({ postageMinor: 100 })]]),
    assumptions: registry,
  };
  const goods = listGoods(['Slate', 'Oat'], market);
  const cashOf = async (refill: ReturnType<typeof openRefill>, ml: readonly number[], left: Left) => {
    const wanted = ml.map((one, place) => ({ place, ml: one })).filter((one) => one.ml > 0);
    return (await refill(wanted, left)).cashMinor;
  };

  it('15 ml of Slate are two small pots, as long as there are two; then one and a large one would cost 1200, so one large', async () => {
    const refill = openRefill(goods, { solve: searchAlone, limits });
    const endless = Number.POSITIVE_INFINITY;
    for (let again = 0; again < 2; again++) {
      expect(await cashOf(refill, [15, 0], [2, endless, endless])).toBe(2 * 300 + 100);
      expect(await cashOf(refill, [15, 0], [1, endless, endless])).toBe(900 + 100);
      expect(await cashOf(refill, [15, 5], [2, endless, endless])).toBe(2 * 300 + 200 + 100);
      expect(await cashOf(refill, [5, 0], [1, endless, endless])).toBe(300 + 100);
      expect(await cashOf(refill, [5, 0], [0, endless, endless])).toBe(900 + 100);
    }
  });

  it('once a search did not begin, none is asked for as many paints: each paint by itself', async () => {
    let asked = 0;
    const tired: Solve = async () => {
      asked++;
      return { state: 'none found', seconds: 0 };
    };
    const refill = openRefill(goods, { solve: tired, limits });
    expect(await cashOf(refill, [5, 5], [2, 9, 9])).toBe(300 + 200 + 100);
    expect(await cashOf(refill, [15, 15], [2, 9, 9])).toBe(2 * 300 + 2 * 200 + 100);
    expect(asked).toBe(1);
    // Of fewer paints one may begin.
    expect(await cashOf(refill, [15, 0], [2, 9, 9])).toBe(2 * 300 + 100);
    expect(asked).toBe(2);
  });
});

describe('in drawn markets', () => {
  it.each([1, 2, 3, 4])('an order costs what it does in a market of what is left alone: %i', async (seed) => {
    const { offers, shops, needs } = drawMarket(seed, { paints: 6, offers: 16, shops: 3, sets: 0.2 });
    const goods = listGoods(
      needs.map(({ paint }) => paint),
      { offers, shops, assumptions: registry },
    );
    const refill = openRefill(goods, { solve: searchAlone, limits });
    const { whole, chance } = drawFrom(seed);
    const seen: number[] = [];
    for (let order = 0; order < 60; order++) {
      // Of few amounts and few that are left, so that much is asked for again.
      const wanted = needs.flatMap((_, place) => (chance(0.4) ? [{ place, ml: 10 * whole(1, 2) }] : []));
      const left = offers.map((_, place) => (place % 4 === 0 ? whole(1, 2) : Number.POSITIVE_INFINITY));
      const { cashMinor, counts } = await refill(wanted, left);
      expect(counts.every(([place, count]) => count <= (left[place] ?? 0))).toBe(true);
      expect(cashMinor).toBe(await cashAlone(wanted, left, { offers, shops, needs }));
      seen.push(cashMinor);
    }
    expect(Math.max(...seen)).toBeGreaterThan(0);
  });

  /** Whole pots hold no less than is wanted, so the same ml, not rounded, are the same order. */
  async function cashAlone(
    wanted: readonly { readonly place: number; readonly ml: number }[],
    left: Left,
    { offers, shops, needs }: ReturnType<typeof drawMarket>,
  ): Promise<number> {
    const paints = wanted.map(({ place }) => needs[place]?.paint);
    const fillerOf = (name: string) =>
      offers.filter(({ shop }) => shop === name).sort((a, b) => a.priceMinor - b.priceMinor)[0];
    const own = offers.flatMap((offer, place) => {
      const isHolder = offer.pots.some(({ paint }) => paints.includes(paint));
      return isHolder || offer === fillerOf(offer.shop) ? [{ ...offer, available: left[place] ?? 0 }] : [];
    });
    const market = { offers: own, shops, assumptions: registry };
    const asked = wanted.map(({ place, ml }) => ({ paint: needs[place]?.paint ?? '', ml }));
    const { within } = splitNeeds(asked, measureSupply(market));
    const { totalMinor, aboveBestMinor } = await cheapestCounts(within, market, {
      solve: searchAlone,
      limits,
    });
    expect(aboveBestMinor).toBe(0);
    return totalMinor;
  }
});
