// The promise against every order there is, and what must hold of it.
import { describe, expect, it } from 'vitest';
import { usableShare } from '../../../src/assumptions/look-up.js';
import { registry } from '../../../src/assumptions/registry.js';
import type { Offer } from '../../../src/model/sheets.js';
import { placeOrder } from '../../../src/order/choose-order.js';
import { prepareBuying } from '../../../src/order/prepare-buying.js';
import { isManyPots } from '../../../src/order/promise/cut-search.js';
import { type FoundPromise, findPromise } from '../../../src/order/promise/find-promise.js';
import { openPromise } from '../../../src/order/promise/open-promise.js';
import { orderPromise } from '../../../src/order/promise/order-promise.js';
import { ofMany } from '../../../src/order/promise/search-about.js';
import { solveProgram } from '../../../src/order/solver/solve-program.js';
import { makeOffer, makeShop, offerPot } from '../../make-sheets.js';
import { makeDrawn } from '../../ranges/make-drawn.js';
import { drawFrom, drawMarket } from '../draw-market.mjs';
import { costOf, drawPromise, drawsKept, type PromiseCase, tryEveryPromise } from './draw-promise.js';

const buying = prepareBuying({});

const find = (one: PromiseCase, sure: number, by = buying): Promise<FoundPromise> =>
  findPromise(openPromise(one.drawn, { ...one, assumptions: registry }), sure, by);

/** How many of each offer a promise buys. */
function countsOf({ way }: FoundPromise, { offers }: PromiseCase): number[] {
  return offers.map((offer) => way?.counts[way.wares.findIndex((ware) => ware.offer === offer)] ?? 0);
}

/** An army over so many draws, each paint by a formula of the draw; one shop sells a pot of each paint in each of some sizes. */
function caseOf(
  lacks: Readonly<Record<string, readonly number[]>>,
  prices: readonly (readonly [sizeMl: number, priceMinor: number])[],
  postageMinor = 0,
): PromiseCase {
  const offers = Object.keys(lacks).flatMap((paint) =>
    prices.map(([sizeMl, priceMinor]) =>
      makeOffer({ offer: `${paint} ${sizeMl}`, priceMinor, pots: [offerPot(paint, sizeMl)] }),
    ),
  );
  return { drawn: makeDrawn(lacks), offers, shops: new Map([['Quay', makeShop({ postageMinor })]]) };
}

describe('a promise, by hand', () => {
  const usable = usableShare(registry, 'dropper');
  // Ten draws. Slate takes a second pot in the last two, Oat in the first three; two draws may fail.
  const pots = (counts: readonly number[]): number[] => counts.map((count) => count * 17 * usable - 0.5);
  const one = caseOf(
    { Slate: pots([1, 1, 1, 1, 1, 1, 1, 1, 2, 2]), Oat: pots([2, 2, 2, 1, 1, 1, 1, 1, 1, 1]) },
    [[17, 300]],
  );

  it('lets the two draws fail in which Slate takes more, and buys Oat twice', async () => {
    const found = await find(one, 0.8);
    expect(countsOf(found, one)).toEqual([1, 2]);
    expect(found).toMatchObject({ leastMinor: 900, way: { totalMinor: 900, failing: 2 } });
    expect([...found.needs.values()]).toEqual(
      [17 * usable - 0.5, 34 * usable - 0.5].map((ml) => expect.closeTo(ml, 9)),
    );
  });

  it('of five draws that may fail needs one pot of each', async () => {
    expect(await find(one, 0.5)).toMatchObject({ leastMinor: 600, way: { totalMinor: 600, failing: 5 } });
  });

  it('is ordered as it was found where its needs, placed anew, come dearer', async () => {
    const market = { ...one, assumptions: registry };
    const open = openPromise(one.drawn, market);
    // As a search without time may leave it: twice as many pots.
    const twice = (needs: ReadonlyMap<string, number>) =>
      placeOrder(
        [...needs].map(([paint, ml]) => ({ paint, ml: 2 * ml })),
        market,
        buying,
      );
    const order = await orderPromise(await find(one, 0.8), open, twice);
    expect(order).toMatchObject({ totalMinor: 900, status: 'proved', aboveBestMinor: 0 });
    expect(order.lines.map(({ offer, count }) => [offer, count])).toEqual([
      ['Oat 17', 2],
      ['Slate 17', 1],
    ]);
  });

  it('asks for no more than it takes, though a whole pot holds more', async () => {
    const small = caseOf({ Slate: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10], Oat: [1, 1, 1, 1, 1, 1, 1, 1, 1, 9] }, [
      [17, 300],
    ]);
    const found = await find(small, 0.8);
    expect(found.way).toMatchObject({ totalMinor: 600, failing: 0 });
    expect([...found.needs.values()]).toEqual([8, 1]);
  });
});

