// Money so far on the page: in cents, 1,200 begun with and 590 bought; 595 used, 900 standing, 295 on its way.
import { describe, expect, it } from 'vitest';
import { exactMinor } from '../../../../src/model/money.js';
import { viewPlan } from '../../../../src/report/page/view.js';
import { viewMoneySheet } from '../../../../src/report/workbook/estimate/view-money-sheet.js';
import { smallUnits, wardens } from '../../a-small-army.js';
import { changedPlan, smallPlan } from '../../a-small-plan.js';

const { money, costs } = smallPlan;
const [one, ...others] = smallUnits;
const finished = { ...one, job: { ...wardens, unfinished: false, remaining: [] } };
const withFinished = changedPlan({
  money: { ...money, useBeside: new Map([['Nettle coat', { usedMl: 12.1, estimatedMl: 6.05 }]]) },
  costs: { ...costs, units: [finished, ...others] },
});

describe('money so far', () => {
  const view = viewPlan(withFinished, []).money;

  it('adds up to what was paid: 5.95 + 9.00 + 2.95 = 17.90', () => {
    expect(view?.sums.map(({ title, figure }) => [title, figure])).toEqual([
      ['Used up', '€5.95'],
      ['Standing in the pots', '€9.00'],
      ['On its way', '€2.95'],
    ]);
    expect(view?.sums[1]?.says).toBe('1 pot without a price is left out.');
  });

  it('is by month and shop', () => {
    expect(view?.spent).toEqual([{ month: '2026-03', shop: 'Lock Stores', cash: '€5.90' }]);
    expect(view?.spentInAll).toBe('€5.90');
  });

  it('tells what a finished figure has really cost: 12.1 cents of coat more than 43.55', () => {
    expect(view?.finished).toEqual([
      {
        ...{ figure: 'Reed warden', scheme: 'Marsh', figures: '10' },
        ...{ estimated: 'at least €0.44', really: 'at least €0.56' },
      },
    ]);
  });

  it('is not there where nothing was bought or used, up to half a cent', () => {
    const shown = (used: number) =>
      viewPlan(changedPlan({ money: { ...money, spent: [], used: exactMinor(used) } }), []).money;
    expect(shown(0.49)).toBeUndefined();
    expect(shown(0.5)).toBeDefined();
  });
});

it('stands in the workbook', () => {
  const sheet = viewMoneySheet(withFinished, (minor) => minor / 100);
  expect(sheet.rows.map((row) => row.slice(0, 5))).toEqual([
    ['used up', undefined, undefined, undefined, 5.95],
    ['standing in the pots', undefined, undefined, undefined, 9],
    ['on its way', undefined, undefined, undefined, 2.95],
    ['bought in 2026-03', 'Lock Stores', undefined, undefined, 5.9],
    ['a finished figure, estimated', 'Reed warden', 'Marsh', 10, expect.closeTo(0.4355, 9)],
    ['a finished figure, really', 'Reed warden', 'Marsh', 10, expect.closeTo(0.5565, 9)],
  ]);
});
