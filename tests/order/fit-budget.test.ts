import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { demandMl } from '../../src/model/demand-ml.js';
import type { Offer, Shop } from '../../src/model/sheets.js';
import type { UnitDemand } from '../../src/model/work.js';
import { cashFor, type Fitting, fitBudget } from '../../src/order/fit-budget.js';
import { prepareBuying } from '../../src/order/prepare-buying.js';
import { makeOffer, makeShop, offerPot } from '../make-sheets.js';
import { drawFrom } from './draw-market.mjs';
import { tryEveryOrder } from './try-every-order.js';

const buying = prepareBuying({});
const slate = makeOffer({ offer: 'Slate 17', priceMinor: 300, pots: [offerPot('Slate')] });
const oat = makeOffer({ offer: 'Oat 17', priceMinor: 250, pots: [offerPot('Oat')] });

const demandOf = (
  unit: string,
  priority: number,
  figures: number,
  mls: Record<string, number>,
): UnitDemand => ({
  unit,
  priority,
  figures,
  batch: 5,
  perFigureMl: new Map(Object.entries(mls)),
  perSittingMl: new Map(Object.keys(mls).map((paint) => [paint, 0.5])),
});

const fittingOf = (
  demands: readonly UnitDemand[],
  budgetMinor: number,
  offers: readonly Offer[] = [slate, oat],
): Fitting => ({
  budgetMinor,
  demands,
  haveMl: new Map(),
  market: { offers, shops: new Map<string, Shop>(), assumptions: registry },
  buying,
});

describe('what a budget finishes, by hand', () => {
  // A figure takes 2 ml and each sitting of five 0.5 ml: one pot of 15.98 ml does seven (14 + 1), eight need 17.
  const watch = demandOf('watch', 1, 10, { Slate: 2 });
  const archers = demandOf('archers', 2, 10, { Oat: 2 });

  it.each([
    [0, [0, 0]],
    [250, [0, 7]],
    [300, [7, 0]],
    [599, [7, 7]],
    [600, [10, 0]],
    [850, [10, 7]],
    [1100, [10, 10]],
  ])('%i minor units: %j figures', async (budgetMinor, finished) => {
    expect(await fitBudget(fittingOf([watch, archers], budgetMinor))).toEqual({
      finished,
      proved: true,
      notTried: 0,
    });
  });

  it('cuts units of one priority so that the most figures come out', async () => {
    const small = demandOf('small', 1, 10, { Slate: 1 });
    const large = demandOf('large', 1, 10, { Slate: 4 });
    expect((await fitBudget(fittingOf([large, small], 300))).finished).toEqual([1, 10]);
  });

  it('finishes the first rows of one priority where any would do', async () => {
    const alike = ['first', 'second', 'third'].map((unit) => demandOf(unit, 1, 5, { Slate: 2 }));
    // Two pots, 31.96 ml: three sittings of five take 31.5. One, 15.98: five take 10.5, two more 4.5.
    expect((await fitBudget(fittingOf(alike, 600))).finished).toEqual(
      [5, 5, 5].map((n, at) => (at < 2 ? n : 5)),
    );
    expect((await fitBudget(fittingOf(alike, 300))).finished).toEqual([5, 2, 0]);
  });

  it('counts what is scarce by what is finished, not by the whole unit', async () => {
    // Two pots of Slate are all there is: ten figures take 21 ml, twenty would take 42.
    const few = [{ ...slate, available: 2 }, oat];
    const rank = demandOf('rank', 1, 20, { Slate: 2, Oat: 2 });
    expect((await fitBudget(fittingOf([rank], 550, few))).finished).toEqual([7]);
    expect((await fitBudget(fittingOf([rank], 1100, few))).finished).toEqual([15]);
  });

  it('is not stopped by a paint that no shop has', async () => {
    const odd = demandOf('odd', 1, 4, { Slate: 2, Moss: 1 });
    expect((await fitBudget(fittingOf([odd], 300))).finished).toEqual([4]);
  });
});

describe('against trying every number of figures', () => {
  /** All usable ml of a paint that can be bought from shops whose offers reach their least order. */
  function allOf(paint: string, { offers, shops }: Fitting['market']): number {
    const limitOf = ({ available = 1e9 }: Offer): number => available;
    const isOpen = (shop: string): boolean =>
      offers
        .filter((offer) => offer.shop === shop)
        .reduce((sum, offer) => sum + offer.priceMinor * limitOf(offer), 0) >=
      (shops.get(shop)?.leastOrderMinor ?? 0);
    return offers
      .filter(({ shop }) => isOpen(shop))
      .flatMap((offer) => offer.pots.map((pot) => ({ pot, limit: limitOf(offer) })))
      .filter(({ pot }) => pot.paint === paint)
      .reduce((sum, { pot, limit }) => sum + pot.sizeMl * 0.94 * pot.count * limit, 0);
  }

  /** Most figures of the first unit within the budget, then of the second. */
  function tryAll({ demands, market, budgetMinor }: Fitting): number[] {
    const finished: number[] = [];
    for (const [index, demand] of demands.entries()) {
      for (let figures = demand.figures; figures >= 0; figures--) {
        const needs = new Map<string, number>();
        for (const [at, other] of demands.entries()) {
          const count = at === index ? figures : (finished[at] ?? 0);
          for (const paint of count > 0 ? other.perFigureMl.keys() : []) {
            const ml = demandMl(other, paint, count);
            if (ml > 0) needs.set(paint, (needs.get(paint) ?? 0) + ml);
          }
        }
        for (const [paint, ml] of needs) needs.set(paint, Math.min(ml, allOf(paint, market)));
        const tried = tryEveryOrder(needs, market.offers, market.shops, 5);
        if (tried !== undefined && tried.costMinor <= budgetMinor) {
          finished[index] = figures;
          break;
        }
      }
    }
    return finished;
  }

  it('60 drawn cases of two units, four offers, postage and sums', async () => {
    for (let seed = 1; seed <= 60; seed++) {
      const { whole, chance } = drawFrom(seed);
      const offers = Array.from({ length: 4 }, (_, index) =>
        makeOffer({
          shop: chance(0.5) ? 'Quay' : 'Mill',
          offer: `offer ${index}`,
          priceMinor: whole(3, 12) * 50,
          pots:
            index === 3
              ? [offerPot('Slate', 12), offerPot('Oat', 12)]
              : [offerPot(index === 1 ? 'Oat' : 'Slate', whole(10, 20))],
          ...(chance(0.3) ? { available: whole(1, 3) } : {}),
        }),
      );
      const shops = new Map([
        ['Quay', makeShop({ postageMinor: whole(0, 4) * 50, freeFromMinor: whole(6, 20) * 50 })],
        [
          'Mill',
          makeShop({ shop: 'Mill', postageMinor: whole(0, 4) * 50, leastOrderMinor: whole(0, 8) * 50 }),
        ],
      ]);
      const demands = [
        demandOf('first', 1, whole(2, 9), { Slate: whole(1, 4) }),
        demandOf('second', 2, whole(2, 9), { Slate: whole(0, 2), Oat: whole(1, 4) }),
      ];
      const base = fittingOf(demands, whole(2, 30) * 50, offers);
      const fitting = { ...base, market: { ...base.market, shops } };
      const { finished, proved } = await fitBudget(fitting);
      expect(finished, `seed ${seed}`).toEqual(tryAll(fitting));
      expect(proved, `seed ${seed}`).toBe(true);
      expect(await cashFor(finished, fitting), `seed ${seed}`).toBeLessThanOrEqual(fitting.budgetMinor);
    }
  });
});
