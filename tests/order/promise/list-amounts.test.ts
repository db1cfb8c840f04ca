import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { listAmounts } from '../../../src/order/promise/list-amounts.js';

const anyMost = Number.POSITIVE_INFINITY;

describe('amounts of whole pots', () => {
  it('of 12 and 17 ml up to 30, by hand', () => {
    const sizes = [
      { ml: 12, most: anyMost },
      { ml: 17, most: anyMost },
    ];
    expect(listAmounts(sizes, 30, 10)).toEqual([0, 12, 17, 24, 29, 34]);
    expect(listAmounts(sizes, 30, 5)).toBeUndefined();
  });

  it('end where the pots do', () => {
    expect(listAmounts([{ ml: 10, most: 2 }], 99, 10)).toEqual([0, 10, 20]);
    expect(listAmounts([], 5, 10)).toEqual([0]);
  });

  it('count what rounding parts by a hair once', () => {
    const sizes = [
      { ml: 0.1, most: 3 },
      { ml: 0.3, most: 1 },
    ];
    expect(listAmounts(sizes, 0.6, 10)).toHaveLength(7);
  });

  it('are every sum there is, as far as the first that is enough', () => {
    const size = fc.record({ ml: fc.integer({ min: 3, max: 30 }), most: fc.integer({ min: 0, max: 4 }) });
    fc.assert(
      fc.property(fc.array(size, { maxLength: 4 }), fc.integer({ min: 0, max: 90 }), (sizes, to) => {
        let sums = new Set([0]);
        for (const { ml, most } of sizes)
          sums = new Set(
            [...sums].flatMap((sum) => Array.from({ length: most + 1 }, (_, count) => sum + count * ml)),
          );
        const rising = [...sums].sort((a, b) => a - b);
        const enough = rising.findIndex((sum) => sum >= to);
        expect(listAmounts(sizes, to, 1000)).toEqual(enough < 0 ? rising : rising.slice(0, enough + 1));
      }),
    );
  });
});
