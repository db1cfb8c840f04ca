import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import type { Order } from '../../src/model/order.js';
import type { Offer, Shop } from '../../src/model/sheets.js';
import { type Buying, cheapestCounts } from '../../src/order/choose-counts.js';
import { chooseOrder } from '../../src/order/choose-order.js';
import { listWares } from '../../src/order/list-wares.js';
import { prepareBuying } from '../../src/order/prepare-buying.js';
import { searchFirst } from '../../src/order/solver/search-first.js';
import { solveProgram } from '../../src/order/solver/solve-program.js';
import { makeOffer, makeShop, offerPot } from '../make-sheets.js';
import { drawFrom, drawMarket } from './draw-market.mjs';
import { tryEveryOrder } from './try-every-order.js';

const buying = prepareBuying({});
/** The solver for every program, however small. */
const bySolver: Buying = { ...buying, solve: solveProgram };
/** Our own search for every program: what it hands on has no answer. */
const bySearch: Buying = {
  ...buying,
  solve: searchFirst(async () => {
    throw new Error('handed on');
  }),
};

interface Case {
  readonly needs: ReadonlyMap<string, number>;
  readonly offers: readonly Offer[];
  readonly shops: ReadonlyMap<string, Shop>;
}

/** Up to four paints, six offers with sets among them, three shops with postage, sums and least orders. */
function drawCase(seed: number): Case {
  const { whole, chance } = drawFrom(seed);
  const paints = ['Slate', 'Oat', 'Rust', 'Moss'].slice(0, whole(1, 4));
  const names = ['Quay', 'Mill', 'Beck'].slice(0, whole(1, 3));
  const shops = names.map((shop) =>
    makeShop({
      shop,
      postageMinor: chance(0.7) ? whole(1, 8) * 50 : 0,
      ...(chance(0.5) ? { freeFromMinor: whole(4, 20) * 50 } : {}),
      ...(chance(0.3) ? { leastOrderMinor: whole(2, 12) * 50 } : {}),
    }),
  );
  const pick = <Value>(from: readonly Value[]): Value => from[whole(0, from.length - 1)] as Value;
  const offers = Array.from({ length: whole(2, 6) }, (_, index) => {
    const isSet = chance(0.35) && paints.length > 1;
    const sold = chance(0.15) ? ['not needed'] : paints;
    const held = isSet ? [pick(paints), pick(paints), pick(sold)].slice(0, whole(2, 3)) : [pick(sold)];
    return makeOffer({
      shop: pick(names),
      offer: `offer ${index}`,
      priceMinor: whole(2, 14) * 50 * (isSet ? held.length : 1),
      pots: held.map((paint) => offerPot(paint, pick([10, 12, 17]), chance(0.2) ? 2 : 1)),
      ...(chance(0.3) ? { available: whole(1, 3) } : {}),
    });
  });
  const needs = new Map(paints.map((paint) => [paint, whole(1, 28)]));
  return { needs, offers, shops: new Map(shops.map((shop) => [shop.shop, shop])) };
}

/** One or two paints in many offers of two sizes at a few prices, which dominate one another in all ways there are. */
function drawAlike(seed: number): Case {
  const { whole, chance } = drawFrom(seed);
  const paints = ['Slate', 'Oat'].slice(0, whole(1, 2));
  const names = ['Quay', 'Mill'].slice(0, whole(1, 2));
  const shops = names.map((shop) =>
    makeShop({
      shop,
      postageMinor: whole(0, 4) * 50,
      ...(chance(0.3) ? { freeFromMinor: whole(3, 12) * 50 } : {}),
      ...(chance(0.3) ? { leastOrderMinor: whole(2, 10) * 50 } : {}),
    }),
  );
  const offers = Array.from({ length: 7 }, (_, index) => {
    const held = paints[whole(0, paints.length - 1)] ?? '';
    const set = paints.map((paint) => offerPot(paint, 10 + 7 * whole(0, 1)));
    return makeOffer({
      shop: names[whole(0, names.length - 1)] ?? '',
      offer: `offer ${index}`,
      priceMinor: whole(3, 6) * 50,
      pots: chance(0.3) ? set : [offerPot(held, 10 + 7 * whole(0, 1), whole(1, 2))],
      ...(chance(0.5) ? { available: whole(1, 3) } : {}),
    });
  });
  const needs = new Map(paints.map((paint) => [paint, whole(5, 40)]));
  return { needs, offers, shops: new Map(shops.map((shop) => [shop.shop, shop])) };
}

