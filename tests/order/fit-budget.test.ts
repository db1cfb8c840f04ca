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
    [499, [7, 0]],
    // All archers, two pots of Oat, come before some of the watch, though that comes first.
    [500, [0, 10]],
    [599, [0, 10]],
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

  // 15.98 ml are fourteen of the rank (14 + 3 x 0.5), or the crew whole (15 + 0.5).
  it('finishes units whole before it cuts one short, though fewer figures come out', async () => {
    const crew = demandOf('crew', 1, 5, { Slate: 3 });
    const rank = demandOf('rank', 1, 20, { Slate: 1 });
    expect((await fitBudget(fittingOf([rank, crew], 300))).finished).toEqual([0, 5]);
    expect((await fitBudget(fittingOf([rank], 300))).finished).toEqual([14]);
  });

  // 31.96 ml: ten at 3 ml (31) or ten at 2 (21), to which three at 3 ml come (9.5).
  it('of whole units as large finishes those that leave the most for others', async () => {
    const [dear, cheap] = [demandOf('dear', 1, 10, { Slate: 3 }), demandOf('cheap', 1, 10, { Slate: 2 })];
    expect((await fitBudget(fittingOf([dear, cheap], 600))).finished).toEqual([3, 10]);
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

  interface Tried {
    readonly counts: readonly number[];
    readonly costMinor: number;
  }

  /** The cost of so many figures of each; undefined where it is over the budget. */
  function tryCounts(
    counts: readonly number[],
    { demands, market, budgetMinor }: Fitting,
  ): Tried | undefined {
    const needs = new Map<string, number>();
    for (const [at, demand] of demands.entries())
      for (const paint of counts[at] ? demand.perFigureMl.keys() : [])
        needs.set(paint, (needs.get(paint) ?? 0) + demandMl(demand, paint, counts[at] ?? 0));
    for (const [paint, ml] of needs)
      if (ml > 0) needs.set(paint, Math.min(ml, allOf(paint, market)));
      else needs.delete(paint);
    const { costMinor = Number.POSITIVE_INFINITY } =
      tryEveryOrder(needs, market.offers, market.shops, 5) ?? {};
    return costMinor <= budgetMinor ? { counts, costMinor } : undefined;
  }

  const sumOf = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0);

  /** All numbers of figures of some units, the others as they are. */
  function listCounts(counts: readonly number[], { demands }: Fitting, units: readonly number[]): number[][] {
    return units.reduce(
      (all, unit) =>
        all.flatMap((one) =>
          Array.from({ length: (demands[unit]?.figures ?? 0) + 1 }, (_, count) => one.with(unit, count)),
        ),
      [[...counts]],
    );
  }

  /** Of those with the most figures that can be paid the cheapest; of these that with the fewest of the last unit. */
  function best(candidates: readonly number[][], fitting: Fitting): number[] {
    const totals = [...new Set(candidates.map(sumOf))].sort((a, b) => b - a);
    for (const total of totals) {
      const tried = candidates
        .filter((one) => sumOf(one) === total)
        .flatMap((one) => tryCounts(one, fitting) ?? []);
      tried.sort((a, b) => a.costMinor - b.costMinor || (a.counts.at(-1) ?? 0) - (b.counts.at(-1) ?? 0));
      if (tried[0] !== undefined) return [...tried[0].counts];
    }
    throw new Error('not even what there was before');
  }

  /** Priority by priority the most figures in whole units, then of each priority, with as many in whole units, the most in all. */
  function tryAll(fitting: Fitting): number[] {
    const { demands } = fitting;
    const wholeOf = (counts: readonly number[], units: readonly number[]): number =>
      sumOf(units.map((unit) => (counts[unit] === demands[unit]?.figures ? (counts[unit] ?? 0) : 0)));
    const levels = [1, 2].map((level) =>
      [...demands.keys()].filter((unit) => demands[unit]?.priority === level),
    );
    let finished = demands.map(() => 0);
    for (const units of levels) {
      const whole = listCounts(finished, fitting, units).filter((counts) =>
        units.every((unit) => counts[unit] === 0 || counts[unit] === demands[unit]?.figures),
      );
      finished = best(whole, fitting);
    }
    for (const units of levels) {
      const least = wholeOf(finished, units);
      const all = listCounts(finished, fitting, units).filter((counts) => wholeOf(counts, units) >= least);
      finished = best(all, fitting);
    }
    return finished;
  }

  it('60 drawn cases of three units of two priorities, four offers, postage and sums', async () => {
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
        demandOf('second', whole(1, 2), whole(2, 7), { Slate: whole(0, 2), Oat: whole(1, 4) }),
        demandOf('third', 2, whole(1, 7), { Slate: whole(0, 3), Oat: whole(1, 2) }),
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
