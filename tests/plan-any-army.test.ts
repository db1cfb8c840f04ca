// Whatever army and log: plan.json is what its schema says, and every likely value lies between its low and its high.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { LogRow, Sheets } from '../src/model/sheets.js';
import { planArmy } from '../src/plan-army.js';
import { describePlan } from '../src/report/plan-json/describe-plan.js';
import { planSchema } from '../src/report/plan-json/plan-document.js';
import { makeOffer, makePot, offerPot } from './make-sheets.js';
import { anySheets } from './ranges/draw-sheets.js';
import { textOf } from './report/plan-json/plan-example.js';

/** From what could be to what nobody ever used. */
const amount = fc.oneof(fc.double({ min: 0.1, max: 30, noNaN: true }), fc.constantFrom(0, 0.001, 1, 400));
const logRow = fc.record({
  place: fc.nat(),
  figures: fc.oneof(fc.integer({ min: 1, max: 30 }), fc.constantFrom(1000, 1_000_000)),
  usedMl: fc.option(amount, { nil: undefined }),
});
type Drawn = { readonly place: number; readonly figures: number; readonly usedMl: number | undefined };

/** A row about some unit, step and paint of the sheets. */
function rowOf({ place, figures, usedMl }: Drawn, at: number, { army, schemes }: Sheets): LogRow {
  const steps = schemes.get('plain')?.steps ?? [];
  const step = steps[place % steps.length];
  return {
    ...{ row: at + 2, date: '2026-03-01', paint: step?.paints[0]?.paint ?? '', step: step?.step ?? 1 },
    ...{ unit: army[place % army.length]?.unit ?? '', figures },
    ...(usedMl === undefined ? {} : { usedMl }),
  };
}

const shelf = fc.array(fc.constantFrom(0.01, 0.3, 1), { maxLength: 20 });
const shares = fc.record({ slate: shelf, chalk: shelf });

const anyArmy = fc
  .tuple(anySheets, fc.array(logRow, { maxLength: 3 }), shares)
  .map(([sheets, rows, { slate, chalk }]): Sheets => {
    const named = [
      ...slate.map((share) => ['Slate', share] as const),
      ...chalk.map((share) => ['Chalk', share] as const),
    ];
    const pots = named.map(([paint, share], at) =>
      makePot({
        paint,
        row: at + 2,
        left: { how: 'by eye', share },
        openedOn: '2026-01-01',
        priceMinor: 295,
      }),
    );
    const sold = [...sheets.paints.keys()];
    const offers = sold.map((paint, at) =>
      makeOffer({ row: at + 2, offer: paint, priceMinor: 300, pots: [offerPot(paint)] }),
    );
    const log = rows.map((row, at) => rowOf(row, at, sheets));
    return { ...sheets, pots, offers, log };
  });

const inOrder = (what: string, ...values: readonly (number | string | null)[]): void => {
  const numbers = values.map(Number);
  expect(numbers, what).toEqual(numbers.toSorted((a, b) => a - b));
};

it('fits its schema, with low, likely and high in that order', async () => {
  await fc.assert(
    fc.asyncProperty(anyArmy, async (sheets) => {
      // Not a round number of draws, so that the mean of what never varies is off by rounding.
      const plan = await planArmy(sheets, '2026-11-02', { draws: 997, seconds: 1 });
      const document = planSchema.parse(JSON.parse(textOf(describePlan(plan, []))));
      const { costs } = document;
      inOrder('use', costs.useLow, costs.use, costs.useHigh);
      inOrder('remaining', costs.useRemainingLow, costs.useRemaining, costs.useRemainingHigh);
      for (const { paint, needMl, ...one } of document.paints) {
        inOrder(`need of ${paint}`, needMl.low, needMl.likely, needMl.high);
        inOrder(`shelf of ${paint}`, one.haveLowMl, one.haveMl, one.haveHighMl);
        inOrder(`cost of ${paint}`, one.useCostLow, one.useCost, one.useCostHigh);
      }
      for (const one of document.jobs) {
        inOrder(one.figure, one.useCostPerFigureLow, one.useCostPerFigure, one.useCostPerFigureHigh);
        inOrder(one.figure, one.useCostLow, one.useCost, one.useCostHigh);
      }
      for (const { name, low, likely, high } of document.assumptions) inOrder(name, low, likely, high);
    }),
    { numRuns: 25 },
  );
});
