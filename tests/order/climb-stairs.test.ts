import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { cheapestCounts } from '../../src/order/choose-counts.js';
import { climbStairs } from '../../src/order/climb-stairs.js';
import { prepareBuying } from '../../src/order/prepare-buying.js';
import type { Solve } from '../../src/order/solver/integer-program.js';
import { solveProgram } from '../../src/order/solver/solve-program.js';
import { measureSupply, splitNeeds } from '../../src/order/split-needs.js';
import { makeOffer, makeShop, offerPot } from '../make-sheets.js';
import { drawMarket } from './draw-market.mjs';

const buying = prepareBuying({});
const slate = makeOffer({ offer: 'Slate 17', priceMinor: 300, pots: [offerPot('Slate')] });
const oat = makeOffer({ offer: 'Oat 17', priceMinor: 250, pots: [offerPot('Oat')] });
const market = {
  offers: [slate, oat],
  shops: new Map([['Quay', makeShop({ postageMinor: 400 })]]),
  assumptions: registry,
};

describe('the staircase, by hand', () => {
  // Slate: 2 ml a figure beyond the first 10; Oat: 1 ml a figure. A 17 ml pot holds 15.98,
  // two 31.96, three 47.94: 16 figures take a second pot of Oat, 32 a third; 18, 26 and 34 the next ones of Slate.
  const toBuyAt = (figures: number) =>
    [
      { paint: 'Slate', ml: 2 * Math.max(0, figures - 10) },
      { paint: 'Oat', ml: figures },
    ].filter(({ ml }) => ml > 0);

  it('steps where a pot runs out, and names it', async () => {
    const stairs = await climbStairs({ toBuyAt, figures: 20, market, buying });
    expect(stairs).toMatchObject({ mostFigures: 40, everyStep: true });
    expect(
      stairs.steps.map(({ figures, cashMinor, because }) => [figures, cashMinor, because.join()]),
    ).toEqual([
      [0, 0, ''],
      [1, 650, 'Oat'],
      [11, 950, 'Slate'],
      [16, 1200, 'Oat'],
      [18, 1500, 'Slate'],
      [26, 1800, 'Slate'],
      [32, 2050, 'Oat'],
      [34, 2350, 'Slate'],
    ]);
  });

  it('has no steps without figures', async () => {
    expect(await climbStairs({ toBuyAt, figures: 0, market, buying })).toMatchObject({
      steps: [],
      mostFigures: 0,
    });
  });
});

describe('a staircase that takes long', () => {
  const drawn = { ...drawMarket(7, { paints: 12, offers: 24, shops: 3 }), assumptions: registry };
  const toBuyAt = (figures: number) =>
    drawn.needs.map(({ paint, ml }) => ({ paint, ml: (ml * figures) / 40 }));

  it('searches no longer than three tenths of what the order may take; steps after that are not proved, and no cheaper', async () => {
    let searches = 0;
    const solve: Solve = async (program, limits) => {
      searches += 1;
      return { ...(await solveProgram(program, limits)), seconds: 1 };
    };
    const slow = { solve, limits: { seconds: 10 } };
    const least = await climbStairs({ toBuyAt, figures: 60, market: drawn, buying });
    const { steps } = await climbStairs({ toBuyAt, figures: 60, market: drawn, buying: slow });
    expect(least.steps.length).toBeGreaterThan(8);
    expect(searches).toBe(3);
    // The army and one figure more are asked first; the first step buys nothing, which needs no search.
    expect(steps.findIndex(({ proved }) => !proved)).toBe(2);
    const provedAt = (figures: number) => steps.findLast((step) => step.figures <= figures)?.proved;
    expect([60, 61].map(provedAt)).toEqual([true, true]);
    for (const { figures, cashMinor } of steps) {
      const best = least.steps.filter((step) => step.figures <= figures).at(-1);
      expect(cashMinor).toBeGreaterThanOrEqual(best?.cashMinor ?? 0);
    }
  });
});

describe('the staircase of a drawn market', () => {
  const drawn = { ...drawMarket(7, { paints: 12, offers: 24, shops: 3 }), assumptions: registry };
  const toBuyAt = (figures: number) =>
    drawn.needs.map(({ paint, ml }) => ({ paint, ml: (ml * figures) / 40 }));

  it('never falls, and at every number of figures is the least cash', async () => {
    const { steps, everyStep } = await climbStairs({ toBuyAt, figures: 15, market: drawn, buying });
    expect(everyStep).toBe(true);
    for (let figures = 1; figures <= 30; figures++) {
      const here = steps.findLast((step) => step.figures <= figures);
      const { within } = splitNeeds(toBuyAt(figures), measureSupply(drawn));
      const { totalMinor } = await cheapestCounts(within, drawn, buying);
      expect(here?.cashMinor, `${figures} figures`).toBe(totalMinor);
    }
    const cash = steps.map(({ cashMinor }) => cashMinor);
    expect(cash).toEqual([...cash].sort((a, b) => a - b));
  });

  it('takes strides where there are too many steps, says so, and reaches twice the army', async () => {
    const many = (figures: number) => drawn.needs.map(({ paint, ml }) => ({ paint, ml: ml * figures }));
    const { steps, everyStep, mostFigures } = await climbStairs({
      toBuyAt: many,
      figures: 200,
      market: drawn,
      buying,
    });
    expect(everyStep).toBe(false);
    expect(steps.length).toBeLessThanOrEqual(25);
    expect(steps.at(-1)?.figures).toBe(mostFigures);
  });

  it.each([10, 40, 200, 6000])(
    'knows what one figure more than %i costs, however crowded',
    async (figures) => {
      const many = (count: number) => drawn.needs.map(({ paint, ml }) => ({ paint, ml: (ml * count) / 3 }));
      const { steps } = await climbStairs({ toBuyAt: many, figures, market: drawn, buying });
      const shown = steps.findLast((step) => step.figures <= figures + 1);
      const { within } = splitNeeds(many(figures + 1), measureSupply(drawn));
      expect(shown?.proved).toBe(true);
      expect(shown?.cashMinor).toBe((await cheapestCounts(within, drawn, buying)).totalMinor);
    },
  );
});
