// What eight euros finish of the small army. By hand.
import { expect, it } from 'vitest';
import { sumBudget } from '../../src/summary/sum-budget.js';
import { smallBudget } from '../report/a-small-climb.js';

it('finishes 17 of 21 figures and leaves 0.60', () => {
  expect(sumBudget(smallBudget)).toMatchObject({ figures: 21, finished: 17, leftMinor: 60 });
});

it('lacks 4.90 for the four that are left: 7.40 + 5.50 - 8', () => {
  expect(sumBudget(smallBudget)?.open).toEqual([
    { unit: 'Second watch', figures: 10, finished: 6, left: 4, extraMinor: 550, shortMinor: 490 },
  ]);
});

it('lacks nothing where the step fits and only the order of priority stops it', () => {
  const [step] = smallBudget.nextSteps;
  if (step === undefined) throw new Error('no step');
  const nextSteps = [{ ...step, extraMinor: 60 }];
  expect(sumBudget({ ...smallBudget, nextSteps })?.open[0]?.shortMinor).toBe(0);
});

it('knows no price of units that were not tried', () => {
  expect(sumBudget({ ...smallBudget, nextSteps: [] })?.open).toMatchObject([
    { extraMinor: undefined, shortMinor: 0 },
  ]);
});

it('names whole units', () => {
  expect(sumBudget(smallBudget)?.whole.map(({ unit }) => unit)).toEqual(['First watch', 'The ram']);
});

it('is none without a budget', () => {
  expect(sumBudget(undefined)).toBeUndefined();
});
