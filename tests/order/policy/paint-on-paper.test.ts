// Painting on paper, by hand, and against a plain loop that shares no code.
import { describe, expect, it } from 'vitest';
import { usableShare } from '../../../src/assumptions/look-up.js';
import { registry } from '../../../src/assumptions/registry.js';
import type { StagedWork } from '../../../src/model/draws.js';
import { listGoods } from '../../../src/order/policy/list-goods.js';
import { openWants } from '../../../src/order/policy/list-wants.js';
import { openRefill } from '../../../src/order/policy/open-refill.js';
import { paintOnPaper } from '../../../src/order/policy/paint-on-paper.js';
import { highOf, meanOf, sumUpPaper } from '../../../src/order/policy/sum-up-paper.js';
import type { Solve } from '../../../src/order/solver/integer-program.js';
import { searchAlone } from '../../../src/order/solver/search-first.js';
import { makeOffer, makeShop, offerPot } from '../../make-sheets.js';
import { makeLine } from '../../ranges/make-drawn.js';

const usable = usableShare(registry, 'dropper');
/** A pot of this label holds 10 ml to use. */
const tenMl = 10 / usable;
const limits = { seconds: 0.1 };

const columns = (stages: readonly (readonly number[])[]): Float64Array[] =>
  stages.map((one) => Float64Array.from(one));

/** Two paints over three units and two draws. */
const work: StagedWork = {
  drawing: { draws: 2, seed: 1 },
  units: ['first', 'second', 'third'],
  paints: [
    {
      paint: 'Slate',
      needMl: columns([
        [4, 6],
        [4, 6],
        [4, 18],
      ]),
      likelyMl: [4, 4, 4],
      haveMl: Float64Array.from([5, 5]),
    },
    {
      paint: 'Oat',
      needMl: columns([
        [0, 0],
        [1, 1],
        [1, 1],
      ]),
      likelyMl: [0, 1, 1],
      haveMl: Float64Array.from([0, 0]),
    },
  ],
  gainOf: () => undefined,
};
const market = {
  offers: [
    makeOffer({ offer: 'Slate', priceMinor: 300, pots: [offerPot('Slate', tenMl)] }),
    makeOffer({ offer: 'Oat', priceMinor: 200, pots: [offerPot('Oat', tenMl)] }),
  ],
  shops: new Map([['Quay', makeShop({ postageMinor: 100 })]]),
  assumptions: registry,
};

function openPaper(on = market, solve: Solve = searchAlone, painted = work) {
  const names = painted.paints.map(({ paint }) => paint);
  const goods = listGoods(names, on);
  return { work: painted, goods, refill: openRefill(goods, { solve, limits }) };
}

