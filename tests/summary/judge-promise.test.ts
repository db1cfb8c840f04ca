// How the promise of the small plan stands: asked 80%, kept in 23.8% of all, in 82.1% of what is on offer. By hand.
import { describe, expect, it } from 'vitest';
import type { Order } from '../../src/model/order.js';
import type { Promised } from '../../src/model/ranges.js';
import { judgePromise } from '../../src/summary/judge-promise.js';
import { smallPromised } from '../report/a-small-doubt.js';
import { smallOrder } from '../report/a-small-shelf.js';

const judge = (promised: Partial<Promised> = {}, order: Partial<Order> = {}) =>
  judgePromise({ promised: { ...smallPromised, ...promised }, order: { ...smallOrder, ...order } });
const chance = (share: number, error = 0) => ({ chance: share, error });

describe('the standing', () => {
  it('is apart: kept but for the paint that nobody sells', () => {
    expect(judge()).toMatchObject({ standing: 'apart', reached: { chance: 0.8213 }, isHeldBack: true });
  });

  it('is kept within three standard errors', () => {
    // 0.788 + 3 x 0.004 = 0.8.
    expect(judge({ metOnFreshDraws: chance(0.7881, 0.004) }).standing).toBe('kept');
    const missed = { metOnFreshDraws: chance(0.7879, 0.004), metOfOffered: chance(0.7879, 0.004) };
    expect(judge(missed).standing).toBe('missed');
  });

  it('is that of nothing sold where nothing can be ordered', () => {
    expect(judge({}, { lines: [] }).standing).toBe('not sold');
    expect(judge({}, { lines: [], unmet: [] }).standing).toBe('apart');
  });
});

it('is held back from more than a twentieth of a per cent on', () => {
  const apart = (by: number) =>
    judge({ metOfOffered: chance(0.5 + by), metOnFreshDraws: chance(0.5) }).isHeldBack;
  expect([apart(0.0004), apart(0.0006)]).toEqual([false, true]);
});

it('knows a surer level, where it does better than the order', () => {
  expect(judge().surer?.surePercent).toBe(95);
  expect(judge({ metOfOffered: chance(0.9571) }).surer).toBeUndefined();
});
