import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceOf, quantileOf, rangeAbout, rangeOf } from '../../src/model/quantiles.js';
import { drawNormals } from '../../src/ranges/draw-factors.js';

const column = (...values: number[]): Float64Array => Float64Array.from(values);
const upTo = (count: number): Float64Array => Float64Array.from({ length: count }, (_, at) => at + 1);

describe('quantiles', () => {
  // Of the numbers 1 to n the quantile is its own rank: nearest to p n + 1/2.
  it.each([
    [10_000, 0.1, 1001],
    [10_000, 0.9, 9001],
    [10_000, 0.5, 5001],
    [1001, 0.5, 501],
    [5, 0.5, 3],
    [10, 0, 1],
    [10, 1, 10],
    [1, 0.9, 1],
  ])('of 1 to %i at %f: %i', (count, p, value) => {
    expect(quantileOf(upTo(count), p)).toBe(value);
    expect(quantileOf(upTo(count).reverse(), p)).toBe(value);
  });

  it('of no draws is 0', () => {
    expect(quantileOf(column(), 0.5)).toBe(0);
    expect(rangeOf(column())).toEqual({ low: 0, high: 0 });
  });

  it('hold eight tenths of the draws between P10 and P90 (JCGM 101:2008, 7.7.2: ranks r and r + q)', () => {
    const { low, high } = rangeOf(upTo(10_000));
    expect(high - low).toBe(8000);
  });

  it('are those of a sorted column, and leave the column as it was', () => {
    const numbers = fc.array(fc.oneof(fc.double({ noNaN: true }), fc.integer({ min: 0, max: 3 })), {
      minLength: 1,
    });
    fc.assert(
      fc.property(numbers, fc.double({ min: 0, max: 1, noNaN: true }), (values, p) => {
        const draws = Float64Array.from(values);
        const rising = draws.slice().sort();
        const rank = Math.min(values.length, Math.max(1, Math.round(p * values.length + 0.5)));
        // Which of -0 and 0 comes first is nobody's business.
        expect(quantileOf(draws, p) === rising[rank - 1]).toBe(true);
        const { low, high } = rangeOf(draws);
        expect([low === quantileOf(draws, 0.1), high === quantileOf(draws, 0.9)]).toEqual([true, true]);
        expect([...draws]).toEqual(values);
      }),
    );
  });
});

describe('a range about what is likely', () => {
  it.each([
    [50, { low: 11, high: 91 }],
    [11, { low: 11, high: 91 }],
    [10, { low: 10, high: 91 }],
    [92, { low: 11, high: 92 }],
  ])('%f among 1 to 100: %j', (likely, range) => {
    expect(rangeAbout(likely, upTo(100))).toEqual(range);
  });
});

describe('chances', () => {
  it.each([
    [5000, 10_000, 0.5, 0.005],
    [8000, 10_000, 0.8, 0.004],
    [0, 10_000, 0, Math.sqrt(1e-4 * 0.9999) / 100],
    [10_000, 10_000, 1, Math.sqrt(1e-4 * 0.9999) / 100],
    [1, 4, 0.25, Math.sqrt(0.1875 / 4)],
  ])('%i of %i: %f, give or take %f', (counted, draws, chance, error) => {
    expect(chanceOf(counted, draws)).toEqual({ chance, error: expect.closeTo(error, 12) });
  });

  it('of no draws are sure', () => {
    expect(chanceOf(0, 0)).toEqual({ chance: 1, error: 0 });
  });

  it('err as often as their error says: two in three within one, 95 % within two', () => {
    // A thousand chances of one half, from 400 normal numbers each.
    const signs = drawNormals('signs', { draws: 400_000, seed: 3 });
    const misses = Array.from({ length: 1000 }, (_, at) => {
      const below = signs.subarray(400 * at, 400 * (at + 1)).filter((z) => z < 0).length;
      const { chance, error } = chanceOf(below, 400);
      return Math.abs(chance - 0.5) / error;
    });
    const within = (errors: number): number => misses.filter((miss) => miss < errors).length / misses.length;
    expect(within(1)).toBeGreaterThan(0.63);
    expect(within(1)).toBeLessThan(0.74);
    expect(within(2)).toBeGreaterThan(0.93);
    expect(within(2)).toBeLessThan(0.98);
  });
});
