// A plan small enough to work out by hand. The numbers stand in a-small-army.ts, a-small-shelf.ts,
// a-small-climb.ts and a-small-doubt.ts; the tests repeat the arithmetic.

import { registry } from '../../src/assumptions/registry.js';
import { listDemands } from '../../src/estimate/list-demands.js';
import type { Figure } from '../../src/model/figure.js';
import { exactMinor } from '../../src/model/money.js';
import type { Plan, PlanResults } from '../../src/model/plan.js';
import type { Estimate, FigureArea } from '../../src/model/work.js';
import { sumUpPlan } from '../../src/summary/sum-up-plan.js';
import { ram, smallCosts, smallUnits, wardens } from './a-small-army.js';
import { smallChoices } from './a-small-choices.js';
import { smallBudget, smallStairs } from './a-small-climb.js';
import { smallTime } from './a-small-clock.js';
import { smallLearned, smallPromised, smallRanges } from './a-small-doubt.js';
import { smallFrontier, smallInstead, smallPrimers, smallSwaps, smallUndercoats } from './a-small-palette.js';
import { smallOrder, smallPaints, smallReachMl, smallRestock, smallStock } from './a-small-shelf.js';

const figure = (name: string): Figure => ({
  figure: name,
  eyeMm: 28,
  build: 'heroic',
  dress: 'clothed',
  kit: [],
  baseHighMm: 3,
  perBase: 1,
});

const area = (name: string, wholeCm2: number): [string, FigureArea] => [
  name,
  {
    figure: figure(name),
    parts: new Map(),
    wholeCm2,
    withBaseCm2: wholeCm2,
    surface: [{ factors: ['dress clothed', 'build heroic', 'relief'], share: 1 }],
    mark: 'from memory',
    biggestDoubt: 'relief',
  },
];

const estimate: Estimate = {
  figures: new Map([area('Reed warden', 15), area('Pole ram', 80)]),
  jobs: new Map([
    [wardens, 2],
    [ram, 1],
  ]),
  units: smallUnits.map(({ unit, job }) => ({ unit, job })),
  needs: new Map([
    ['Kettle grey', { wholeMl: 69, remainingMl: 60 }],
    ['Nettle coat', { wholeMl: 12.1, remainingMl: 12.1 }],
    ['Pond wash', { wholeMl: 12.2, remainingMl: 12.2 }],
    ['Chalk light', { wholeMl: 0.9, remainingMl: 0.9 }],
    ['Bell brass', { wholeMl: 0.14, remainingMl: 0.14 }],
    ['Rust hush', { wholeMl: 4.05, remainingMl: 4.05 }],
  ]),
};

const results: PlanResults = {
  date: '2026-10-05',
  settings: { currency: 'EUR', locale: 'en-GB', surePercent: 80, restock: 'shelf', overrides: [] },
  figureCount: 21,
  paints: new Map(smallPaints.map((one) => [one.paint, one])),
  estimate,
  demands: listDemands(estimate, registry),
  stock: smallStock,
  reachMl: smallReachMl,
  order: smallOrder,
  aim: { policy: 'sure', surePercent: 80 },
  choices: smallChoices,
  restock: smallRestock,
  stairs: smallStairs,
  budget: smallBudget,
  costs: smallCosts,
  ranges: smallRanges,
  promised: smallPromised,
  learned: smallLearned,
  money: {
    spent: [{ month: '2026-03', shop: 'Lock Stores', minor: 590 }],
    ...{ boughtMinor: 590, unpricedPots: 1, useBeside: new Map() },
    ...{
      begunWith: exactMinor(1200),
      standing: exactMinor(900),
      onWay: exactMinor(295),
      used: exactMinor(595),
    },
  },
  undercoats: smallUndercoats,
  primers: smallPrimers,
  swaps: smallSwaps,
  instead: smallInstead,
  frontier: smallFrontier,
  time: smallTime,
  cautions: ['spray can', 'brush'],
  lacking: [],
  assumptions: [...registry.values()],
  defaults: [{ sheet: 'pots', column: 'opened', rows: 3, meaning: 'never opened' }],
  read: [
    {
      ...{ sheet: 'pots', file: 'pots.csv', headerRow: 3 },
      columns: [
        { header: 'Colour', column: 'paint', isOwn: false },
        { header: 'size ml', column: 'size ml', isOwn: true },
        { header: 'In the pot', maybe: 'left', isOwn: false },
        { header: 'shade', isOwn: false },
      ],
    },
  ],
};

/** The plan with some results changed, summed up anew. */
export function changedPlan(changes: Partial<PlanResults>): Plan {
  const changed = { ...results, ...changes };
  return { ...changed, summary: sumUpPlan(changed) };
}

export const smallPlan: Plan = changedPlan({});

/** So many units like the first watch, one after the other. */
export function planOfWatches(count: number): Plan {
  const [first] = smallPlan.estimate.units;
  if (first === undefined) throw new Error('no unit');
  const units = Array.from({ length: count }, (_, at) => ({
    ...first,
    unit: { ...first.unit, unit: `Watch ${at + 1}`, row: at + 2 },
  }));
  return changedPlan({ estimate: { ...smallPlan.estimate, units } });
}
