import { describe, expect, it } from 'vitest';
import { registry } from '../../../src/assumptions/registry.js';
import type { Frontier } from '../../../src/model/frontier.js';
import type { Offer, Shop } from '../../../src/model/sheets.js';
import { chooseOrder } from '../../../src/order/choose-order.js';
import { drawFrontier } from '../../../src/order/frontier/draw-frontier.js';
import type { Market } from '../../../src/order/open-market.js';
import { prepareBuying } from '../../../src/order/prepare-buying.js';
import { makeOffer, makeShop, offerPot } from '../../make-sheets.js';
import { drawMarket } from '../draw-market.mjs';

const buying = prepareBuying({});

interface Case {
  readonly needs: Record<string, number>;
  readonly have?: Record<string, number>;
  /** By paint, who may stand in and how far off. */
  readonly near?: Record<string, Record<string, number>>;
  readonly offers?: readonly Offer[];
  readonly shops?: readonly Shop[];
}

const marketOf = ({ offers = [], shops = [] }: Pick<Case, 'offers' | 'shops'>): Market => ({
  offers,
  shops: new Map(shops.map((shop) => [shop.shop, shop])),
  assumptions: registry,
});

function draw({ needs, have = {}, near = {}, ...market }: Case): Promise<Frontier> {
  return drawFrontier({
    needs: Object.entries(needs).map(([paint, ml]) => ({ paint, ml })),
    haveMl: new Map(Object.entries(have)),
    candidates: new Map(
      Object.entries(near).map(([paint, others]) => [
        paint,
        Object.entries(others).map(([by, dE00]) => ({ by, dE00 })),
      ]),
    ),
    market: marketOf(market),
    buying,
  });
}

/** The point of a difference. */
const within = (points: Frontier['points'], dE00: number) => points.find((one) => one.dE00 === dE00);

const pot = (paint: string, priceMinor: number, sizeMl = 17): Offer =>
  makeOffer({ offer: `${paint} ${sizeMl}`, priceMinor, pots: [offerPot(paint, sizeMl)] });

describe('cash against colour', () => {
  it('by hand: Rust comes off the shelf, then Slate and Fog share a pot, and postage falls away with the last', async () => {
    // Postage 2.00. Alone: Slate 3.00, Fog 2.50, Rust 2.80 and 2.00 = 10.30. Within 2 the shelf's Brick, 6 ml, serves the 5 ml of
    // Rust: 7.50. Within 5 Slate (7 ml) and Fog (8 ml) share 15.98 ml of one pot, Fog's at 2.50: 4.50. Within 10
    // the shelf's Coal, 20 ml, serves both: nothing is bought. Coal also lies within 9 of Rust, which changes nothing.
    const { points } = await draw({
      needs: { Slate: 7, Fog: 8, Rust: 5 },
      have: { Brick: 6, Coal: 20 },
      near: {
        Slate: { Fog: 3.4, Coal: 6.2 },
        Fog: { Slate: 3.4, Coal: 6.8 },
        Rust: { Brick: 1.7, Coal: 9 },
      },
      offers: [pot('Slate', 300), pot('Fog', 250), pot('Rust', 280)],
      shops: [makeShop({ postageMinor: 200 })],
    });
    expect(points.map(({ dE00, cashMinor }) => [dE00, cashMinor])).toEqual([
      [0, 1030],
      [2, 750],
      [5, 450],
      [10, 0],
    ]);
    expect(points.every(({ status }) => status === 'proved')).toBe(true);
    const brick = { paint: 'Rust', by: 'Brick', dE00: 1.7 };
    const coal = [{ paint: 'Slate', by: 'Coal', dE00: 6.2 }, { paint: 'Fog', by: 'Coal', dE00: 6.8 }, brick];
    expect(points.map(({ swaps }) => swaps)).toEqual([
      [],
      [brick],
      [{ paint: 'Slate', by: 'Fog', dE00: 3.4 }, brick],
      coal,
    ]);
  });

  it('a need is served by one paint whole: two halves on the shelf do not add up', async () => {
    const { points } = await draw({
      needs: { Slate: 10 },
      have: { Slate: 6, Fog: 6 },
      near: { Slate: { Fog: 1 } },
      offers: [pot('Slate', 300)],
    });
    expect(within(points, 10)).toMatchObject({ cashMinor: 300, swaps: [], status: 'proved' });
  });

  it('a paint serves as many as its supply lasts for: of two needs one is left to buy', async () => {
    const { points } = await draw({
      needs: { Slate: 6, Fog: 6 },
      have: { Coal: 10 },
      near: { Slate: { Coal: 2 }, Fog: { Coal: 3 } },
      offers: [pot('Slate', 300), pot('Fog', 250)],
    });
    expect(points.map(({ cashMinor }) => cashMinor)).toEqual([550, 250, 250, 250]);
    expect(within(points, 10)?.swaps).toEqual([{ paint: 'Slate', by: 'Coal', dE00: 2 }]);
  });

  it('of equal cash the nearest swap, and none where none is needed', async () => {
    const { points } = await draw({
      needs: { Slate: 5, Oat: 2 },
      have: { Coal: 9, Fog: 9, Oat: 3 },
      near: { Slate: { Coal: 0.9, Fog: 0.4 }, Oat: { Fog: 0 } },
      offers: [pot('Slate', 300)],
    });
    expect(within(points, 2)).toMatchObject({
      cashMinor: 0,
      swaps: [{ paint: 'Slate', by: 'Fog', dE00: 0.4 }],
    });
    expect(points[0]).toMatchObject({ cashMinor: 300, swaps: [] });
  });

  it('two paints of one colour are one at no difference at all', async () => {
    const { points } = await draw({
      needs: { Slate: 5 },
      have: { 'Old slate': 9 },
      near: { Slate: { 'Old slate': 0 } },
      offers: [pot('Slate', 300)],
    });
    expect(points[0]).toMatchObject({ cashMinor: 0, swaps: [{ by: 'Old slate', dE00: 0 }] });
  });

  it('nothing needed, nothing bought', async () => {
    const { points, fewestPots } = await draw({ needs: {}, offers: [pot('Slate', 300)] });
    expect(points).toHaveLength(4);
    expect(within(points, 10)).toMatchObject({
      cashMinor: 0,
      status: 'proved',
      swaps: [],
      unmet: [],
      pots: 0,
    });
    expect(fewestPots).toMatchObject({ pots: 0, abovePots: 0, cashMinor: 0 });
  });
});