describe('against trying every order', () => {
  it.each([
    ['by our own search first', 1, 150, false, buying],
    ['by our own search first, paints in two kinds of container', 151, 300, true, buying],
    ['by the solver alone', 301, 360, false, { ...buying, solve: solveProgram }],
  ] as const)(
    '%s, cases %i to %i: the same cash where it is proved, and never under it',
    async (_, from, to, mixed, by) => {
      let [proved, reached] = [0, 0];
      for (let seed = from; seed <= to; seed++) {
        const one = drawPromise(seed, { mixed });
        const sure = [0.5, 0.7, 0.8, 0.9][seed % 4] ?? 0.5;
        const best = tryEveryPromise(one, sure, 10);
        const found = await find(one, sure, by);
        expect(found.way?.totalMinor === undefined, `${seed}: reached or not`).toBe(best === undefined);
        if (best === undefined || found.way === undefined) continue;
        reached++;
        const counts = countsOf(found, one);
        expect(drawsKept(one, counts), `${seed}: kept`).toBeGreaterThanOrEqual(Math.ceil(sure * 12 - 1e-9));
        expect(costOf(one, counts), `${seed}: counted anew`).toBe(found.way.totalMinor);
        expect(found.leastMinor, `${seed}: nothing is cheaper than the bound`).toBeLessThanOrEqual(best);
        expect(
          found.way.totalMinor,
          `${seed}: and the order is no cheaper than the best`,
        ).toBeGreaterThanOrEqual(best);
        if (found.way.totalMinor === found.leastMinor) proved++;
      }
      expect(reached).toBeGreaterThan((to - from) / 2);
      // Only where a paint comes in two kinds of container may a promise stay open.
      if (mixed) expect(proved / reached).toBeGreaterThan(0.8);
      else expect(proved).toBe(reached);
    },
  );
});

describe('what must hold of every proved promise', () => {
  const soon = { ...buying, limits: { seconds: 2 } };

  it('one more offer never costs more', async () => {
    for (let seed = 1; seed <= 60; seed++) {
      const one = drawPromise(seed);
      const { whole } = drawFrom(seed + 7000);
      const [paint] = one.drawn.paints;
      const more: Offer = makeOffer({
        shop: [...one.shops.keys()][0] ?? '',
        offer: 'one more',
        priceMinor: whole(1, 12) * 50,
        pots: [
          {
            ...offerPot(paint?.paint ?? '', whole(8, 40)),
            container: one.offers[0]?.pots[0]?.container ?? 'pot',
          },
        ],
      });
      const before = await find(one, 0.8, soon);
      const after = await find({ ...one, offers: [...one.offers, more] }, 0.8, soon);
      if (before.way === undefined || after.way === undefined) continue;
      const isProved =
        after.way.totalMinor === after.leastMinor && before.way.totalMinor === before.leastMinor;
      // A paint that nobody sold before was left out; now it is asked for too.
      const isNew = !one.offers.some(({ pots }) => pots.some((pot) => pot.paint === paint?.paint));
      if (isProved && !isNew)
        expect(after.way.totalMinor, `${seed}`).toBeLessThanOrEqual(before.way.totalMinor);
    }
  });

  it('surer never costs less', async () => {
    for (let seed = 1; seed <= 40; seed++) {
      const one = drawPromise(seed);
      let least = 0;
      for (const sure of [0.5, 0.6, 0.75, 0.9]) {
        const { way } = await find(one, sure, soon);
        if (way === undefined) break;
        expect(way.totalMinor, `${seed} at ${sure}`).toBeGreaterThanOrEqual(least);
        least = way.totalMinor;
      }
    }
  });
});

/** Stripes: in draw d the paint p lacks by the digit of d at place p, so paints are independent over all draws. */
const digits = (paints: number, each: number, lackOf: (digit: number) => number) =>
  Object.fromEntries(
    Array.from({ length: paints }, (_, paint) => [
      `paint ${paint}`,
      Array.from({ length: each ** paints }, (_, draw) => lackOf(Math.floor(draw / each ** paint) % each)),
    ]),
  );

