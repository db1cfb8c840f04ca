import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rootOf } from '../../../src/ranges/learn/solve-normal.js';
import { whiten } from '../../../src/ranges/learn/whiten.js';

describe('measurements that share an error', () => {
  it('of one each: two readings of error 1 around each of two spans, by hand', () => {
    const spans = [{ deviation: Math.SQRT2 }, { deviation: Math.SQRT2, withBefore: -1 }];
    // 3 / sqrt 2; then (1 + 3 / 2) / sqrt (2 - 1/2).
    const [[first = 0] = [], [second = 0] = []] = whiten(spans, [[3], [1]]);
    expect(first).toBeCloseTo(2.12132, 5);
    expect(second).toBeCloseTo(2.04124, 5);
  });

  it('are each over its deviation where they share none', () => {
    expect(whiten([{ deviation: 2 }, { deviation: 4 }], [[6, 2], [6]])).toEqual([[3, 1], [1.5]]);
  });

  it('are multiplied by the inverse of the root of their covariance', () => {
    const error = fc.double({ min: 0.1, max: 3, noNaN: true });
    const span = fc.record({
      own: error,
      reading: error,
      value: fc.double({ min: -9, max: 9, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(span, { minLength: 1, maxLength: 6 }), (spans) => {
        const begins = (at: number): number => spans[at - 1]?.reading ?? 0;
        const measured = spans.map(({ own, reading }, at) => ({
          deviation: Math.hypot(own, reading, begins(at)),
          withBefore: -(begins(at) ** 2),
        }));
        const covariance = spans.map((_, i) =>
          spans.map((__, j) => {
            if (i === j) return (measured[i]?.deviation ?? 0) ** 2;
            return Math.abs(i - j) === 1 ? -(begins(Math.max(i, j)) ** 2) : 0;
          }),
        );
        const white = whiten(
          measured,
          spans.map(({ value }) => [value]),
        ).flat();
        rootOf(covariance).forEach((row, at) => {
          const back = row.reduce((sum, one, place) => sum + one * (white[place] ?? 0), 0);
          expect(back).toBeCloseTo(spans[at]?.value ?? Number.NaN, 9);
        });
      }),
    );
  });
});