describe("what can't be met", () => {
  it('is said, and the rest is served; more difference meets it, which may cost more', async () => {
    const { points } = await draw({
      needs: { Slate: 5, Rust: 4 },
      near: { Rust: { Brick: 5 } },
      offers: [pot('Slate', 300), pot('Brick', 200)],
    });
    expect(within(points, 2)).toMatchObject({
      status: "can't be met",
      cashMinor: 300,
      aboveBestMinor: 0,
      unmet: [{ paint: 'Rust', ml: 4 }],
    });
    expect(within(points, 5)).toMatchObject({ status: 'proved', cashMinor: 500, unmet: [] });
  });

  it('is as little as can be where two needs want one shelf', async () => {
    // Coal, 9 ml, can serve Slate's 8 or Rust's 3 and Fog's 5: one way leaves 8 unmet, the other as well; all three at it 7.
    const { points } = await draw({
      needs: { Slate: 8, Rust: 3, Fog: 5 },
      have: { Coal: 9 },
      near: { Slate: { Coal: 1 }, Rust: { Coal: 1 }, Fog: { Coal: 1 } },
    });
    expect(points[0]?.unmet).toHaveLength(3);
    expect(within(points, 2)?.unmet.reduce((sum, { ml }) => sum + ml, 0)).toBeCloseTo(7, 6);
    expect(within(points, 2)).toMatchObject({ status: "can't be met", cashMinor: 0 });
  });
});

describe('the fewest pots', () => {
  it('one large pot for all, though two small ones cost less', async () => {
    const { points, fewestPots } = await draw({
      needs: { Slate: 10, Fog: 10, Coal: 10 },
      near: { Slate: { Fog: 4, Coal: 4 }, Fog: { Slate: 4, Coal: 4 }, Coal: { Slate: 4, Fog: 4 } },
      offers: [pot('Slate', 200), pot('Fog', 200), pot('Coal', 200), pot('Coal', 900, 60)],
    });
    expect(within(points, 10)).toMatchObject({ cashMinor: 400, pots: 2 });
    expect(fewestPots).toMatchObject({ pots: 1, abovePots: 0, cashMinor: 900, status: 'proved', dE00: 10 });
    expect(fewestPots.swaps).toEqual([
      { paint: 'Slate', by: 'Coal', dE00: 4 },
      { paint: 'Fog', by: 'Coal', dE00: 4 },
    ]);
  });
});

