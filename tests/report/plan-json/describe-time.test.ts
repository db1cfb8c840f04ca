import { describe, expect, it } from 'vitest';
import { describeJobTime, describeTime } from '../../../src/report/plan-json/describe-time.js';
import { smallTime } from '../a-small-clock.js';

describe('time in plan.json', () => {
  const time = describeTime(smallTime);

  it('sums the army', () => {
    const { plan: _, ...sums } = time;
    expect(sums).toEqual({
      ...{ brushMin: 368, brushMinLow: 270, brushMinHigh: 504, setupMin: 19 },
      ...{ waitingMin: 77.8, elapsedMin: 464.8, eveningMin: 150, evenings: 4, eveningsReckoned: true },
    });
  });

  it('tells the minutes and smallest batches of a job', () => {
    const [unit] = smallTime.units;
    if (unit === undefined) throw new Error('no unit');
    expect(describeJobTime(unit.time)).toMatchObject({
      ...{ brushMinPerFigure: 15.4, brushMinPerFigureLow: 11.2, brushMin: 154 },
      ...{ smallestBatchWithoutWaiting: 74, smallestBatchBetweenLongDrying: 5 },
      batches: [{ figures: 10, batches: 1, elapsedMin: 199.4, atLeastMin: 193.4, shortest: 'rule of thumb' }],
    });
    const none = { figures: undefined, becauseOf: undefined };
    const endless = describeJobTime({ ...unit.time, smallestBatchWithoutWaiting: none });
    expect(endless.smallestBatchWithoutWaiting).toBeNull();
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