describe('by hand', () => {
  const wants = openWants(work, new Map());

  it('what is wanted: likely, at a quantile, and never less than the next two units take', () => {
    expect(wants.likely()).toEqual(
      columns([
        [12, 8, 4, 0],
        [2, 2, 1, 0],
      ]),
    );
    // Of two draws the quantile of a half is the second, as JCGM 101 ranks it: 30, 24, 18 ml of Slate.
    expect(wants.at(() => 0.5, false)[0]).toEqual(Float64Array.from([30, 24, 18, 0]));
    expect(wants.at(() => 0, false)[0]).toEqual(Float64Array.from([12, 8, 4, 0]));
    // The next two units take 12, 24, 18 ml in the second draw.
    expect(wants.at(() => 0, true)[0]).toEqual(Float64Array.from([12, 24, 18, 0]));
    expect([...wants.nextMissing()]).toEqual([
      ['Slate', 7],
      ['Oat', 1],
    ]);
  });

  it('by the likely needs: one order in the first draw, three in the second', async () => {
    const first = { lines: [], totalMinor: 0 };
    const [calm, hungry] = await paintOnPaper(openPaper(), { first, wants: wants.likely() });
    // Draw 1. The second unit wants 4 ml of 1 left: a quarter is done, so 8 - 1/4 x 4 = 7 ml are wanted, one pot; and 2 ml of Oat,
    // a pot too. 6.00 for both. At the end 10 + 1 - 8 = 3 ml of ten are left of Slate, 8 of Oat: 0.90 and 1.60.
    expect(calm).toEqual({
      ...{ cashMinor: 600, orders: 1, isLacking: false, next: { stage: 1, cashMinor: 600 } },
      leftOverMinor: expect.closeTo(0.3 * 300 + 0.8 * 200, 9),
    });
    // Draw 2. The first unit wants 6 ml of 5: five sixths are done, 12 - 5/6 x 4 = 8.67 ml are wanted, a pot, and 2 ml of Oat. The
    // second takes 6 of the 9 ml that are left. The third wants 18 ml of 3: a sixth is done, 4 - 4/6 = 3.33 ml, a pot; then 13 ml are
    // there, and 4 - 13/18 x 4 = 1.11 ml are wanted, another pot.
    expect(hungry).toEqual({
      ...{ cashMinor: 600 + 400 + 400, orders: 3, isLacking: false, next: { stage: 0, cashMinor: 600 } },
      leftOverMinor: expect.closeTo((5 / 30) * 900 + 0.8 * 200, 9),
    });
  });

  it('with a first order that is enough no other follows', async () => {
    const first = {
      lines: [makeLine(3, 300, { Slate: 10 }), makeLine(1, 200, { Oat: 10 }), makeLine(1, 50, { Chalk: 5 })],
      totalMinor: 1250,
    };
    const painted = await paintOnPaper(openPaper(), { first, wants: wants.at(() => 0.99, false) });
    expect(painted.map(({ orders, cashMinor }) => [orders, cashMinor])).toEqual([
      [0, 1250],
      [0, 1250],
    ]);
    // What the army does not need is left over whole. In the second draw 5 of 30 ml.
    expect(painted[1]?.leftOverMinor).toBeCloseTo((5 / 30) * 900 + 0.8 * 200 + 50, 9);
  });

  it('counts as gone what a shop has no more of, and says what is lacking', async () => {
    const few = { ...market, offers: market.offers.map((offer) => ({ ...offer, available: 1 })) };
    const [calm, hungry] = await paintOnPaper(openPaper(few), {
      first: { lines: [], totalMinor: 0 },
      wants: wants.likely(),
    });
    expect(calm).toMatchObject({ orders: 1, isLacking: false });
    expect(hungry).toMatchObject({ orders: 1, cashMinor: 600, isLacking: true });
  });

  it('never orders for what nobody sells', async () => {
    const none = { ...market, offers: [] };
    const painted = await paintOnPaper(openPaper(none), {
      first: { lines: [], totalMinor: 0 },
      wants: wants.likely(),
    });
    expect(painted).toEqual([
      { cashMinor: 0, orders: 0, leftOverMinor: 0, isLacking: true, next: undefined },
      { cashMinor: 0, orders: 0, leftOverMinor: 0, isLacking: true, next: undefined },
    ]);
  });

  it('a pot gives what the draw says', async () => {
    const half = { ...work, gainOf: () => Float64Array.from([0.5, 1]) };
    const [calm] = await paintOnPaper(openPaper(market, searchAlone, half), {
      first: { lines: [], totalMinor: 0 },
      wants: wants.likely(),
    });
    // Two pots of 5 ml, ordered one after the other: 1 + 5 ml last for the second unit, 2 ml are half of the third.
    expect(calm).toMatchObject({ orders: 2, cashMinor: 600 + 400 });
  });

  it('looks each order up once', async () => {
    let solved = 0;
    const counting: Solve = (...asked) => {
      solved++;
      return searchAlone(...asked);
    };
    const many = {
      ...work,
      drawing: { draws: 200, seed: 1 },
      paints: work.paints.map((one) => ({
        ...one,
        haveMl: new Float64Array(200).fill(one.haveMl[0] ?? 0),
        needMl: one.needMl.map((need) =>
          Float64Array.from({ length: 200 }, (_, draw) => (need[draw % 2] ?? 0) * (1 + draw / 1e4)),
        ),
      })),
    };
    const paper = openPaper(market, counting, many);
    const painted = await paintOnPaper(paper, { first: { lines: [], totalMinor: 0 }, wants: wants.likely() });
    expect(painted.reduce((sum, { orders }) => sum + orders, 0)).toBe(400);
    expect(solved).toBeLessThan(10);
  });
});

