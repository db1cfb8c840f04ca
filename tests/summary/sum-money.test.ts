// What a finished figure really cost, by hand. Ten wardens, in cents: each paint's line, and the whole figure, of the small army.
import { describe, expect, it } from 'vitest';
import { exactMinor } from '../../src/model/money.js';
import type { Costs } from '../../src/model/plan.js';
import { sumMoney } from '../../src/summary/sum-money.js';
import { smallCosts, smallUnits, wardens } from '../report/a-small-army.js';
import { smallPlan } from '../report/a-small-plan.js';

const finishedJob = { ...wardens, unfinished: false, remaining: [] };
const [one] = smallUnits;
const unit = { ...one, job: finishedJob };
const other = {
  ...one,
  job: { ...finishedJob, count: 5 },
  unit: { ...one.unit, count: 5 },
};

function sum(
  units: Costs['units'],
  useBeside = new Map([['Nettle coat', { usedMl: 12.1, estimatedMl: 6.05 }]]),
) {
  const { finished, spentMinor } = sumMoney({
    money: { ...smallPlan.money, useBeside },
    costs: { ...smallCosts, units },
  });
  const rounded = finished.map(({ estimated, really, ...rest }) => ({
    ...rest,
    estimated: estimated.exactMinor.toNumber(),
    really: really.exactMinor.toNumber(),
  }));
  return { spentMinor, finished: rounded };
}

describe('a finished figure', () => {
  const nettle = one.use.lines[1]?.exactMinor ?? exactMinor(0);

  it('has cost the coat twice where twice the coat was used', () => {
    expect(nettle.toNumber()).toBeGreaterThan(0);
    expect(sum([unit]).finished).toEqual([
      {
        ...{ figure: 'Reed warden', scheme: 'Marsh', figures: 10, estimated: 43.55 },
        really: expect.closeTo(43.55 + nettle.toNumber() / 10, 9),
      },
    ]);
  });

  it('is told only of finished units, of whose paints some were measured', () => {
    expect(sum([one]).finished).toEqual([]);
    expect(sum([unit], new Map([['Rust hush', { usedMl: 1, estimatedMl: 2 }]])).finished).toEqual([]);
  });

  it('is one on average of all units of its scheme: 10 and 5 x the same lines', () => {
    const [both] = sum([unit, other]).finished;
    const lines = nettle.toNumber() / 10;
    const paint = one.use.lines.reduce((total, { exactMinor: minor }) => total + minor.toNumber(), 0);
    const extras = one.use.extrasPerFigure.exactMinor.toNumber();
    const ofFive = (paint + nettle.toNumber()) / 5 + extras;
    expect(both?.figures).toBe(15);
    expect(both?.really).toBeCloseTo((10 * (43.55 + lines) + 5 * ofFive) / 15, 9);
  });
});

it('adds up what was spent', () => expect(sum([]).spentMinor).toBe(590));