const orderFor = ({ needs, offers, shops }: Case, by = buying): Promise<Order> =>
  chooseOrder(
    [...needs].map(([paint, ml]) => ({ paint, ml })),
    { offers, shops, assumptions: registry },
    by,
  );

/** Cases are met by our own search and by the solver; to try every order takes longer than either. */
const tried = new Map<number, ReturnType<typeof tryEveryOrder>>();

function bestOf(seed: number, { needs, offers, shops }: Case): ReturnType<typeof tryEveryOrder> {
  if (!tried.has(seed)) tried.set(seed, tryEveryOrder(needs, offers, shops, 6));
  return tried.get(seed);
}

const potsOf = (order: Order): number =>
  order.lines.flatMap(({ pots }) => pots).reduce((sum, { count }) => sum + count, 0);

describe('against trying every order', () => {
  // Three batches, so that a slow machine shows where it is.
  it.each([
    ['by our own search', 1, 1200, bySearch],
    ['by our own search', 1201, 2400, bySearch],
    ['by the solver', 1, 800, bySolver],
  ] as const)('%s, cases %i to %i cost the same, in as few shops and pots', async (_, from, to, by) => {
    let met = 0;
    for (let seed = from; seed <= to; seed++) {
      const one = drawCase(seed);
      const order = await orderFor(one, by);
      const best = bestOf(seed, one);
      if (order.status === "can't be met") {
        expect(best, `seed ${seed}`).toBeUndefined();
        continue;
      }
      met++;
      const found = { costMinor: order.totalMinor, shops: order.bills.length, pots: potsOf(order) };
      expect(found, `seed ${seed}`).toEqual(best);
      expect(order.status, `seed ${seed}`).toBe('proved');
    }
    expect(met).toBeGreaterThan(100);
  });
});

describe('against trying every order, where offers are alike', () => {
  it('cases 1 to 400 cost the same, in as few shops and pots; what is said without time is true', async () => {
    const noTime: Buying = { ...buying, solve: async () => ({ state: 'none found', seconds: 0 }) };
    let [met, dropped] = [0, 0];
    for (let seed = 1; seed <= 400; seed++) {
      const one = drawAlike(seed);
      const order = await orderFor(one, bySearch);
      if (order.status === "can't be met") continue;
      met++;
      const best = tryEveryOrder(one.needs, one.offers, one.shops, 6);
      const found = { costMinor: order.totalMinor, shops: order.bills.length, pots: potsOf(order) };
      expect(found, `seed ${seed}`).toEqual(best);
      const hasty = await orderFor(one, noTime);
      expect(hasty.totalMinor - hasty.aboveBestMinor, `seed ${seed}`).toBeLessThanOrEqual(order.totalMinor);
      expect(hasty.totalMinor, `seed ${seed}`).toBeGreaterThanOrEqual(order.totalMinor);
      const needs = [...one.needs].map(([paint, ml]) => ({ paint, ml }));
      const wares = listWares(needs, { ...one, assumptions: registry });
      dropped += one.offers.length - wares.length;
    }
    expect(met).toBeGreaterThan(300);
    expect(dropped).toBeGreaterThan(400);
  }, 240_000);
});

