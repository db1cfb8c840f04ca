// The stages together: what only the whole plan can show.
import { describe, expect, it } from 'vitest';
import type { Sheets } from '../src/model/sheets.js';
import { solveProgram } from '../src/order/solver/solve-program.js';
import { planArmy } from '../src/plan-army.js';
import { certainSettings } from './make-certain.js';
import {
  makeFigure,
  makeOffer,
  makePot,
  makeSheets,
  makeShop,
  makeStep,
  makeUnit,
  offerPot,
} from './make-sheets.js';
import { readSample } from './sample/read-sample.js';

const today = '2026-11-02';

/** Two units by priority; 10 cm2 a figure, one coat: 0.1 ml a figure and 0.05 ml a sitting of ten. */
const army = [
  makeUnit({ unit: 'archers', row: 2, count: 120, priority: 2 }),
  makeUnit({ unit: 'watch', row: 3, count: 150, priority: 1 }),
];
const sheets = makeSheets({
  figures: [makeFigure({ areaCm2: 10 })],
  steps: [makeStep({ step: 1, coats: 1 })],
  pots: [makePot({ paint: 'Slate', priceMinor: 300, left: { how: 'in ml', ml: 2 } })],
  offers: [makeOffer({ priceMinor: 300, pots: [offerPot('Slate')] })],
  shops: [makeShop({ postageMinor: 200 })],
  army,
  settings: certainSettings,
});
const orderOf = async (of: Sheets) => (await planArmy(of, today)).order;

describe('a budget', () => {
  // The watch takes 15.75 ml, of which 1.92 are there; a pot of 16.32 ml leaves 2.49 ml: 23 archers (2.3 + 0.15 ml).
  it('finishes by priority, cuts a unit short, and shows the order of a plan for just that', async () => {
    const { budget } = await planArmy(sheets, today, { budgetMinor: 500 });
    expect(budget).toMatchObject({
      units: [
        { unit: 'watch', figures: 150, finished: 150 },
        { unit: 'archers', figures: 120, finished: 23 },
      ],
      nextSteps: [{ unit: 'archers', figures: 97, extraMinor: 300 }],
      proved: true,
      notTried: 0,
    });
    const cut = {
      ...sheets,
      army: army.map((unit) => (unit.unit === 'archers' ? { ...unit, count: 23 } : unit)),
    };
    // Other ways to buy are told of the army's own order only.
    expect(budget?.order).toEqual({ ...(await orderOf(cut)), passedOver: [], fromOneShop: [] });
    expect(budget?.order.totalMinor).toBe(500);
  });

  it('of nothing finishes what the shelf finishes', async () => {
    const { budget } = await planArmy(sheets, today, { budgetMinor: 0 });
    expect(budget?.units.map(({ finished }) => finished)).toEqual([18, 0]);
    expect(budget?.order).toMatchObject({ status: 'nothing to buy', totalMinor: 0 });
  });
});

describe('the staircase', () => {
  it("stands at the order's cash where the army ends", async () => {
    const { stairs, order } = await planArmy(sheets, today);
    expect(stairs.mostFigures).toBe(540);
    expect(stairs.steps.findLast(({ figures }) => figures <= 270)?.cashMinor).toBe(order.totalMinor);
    expect(stairs.steps[0]).toMatchObject({ figures: 0, cashMinor: 0, because: [] });
  });
});

describe('a plan whose every search takes long', () => {
  // The order, once more where a surer promise is cheaper, and the shelf's: 10 s each. Stairs 5, frontier 6, reasons 5, others 1 each.
  it('takes no more than five times what the order may take, and has an answer to every question', async () => {
    const { sheets: sample } = await readSample('folder');
    // Sixteen streets with the same shops, so that few programs are small enough to be searched without the solver.
    const streets = ['', ...Array.from({ length: 15 }, (_, at) => ` ${at + 2}`)];
    const town: typeof sample = {
      ...sample,
      offers: streets.flatMap((street) =>
        sample.offers.map((offer) => ({ ...offer, shop: offer.shop + street })),
      ),
      shops: new Map(
        streets.flatMap((street) =>
          [...sample.shops.values()].map((one) => [one.shop + street, { ...one, shop: one.shop + street }]),
        ),
      ),
    };
    let [spent, asked] = [0, 0];
    const plan = await planArmy(town, today, {
      seconds: 10,
      solve: async (program, limits) => {
        spent += limits.seconds;
        asked++;
        // Broken off soon, but counted as if it had taken all of its time.
        const soon = { ...limits, seconds: Math.min(0.1, limits.seconds) };
        return { ...(await solveProgram(program, soon)), seconds: limits.seconds };
      },
    });
    expect(asked).toBeGreaterThan(10);
    expect(spent).toBeGreaterThan(20);
    expect(spent).toBeLessThan(50);
    expect(plan.order.status).toBe("can't be met");
    expect(plan.frontier.points).toHaveLength(11);
    expect(new Set(plan.stairs.steps.map(({ proved }) => proved))).toEqual(new Set([true, false]));
  });
});