describe('an order on paper', () => {
  it('of a market with very many offers asks few shops, and still covers what is wanted', async () => {
    const paints = ['Slate', 'Oat', 'Rust'];
    const offers = Array.from({ length: 1500 }, (_, at) =>
      makeOffer({
        shop: `shop ${at % 30}`,
        offer: `offer ${at}`,
        priceMinor: 200 + ((at * 37) % 91),
        pots: [offerPot(paints[at % 3] ?? '', 10 + (at % 7))],
      }),
    );
    const goods = listGoods(paints, { offers, shops: new Map(), assumptions: registry });
    expect(new Set(goods.market.offers.map(({ shop }) => shop)).size).toBeLessThanOrEqual(8);
    expect(goods.market.offers.length).toBeLessThanOrEqual(3 * 8 * 6);
    const refill = openRefill(goods, { solve: searchAlone, limits });
    const left = goods.market.offers.map(() => Number.POSITIVE_INFINITY);
    const { pieces } = await refill([{ place: 1, ml: 25 }], left);
    expect(
      pieces.filter(({ place }) => place === 1).reduce((sum, { ml }) => sum + ml, 0),
    ).toBeGreaterThanOrEqual(25);
  });
});

describe('what painted draws say', () => {
  it('means and their errors: 1, 2, 3, 4 has a deviation of 1.291, and half of that as its error', () => {
    expect(meanOf(Float64Array.from([1, 2, 3, 4]))).toEqual({
      value: 2.5,
      error: expect.closeTo(Math.sqrt(5 / 3) / 2, 12),
    });
    expect(meanOf(new Float64Array())).toEqual({ value: 0, error: 0 });
    expect(meanOf(Float64Array.from([7]))).toEqual({ value: 7, error: 0 });
  });

  // Of evenly spread numbers the quantile of a share p has the error sqrt(p (1 - p) / n) over the density: 0.015 of 1 for 400.
  it('the high end and its error', () => {
    const even = Float64Array.from({ length: 400 }, (_, at) => (at + 0.5) / 400);
    expect(highOf(even).value).toBeCloseTo(0.9, 2);
    expect(highOf(even).error).toBeCloseTo(0.015, 3);
  });

  it('the next order: where it comes most often, and what it costs', () => {
    const one = { cashMinor: 100, orders: 1, leftOverMinor: 10, isLacking: false };
    const painted = [
      { ...one, next: { stage: 1, cashMinor: 300 } },
      { ...one, next: { stage: 1, cashMinor: 500 } },
      { ...one, next: { stage: 0, cashMinor: 400 } },
      { ...one, orders: 0, next: undefined },
    ];
    expect(sumUpPaper(painted, ['first', 'second']).next).toMatchObject({
      ...{ unit: 'second', chance: { chance: 0.75 }, chanceThere: { chance: 0.5 } },
      cashMinor: { value: 400 },
    });
    expect(sumUpPaper(painted, ['first', 'second'])).toMatchObject({
      ordersAfter: { value: 0.75 },
      atLeast: false,
    });
    expect(sumUpPaper(painted.slice(3), ['first', 'second']).next).toBeUndefined();
    expect(sumUpPaper([{ ...one, next: undefined, isLacking: true }], ['first']).atLeast).toBe(true);
  });
});