describe('against the solver', () => {
  // Of a size between those that can be tried in full and those that our own search hands on.
  it.each(Array.from({ length: 12 }, (_, index) => index + 1))(
    '20 paints, 32 offers, 3 shops, seed %i: the same cash, shops and pots',
    async (seed) => {
      const { needs, ...shelves } = drawMarket(seed, { paints: 20, offers: 32, shops: 3, sets: 0.2 });
      const market = { ...shelves, assumptions: registry };
      const [ours, theirs] = [
        await chooseOrder(needs, market, bySearch),
        await chooseOrder(needs, market, bySolver),
      ];
      expect(ours.status).toBe(theirs.status);
      expect(ours.totalMinor).toBe(theirs.totalMinor);
      expect(ours.bills).toEqual(theirs.bills);
      expect(ours.lines).toEqual(theirs.lines);
    },
  );
});

describe('against the solver, where branches become programs of their own', () => {
  it.each([1, 2, 3, 4, 5, 6])('24 paints, 72 offers, 4 shops, seed %i: the same cash', async (seed) => {
    const { needs, ...shelves } = drawMarket(seed, { paints: 24, offers: 72, shops: 4 });
    const market = { ...shelves, assumptions: registry };
    const ours = await cheapestCounts(needs, market, bySearch);
    const theirs = await cheapestCounts(needs, market, bySolver);
    expect([ours.aboveBestMinor, theirs.aboveBestMinor]).toEqual([0, 0]);
    expect(ours.totalMinor).toBe(theirs.totalMinor);
  });
});

describe('what must hold of every proved order', () => {
  const seeds = Array.from({ length: 80 }, (_, index) => 5000 + index);

  it('covers every need; its bills add up; rows in another order change nothing', async () => {
    for (const seed of seeds) {
      const one = drawCase(seed);
      const order = await orderFor(one);
      for (const [paint, ml] of one.needs) {
        const covered = order.lines.flatMap(({ pots }) => pots).filter((pot) => pot.paint === paint);
        const sum = covered.reduce((total, { coversMl }) => total + coversMl, 0);
        const unmet = order.unmet.find((need) => need.paint === paint)?.ml ?? 0;
        expect(sum + unmet, `seed ${seed} ${paint}`).toBeCloseTo(ml, 6);
      }
      const bills = order.bills.reduce((sum, bill) => sum + bill.goodsMinor + bill.postageMinor, 0);
      expect(bills, `seed ${seed}`).toBe(order.totalMinor);
      const turned = { ...one, offers: [...one.offers].reverse(), needs: new Map([...one.needs].reverse()) };
      const again = await orderFor(turned);
      expect(
        again.lines.map(({ offer, count }) => [offer, count]),
        `seed ${seed}`,
      ).toEqual(order.lines.map(({ offer, count }) => [offer, count]));
    }
  });

  it('one more offer or a lower price never costs more; a higher need never costs less', async () => {
    for (const seed of seeds) {
      const one = drawCase(seed);
      const order = await orderFor(one);
      if (order.status !== 'proved') continue;
      const extra = makeOffer({
        shop: 'Heath',
        offer: 'more',
        priceMinor: 150,
        pots: [offerPot('Slate', 12)],
      });
      const lower = one.offers.map((offer, index) =>
        index === 0 ? { ...offer, priceMinor: offer.priceMinor - 50 } : offer,
      );
      const needs = new Map([...one.needs].map(([paint, ml], index) => [paint, index === 0 ? ml + 6 : ml]));
      const withMore = await orderFor({ ...one, offers: [...one.offers, extra] });
      expect(withMore.totalMinor, `seed ${seed}: one more`).toBeLessThanOrEqual(order.totalMinor);
      const raised = await orderFor({ ...one, needs });
      if (raised.status === 'proved')
        expect(raised.totalMinor, `seed ${seed}: raised`).toBeGreaterThanOrEqual(order.totalMinor);
      // A lower price may drop the goods under a least order or free postage: only without those it must help.
      const plain = { ...one, shops: new Map<string, Shop>() };
      const [before, after] = [await orderFor(plain), await orderFor({ ...plain, offers: lower })];
      expect(after.totalMinor, `seed ${seed}: lower`).toBeLessThanOrEqual(before.totalMinor);
    }
  });
});
