import { describe, expect, it } from 'vitest';
import { describeTime } from '../../../src/report/plan-json/describe-time.js';
import { smallTime } from '../a-small-clock.js';

describe('time in plan.json', () => {
  const time = describeTime(smallTime);

  it('sums the army', () => {
    const { units: _, jobs: __, plan: ___, ...sums } = time;
    expect(sums).toEqual({
      ...{ brushMin: 368, brushMinLow: 270, brushMinHigh: 504, setupMin: 19 },
      ...{ waitingMin: 77.8, elapsedMin: 464.8, eveningMin: 150, evenings: 4, eveningsReckoned: true },
    });
  });

  it('tells each unit’s minutes and smallest batch, shared by units of one job', () => {
    const [first, second, ram] = time.units;
    expect(first?.own).toEqual({ unit: 'First watch', doneOnEvening: null });
    expect(first?.shared).toBe(second?.shared);
    expect(first?.shared[0]).toEqual({ brushMinPerFigure: 15.4, smallestBatchWithoutWaiting: 74, job: 0 });
    expect(ram?.shared[0]?.job).toBe(1);
    expect(time.jobs[0]).toMatchObject({
      brushMinPerFigureLow: 11.2,
      brushMin: 154,
      smallestBatchBetweenLongDrying: 5,
      batches: [{ figures: 10, batches: 1, elapsedMin: 199.4, atLeastMin: 193.4, shortest: 'rule of thumb' }],
    });
    expect(ram?.own.doneOnEvening).toBe(2);
    const none = { figures: undefined, becauseOf: undefined };
    const [unit] = smallTime.units;
    if (unit === undefined) throw new Error('no unit');
    const endless = { ...unit, time: { ...unit.time, smallestBatchWithoutWaiting: none } };
    const [entry] = describeTime({ ...smallTime, units: [endless] }).units;
    expect(entry?.shared[0]).toMatchObject({
      smallestBatchWithoutWaiting: null,
    });
  });

  it('spells the evenings out piece by piece', () => {
    expect(time.plan).toHaveLength(2);
    expect(time.plan[0]?.pieces.slice(0, 3)).toEqual([
      { what: 'spraying', minutes: 9, unit: 'First watch', step: 1, layer: 'primer', coat: 1, figures: 10 },
      { what: 'spraying', minutes: 4, unit: 'Second watch', step: 1, layer: 'primer', coat: 1, figures: 10 },
      { what: 'waiting', minutes: 21.4 },
    ]);
  });
});
