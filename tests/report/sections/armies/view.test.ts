// The small plan as two armies: ten wardens for Reed, ten wardens and the ram for Lock.
import { describe, expect, it } from 'vitest';
import { viewPlan } from '../../../../src/report/page/view.js';
import { describePlan } from '../../../../src/report/plan-json/describe-plan.js';
import { changedPlan, smallPlan } from '../../a-small-plan.js';

const { costs } = smallPlan;
const units = costs.units.map((one, at) => ({
  ...one,
  unit: { ...one.unit, army: at === 0 ? 'Reed' : 'Lock', priority: at },
}));
const plan = changedPlan({ costs: { ...costs, units } });

describe('each army', () => {
  it('has a row: its part of the cash of 7.40, and what of 9.10 it uses', () => {
    const rows = viewPlan(plan, []).armies?.rows;
    expect(rows?.map(({ army, figures, cash, whole }) => [army, figures, cash, whole])).toEqual([
      ['Reed', '10', '€3.70', 'at least €4.36'],
      ['Lock', '11', '€3.70', 'at least €4.75'],
    ]);
    expect(rows?.map(({ remaining }) => remaining)).toEqual(['at least €4.36', 'at least €4.39']);
  });

  it('is in plan.json, and each unit names its own', () => {
    const { armies, units: told } = describePlan(plan, []);
    expect(armies).toMatchObject([
      { army: 'Reed', units: 1, figures: 10, cash: '3.70', use: '4.355000', useAtLeast: true },
      { army: 'Lock', units: 2, figures: 11, cash: '3.70', use: '4.748000', useRemaining: '4.388000' },
    ]);
    expect([...told].map(({ army }) => army)).toEqual(['Reed', 'Lock', 'Lock']);
  });
});

it('one army alone has no such table', () => {
  expect(viewPlan(smallPlan, []).armies).toBeUndefined();
  expect([...describePlan(smallPlan, []).units].map(({ army }) => army)).toEqual([
    undefined,
    undefined,
    undefined,
  ]);
});