describe('at no difference', () => {
  it.each([1, 2, 3])('40 paints, 60 offers, 3 shops, seed %i: the cash of the plain order', async (seed) => {
    const { needs, ...shelves } = drawMarket(seed, { paints: 40, offers: 60, shops: 3 });
    const market = { ...shelves, assumptions: registry };
    const haveMl = new Map(needs.filter((_, index) => index % 3 === 0).map(({ paint }) => [paint, 4]));
    const net = needs.flatMap(({ paint, ml }) => {
      const missing = ml - (haveMl.get(paint) ?? 0);
      return missing > 1e-6 ? [{ paint, ml: missing }] : [];
    });
    const patient = prepareBuying({ seconds: 6000 });
    const order = await chooseOrder(net, market, patient);
    const { points } = await drawFrontier({
      needs,
      haveMl,
      market,
      candidates: new Map(),
      buying: patient,
    });
    expect(order.status).toBe('proved');
    expect(points[0]).toMatchObject({ cashMinor: order.totalMinor, status: 'proved' });
    expect(within(points, 10)).toMatchObject({ cashMinor: order.totalMinor, swaps: [] });
  });
});

describe('a search that is cut short', () => {
  it('says so, and never costs more for more difference', async () => {
    const { needs: all, ...shelves } = drawMarket(7, { paints: 60, offers: 90, shops: 4 });
    const market = { ...shelves, assumptions: registry };
    const candidates = new Map(
      all.map(({ paint }, index) => [
        paint,
        [1, 2, 3, 5].map((step) => ({
          by: all[(index + step) % all.length]?.paint ?? '',
          dE00: 2 * step - 0.5,
        })),
      ]),
    );
    const hasty = { ...buying, limits: { seconds: 1 } };
    const needs = all.slice(0, 20);
    const { points, fewestPots } = await drawFrontier({
      ...{ needs, haveMl: new Map(), market, candidates, buying: hasty },
    });
    const least = within(points, 10);
    // The fewest pots cost no less than the least cash.
    expect(fewestPots.cashMinor - fewestPots.aboveBestMinor).toBeGreaterThanOrEqual(
      (least?.cashMinor ?? 0) - (least?.aboveBestMinor ?? 0),
    );
    expect(points.some(({ status }) => status === 'not proved')).toBe(true);
    for (const [index, point] of points.entries()) {
      expect(point.cashMinor).toBeLessThanOrEqual(points[index - 1]?.cashMinor ?? Number.POSITIVE_INFINITY);
      expect(point.status === 'not proved').toBe(point.aboveBestMinor > 0);
      expect(point.aboveBestMinor).toBeLessThanOrEqual(point.cashMinor);
    }
    const patient = await drawFrontier({
      ...{ needs, haveMl: new Map(), market, candidates },
      buying: { ...buying, limits: { seconds: 20_000 } },
    });
    for (const [index, { cashMinor, status }] of patient.points.entries()) {
      const point = points[index];
      expect(status).toBe('proved');
      // The bound that stood beside the hasty point holds.
      expect((point?.cashMinor ?? 0) - (point?.aboveBestMinor ?? 0)).toBeLessThanOrEqual(cashMinor);
      expect(point?.cashMinor).toBeGreaterThanOrEqual(cashMinor);
    }
  });
});

describe('among very many paints', () => {
  it('differences that bring in too many are left out and named; the fewest pots are of the last one drawn', async () => {
    // 250 needs, each of which 200 other paints may serve from a difference of 4 on, each offered once: 50,000 pairs and more.
    const names = Array.from({ length: 250 }, (_, at) => `Hue ${at}`);
    const near = names.map((paint, at) => {
      const others = Array.from({ length: 200 }, (_, step) => names[(at + step + 1) % names.length] ?? '');
      return [paint, Object.fromEntries(others.map((by) => [by, 4]))] as const;
    });
    const { points, notDrawn, fewestPots } = await draw({
      needs: Object.fromEntries(names.map((paint) => [paint, 1])),
      near: Object.fromEntries(near),
      offers: names.map((paint) => pot(paint, 300)),
    });
    expect(points.map(({ dE00, status }) => [dE00, status])).toEqual([0, 2].map((dE00) => [dE00, 'proved']));
    expect(notDrawn).toEqual([5, 10]);
    expect(fewestPots).toMatchObject({ dE00: 2, pots: 250, cashMinor: 75_000 });
  });
});
