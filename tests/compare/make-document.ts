// A small plan.json as a value, written by hand: say what matters.
import type { ComparedPlan } from '../../src/compare/pick-plan.js';
import { planVersion } from '../../src/report/plan-json/plan-version.js';

type Line = ComparedPlan['jobs'][number]['lines'][number];

/** A line of 20 figures: one base coat of brick red by brush. */
export const makeLine = (line: object = {}): Line =>
  ({
    ...{ step: 1, figures: 20, zone: 'whole', layer: 'base coat', method: 'brush', paint: 'brick red' },
    ...{ areaShare: 1, coats: 1, thin: 0, mixShare: 1 },
    ...line,
  }) as Line;

export const makeJob = (job: object = {}) => ({
  ...{ figure: 'spearman', scheme: 'red line', count: 20, batch: 10, done: 0, units: 1 },
  lines: [makeLine()],
  ...job,
});

/** Twenty spearmen in one unit, bought for in goes, for 12.50 now and 15.00 in all. */
export const makeDocument = (more: object = {}) =>
  ({
    version: planVersion,
    ...{
      date: '2026-11-01',
      currency: 'EUR',
      settings: { locale: 'en', restock: 'army', surePercent: null },
    },
    army: { figures: 20 },
    costs: { use: '10.000000', useAtLeast: false, cash: '12.50' },
    units: [{ unit: 'first spears', job: 0 }],
    jobs: [makeJob()],
    work: { paints: [{ paint: 'brick red', putOutRemainingMl: 4.04 }] },
    figures: [{ figure: 'spearman', withBaseCm2: 33.5 }],
    paints: [{ paint: 'brick red', haveMl: 15.98, state: 'enough', needMl: { likely: 4.04 }, pots: [{}] }],
    order: { policy: 'goes', sure: null },
    choices: [
      { policy: 'likely', sure: null, meanInAll: '14.00', atLeast: false },
      { policy: 'goes', sure: null, meanInAll: '15.00', atLeast: false },
    ],
    time: { evenings: 3 },
    learned: { weighings: [] },
    assumptions: [{ name: 'brush transfer', mark: 'from memory', low: 0.3, likely: 0.5, high: 0.7 }],
    ...more,
  }) as unknown as ComparedPlan & { readonly version: number };
