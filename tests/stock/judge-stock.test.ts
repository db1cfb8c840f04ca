import { describe, expect, it } from 'vitest';
import type { PaintStock, ShelfPot } from '../../src/model/stock.js';
import { judgeStock } from '../../src/stock/judge-stock.js';

const pot: ShelfPot = {
  ...{ row: 2, sizeMl: 17, container: 'dropper', usableMl: 16.32, fullUsableMl: 16.32 },
  ...{ ordered: false, readingErrorMl: 0, mark: 'yours' },
};
const stock = (more: Partial<PaintStock> = {}): PaintStock => ({
  ...{
    paint: 'Slate',
    pots: [pot],
    needMl: 5,
    haveMl: 16.32,
    orderedMl: 0,
    leftAfterMl: 11.32,
    toBuyMl: 0,
    keepMl: 0,
  },
  ...{ state: 'enough', runningLow: false, mark: 'yours' },
  ...more,
});
const judge = (one: PaintStock, chance: number | undefined, toBuyMl?: number): PaintStock | undefined =>
  judgeStock([one], {
    chancesShort: new Map(chance === undefined ? [] : [['Slate', { chance, error: 0.005 }]]),
    toBuyMl: new Map(toBuyMl === undefined ? [] : [['Slate', toBuyMl]]),
  })[0];

describe('a paint', () => {
  it.each([
    [0, 'enough'],
    [0.1, 'enough'],
    [0.1001, 'tight'],
    [0.5, 'tight'],
    [0.5001, 'short'],
    [1, 'short'],
  ])('that runs short with chance %f is %s', (chance, state) => {
    expect(judge(stock(), chance)?.state).toBe(state);
  });

  it('that nobody owns is none owned, whatever its chance; one that nothing needs is enough', () => {
    expect(judge(stock({ pots: [] }), 1)?.state).toBe('none owned');
    expect(judge(stock({ pots: [] }), 0)?.state).toBe('none owned');
    expect(judge(stock({ needMl: 0 }), undefined)?.state).toBe('enough');
    expect(judge(stock({ needMl: 0, pots: [] }), undefined)?.state).toBe('enough');
  });

  it('is bought as the promise asks, not as the likely need does; nothing where more is there', () => {
    expect(judge(stock({ toBuyMl: 1 }), 0.6, 4)?.toBuyMl).toBe(4);
    expect(judge(stock({ toBuyMl: 1 }), 0.2, -4)?.toBuyMl).toBe(0);
    expect(judge(stock({ toBuyMl: 1 }), 0.2)?.toBuyMl).toBe(0);
  });

  it('keeps all else', () => {
    const one = stock({ keepMl: 2, runningLow: true, leftAfterMl: 1 });
    expect(judge(one, 0.05, 0)).toEqual({ ...one, state: 'enough', toBuyMl: 0 });
  });
});