describe('both ends, in closed form', () => {
  // The share of draws that so many pots of each paint serve is their product where paints are independent, the least of them
  // where all hang on one factor. Ten levels a paint, a pot more for each.
  const usable = usableShare(registry, 'dropper');
  const lackOf = (digit: number): number => 17 * usable * (digit + 1) - 0.5;

  /** Of three independent paints of ten levels each. */
  function fewestLevels(sure: number): number {
    let best = Number.POSITIVE_INFINITY;
    for (let a = 1; a <= 10; a++)
      for (let b = 1; b <= 10; b++)
        for (let c = 1; c <= 10; c++) if (a * b * c >= sure * 1000 - 1e-9) best = Math.min(best, a + b + c);
    return best;
  }

  it('independent paints: the product of the shares', async () => {
    const one = caseOf(digits(3, 10, lackOf), [[17, 100]]);
    for (const sure of [0.5, 0.729, 0.73, 0.9]) {
      const best = fewestLevels(sure);
      const found = await find(one, sure);
      expect(found).toMatchObject({ leastMinor: 100 * best, way: { totalMinor: 100 * best } });
    }
  });

  it('independent paints of hundreds of pots, of which not every step is looked at: never under the bound, and near it', async () => {
    // Twenty pots more for each level.
    const many = (digit: number): number => 20 * 17 * usable * (digit + 1) - 0.5;
    const one = caseOf(digits(3, 10, many), [[17, 100]]);
    for (const sure of [0.5, 0.729, 0.73, 0.9]) {
      const best = fewestLevels(sure);
      const { leastMinor, way } = await find(one, sure);
      expect(way?.totalMinor).toBe(2000 * best);
      expect(leastMinor).toBeLessThanOrEqual(2000 * best);
      expect(leastMinor).toBeGreaterThan(0.99 * 2000 * best);
    }
  });

  it.each([
    // In the first draw each lacks nothing, in the last so many pots: so many steps when one of the two may fail.
    [[32, 119], true],
    [[32, 118], false],
    [[33, 118], true],
    [[32, 32, 32, 32, 32], false],
    [[33, 32, 32, 32, 21], false],
    [[33, 32, 32, 32, 22], true],
  ])('paints of %j pots are many: %s', (pots, areMany) => {
    const lacks = Object.fromEntries(
      pots.map((count, at) => [`paint ${at}`, [0, 17 * usable * count - 0.5]]),
    );
    const one = caseOf(lacks, [[17, 100]]);
    const open = openPromise(one.drawn, { ...one, assumptions: registry });
    expect(isManyPots({ ...open, mayFail: 1 }, ofMany)).toBe(areMany);
  });

  it('one common factor: the least of the shares', async () => {
    const lack = Array.from({ length: 10 }, (_, digit) => lackOf(digit));
    const one = caseOf({ Slate: lack, Oat: lack, Rust: lack }, [[17, 100]]);
    for (const sure of [0.5, 0.75, 0.9]) {
      const cash = 3 * 100 * Math.ceil(sure * 10);
      expect(await find(one, sure)).toMatchObject({ leastMinor: cash, way: { totalMinor: cash } });
    }
  });
});

describe('where it can not be reached, or not be searched', () => {
  it('says so where the offers end, and asks for one quantile of all', async () => {
    const one = caseOf(
      { Slate: [5, 10, 15, 20, 25, 30, 35, 40, 45, 50], Oat: [1, 1, 1, 1, 1, 1, 1, 1, 1, 1] },
      [[17, 300]],
    );
    const few = { ...one, offers: one.offers.map((offer) => ({ ...offer, available: 1 })) };
    const { way, needs } = await find(few, 0.8);
    expect(way).toBeUndefined();
    expect(needs.get('Slate')).toBe(40);
  });

  it('leaves out a paint that nobody sells', async () => {
    const one = caseOf({ Slate: [5, 5, 5, 20], Oat: [9, 9, 9, 9] }, [[17, 300]]);
    const alone = { ...one, offers: one.offers.filter(({ offer }) => offer.startsWith('Slate')) };
    const { way, needs } = await find(alone, 0.75);
    expect(way).toMatchObject({ totalMinor: 300, failing: 1 });
    expect([...needs.keys()]).toEqual(['Slate']);
  });

  it('of an army that lacks nothing is kept for nothing', async () => {
    const found = await find(caseOf({ Slate: [-3, -2, -1] }, [[17, 300]]), 0.8);
    expect(found).toMatchObject({ leastMinor: 0, way: { totalMinor: 0, failing: 0 } });
  });

  it('without any time is kept all the same, and says how far above the best it may lie', async () => {
    const { share } = drawFrom(4);
    const lacks = digits(1, 200, () => 60 * share());
    const market = drawMarket(4, { paints: 6, offers: 12, shops: 2 });
    const drawn = makeDrawn(
      Object.fromEntries(
        market.needs.map(({ paint }) => [paint, (lacks['paint 0'] ?? []).map((ml) => ml * (0.5 + share()))]),
      ),
    );
    const one = { ...market, drawn };
    const none = { ...buying, solve: async () => ({ state: 'none found' as const, seconds: 0 }) };
    const [hasty, best] = [await find(one, 0.8, none), await find(one, 0.8)];
    expect(hasty.way?.failing).toBeLessThanOrEqual(40);
    expect(hasty.leastMinor).toBe(0);
    expect(best.leastMinor).toBe(best.way?.totalMinor);
    expect(hasty.way?.totalMinor).toBeGreaterThanOrEqual(best.leastMinor);
  });

  it('of thousands of pots goes by the draws, and is never under its bound', async () => {
    const { share } = drawFrom(9);
    const lack = (): number[] => Array.from({ length: 400 }, () => 20_000 * (1 + share()));
    const one = caseOf(
      { Slate: lack(), Oat: lack() },
      [
        [17, 300],
        [60, 1000],
        [23, 380],
      ],
      500,
    );
    const { way, leastMinor } = await find(one, 0.8);
    expect(way?.failing).toBeLessThanOrEqual(80);
    expect(leastMinor).toBeLessThanOrEqual(way?.totalMinor ?? 0);
    expect(leastMinor / (way?.totalMinor ?? 1)).toBeGreaterThan(0.95);
  });
});
