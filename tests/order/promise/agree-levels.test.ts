// Promises side by side, by hand.
import { expect, it } from 'vitest';
import { agreeLevels } from '../../../src/order/promise/agree-levels.js';
import type { FoundPromise } from '../../../src/order/promise/find-promise.js';
import type { OpenPromise } from '../../../src/order/promise/open-promise.js';
import type { Way } from '../../../src/order/promise/way.js';

/** Four draws lack 1, 2, 3 and 4 ml of one paint. */
const lacks = Float64Array.of(1, 2, 3, 4);
const asked = [{ paint: 'red', lackMl: lacks, ml: lacks, rising: lacks, gains: new Map() }];
const open = { asked, draws: 4 } as unknown as OpenPromise;

const way = (totalMinor: number, fails: number[]): Way => ({
  ...{ wares: [], counts: [], totalMinor, fails: Uint8Array.from(fails) },
  failing: fails.reduce((sum, one) => sum + one, 0),
});
const found = (one: Way | undefined, leastMinor: number, mayFail: number): FoundPromise => ({
  ...{ needs: new Map([['red', 9]]), way: one, leastMinor, mayFail },
});

it('what costs less for a surer promise does for a less sure one, which then needs what that covers', () => {
  const [, lower] = agreeLevels(
    [found(way(500, [0, 0, 0, 0]), 400, 0), found(way(600, [0, 0, 1, 1]), 300, 2)],
    open,
  );
  expect(lower).toMatchObject({ way: { totalMinor: 500 }, leastMinor: 300 });
  // All four are met, but two may fail: 2 ml do.
  expect(lower?.needs).toEqual(new Map([['red', 2]]));
});

it('what nothing undercuts for a less sure promise, nothing does for a surer one', () => {
  const pair = [found(way(800, [0, 0, 0, 0]), 500, 0), found(way(700, [0, 0, 1, 1]), 650, 2)];
  expect(agreeLevels(pair, open).map(({ leastMinor }) => leastMinor)).toEqual([650, 650]);
  expect(agreeLevels(pair, open).map((one) => one.way?.totalMinor)).toEqual([800, 700]);
});

it('a promise that the offers do not reach lends nothing', () => {
  const pair = [found(undefined, 0, 0), found(way(700, [0, 0, 1, 1]), 650, 2)];
  const agreed = agreeLevels(pair, open);
  expect(agreed.map((one) => one.way?.totalMinor)).toEqual([undefined, 700]);
  expect(agreed[0]?.needs).toEqual(new Map([['red', 9]]));
});
