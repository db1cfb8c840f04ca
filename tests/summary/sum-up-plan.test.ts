// What only the whole plan tells: both orders together, the first unit, whether postage is known.
import { expect, it } from 'vitest';
import { smallUnits } from '../report/a-small-army.js';
import { changedPlan, smallPlan } from '../report/a-small-plan.js';

it('spends 7.40 for the army and 6.40 for the shelf', () => {
  expect(smallPlan.summary).toMatchObject({ cashMinor: 1380, restock: { pots: 2 } });
  const { restock: _, ...alone } = smallPlan;
  const { summary } = changedPlan({ ...alone, restock: undefined });
  expect([summary.cashMinor, summary.restock]).toEqual([740, undefined]);
});

const firstOf = (...priorities: readonly number[]) => {
  const units = smallUnits.map(({ unit, job }, at) => ({
    unit: { ...unit, priority: priorities[at] ?? 0 },
    job,
  }));
  return changedPlan({ estimate: { ...smallPlan.estimate, units } }).summary.firstUnit?.unit;
};

it('paints the unit of the first priority first, of several the one in the higher row', () => {
  expect(firstOf(2, 3, 1)).toBe('The ram');
  expect(firstOf(2, 1, 1)).toBe('Second watch');
  expect(changedPlan({ estimate: { ...smallPlan.estimate, units: [] } }).summary.firstUnit).toBeUndefined();
});

it('knows postage unless the shops sheet’s column took its default', () => {
  const knows = (sheet: string, column: string) =>
    changedPlan({ defaults: [{ sheet, column, rows: 1, meaning: 'nothing' }] }).summary.isPostageKnown;
  expect([knows('shops', 'postage'), knows('shops', 'least order'), knows('pots', 'postage')]).toEqual([
    false,
    true,
    true,
  ]);
});
