// A plan by the real stages, with all that plan.json can tell: units that share a job, a mix, steps done, a paint without
// a price, one that nobody offers, a code, restocking that makes both orders travel free, a budget, a warning.

import type { Problem } from '../../../src/model/problem.js';
import { planArmy } from '../../../src/plan-army.js';
import { describePlan, type PlanDescription } from '../../../src/report/plan-json/describe-plan.js';
import { writePlanJson } from '../../../src/report/plan-json/write-plan-json.js';
import {
  makeFigure,
  makeOffer,
  makePot,
  makeSheets,
  makeShop,
  makeStep,
  makeUnit,
  offerPot,
} from '../../make-sheets.js';

export const warning: Problem = {
  code: 'not-a-volume',
  severity: 'warning',
  file: 'pots.csv',
  sheet: 'pots',
  row: 3,
  column: 'size ml',
  cell: 'B3',
  found: '"40 l"\u2028',
  expected: 'a volume',
  hint: 'Write a number of millilitres, such as 12.5.',
};

export const examplePlan = await planArmy(
  makeSheets({
    figures: [
      makeFigure({ priceMinor: 180, kit: [{ item: 'weapon', count: 1 }] }),
      makeFigure({ figure: 'ox' }),
    ],
    steps: [
      makeStep({ step: 1, layer: 'primer', paint: 'Chalk' }),
      makeStep({
        step: 2,
        paints: [
          { paint: 'Slate', share: 2 / 3 },
          { paint: 'Oat', share: 1 / 3 },
        ],
      }),
      makeStep({ step: 3, layer: 'wash', zone: 'tunic', paint: 'Peat "wash"' }),
    ],
    pots: [
      makePot({ paint: 'Chalk', sizeMl: 400, container: 'can', priceMinor: 899 }),
      makePot({ paint: 'Slate', row: 3, left: { how: 'by eye', share: 0.05 }, priceMinor: 335 }),
      makePot({ paint: 'Lamp', row: 4, left: { how: 'by eye', share: 0.02 } }),
    ],
    offers: [
      makeOffer({ priceMinor: 350, available: 1, pots: [{ ...offerPot('Slate'), code: '2000310000217' }] }),
      makeOffer({ offer: 'Lamp', priceMinor: 400, pots: [offerPot('Lamp')] }),
    ],
    shops: [makeShop({ postageMinor: 390, freeFromMinor: 650 })],
    extras: [{ item: 'flock', priceMinor: 500, serves: 300 }],
    army: [
      makeUnit(),
      makeUnit({ unit: 'second "watch"\n', row: 3 }),
      makeUnit({ unit: 'oxen', row: 4, figure: 'ox', count: 3, done: 1 }),
      makeUnit({ unit: 'all done', row: 5, done: 3 }),
    ],
    settings: { currency: 'EUR', locale: 'en', surePercent: 80, restock: 'shelf', overrides: [] },
    defaults: [{ sheet: 'army', column: 'batch', rows: 4, meaning: '10' }],
  }),
  '2026-03-14',
  { budgetMinor: 500 },
);

export const exampleDescription: PlanDescription = describePlan(examplePlan, [warning]);

export const textOf = (plan: PlanDescription): string => [...writePlanJson(plan)].join('');
