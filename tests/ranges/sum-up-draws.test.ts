import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drawNormals } from '../../src/ranges/draw-factors.js';
import { shareOfSpread, spreadOf } from '../../src/ranges/sum-up-draws.js';

const column = (...values: number[]): Float64Array => Float64Array.from(values);

const shareOf = (factor: Float64Array, result: Float64Array): number =>
  shareOfSpread(spreadOf(factor), spreadOf(result));

describe('shares of the spread', () => {
  const drawing = { draws: 200_000, seed: 5 };
  const z = (name: string): Float64Array => drawNormals(name, drawing);
  const [a, b, c] = [z('a'), z('b'), z('c')];

  it('of a sum go with the variances: 9, 4 and 1 of 14', () => {
    const sum = a.map((one, at) => 3 * one + 2 * (b[at] ?? 0) + (c[at] ?? 0));
    const shares = [a, b, c].map((one) => shareOf(one, sum));
    // A squared correlation r2 has the error 2 r (1 - r2) / sqrt(n), here at most 0.0017.
    expect(shares).toEqual([9, 4, 1].map((part) => expect.closeTo(part / 14, 2)));
  });

  it('of a product of lognormals are (exp s2 - 1) / (exp sum of s2 - 1): the first-order indices of Sobol 1993', () => {
    const [x, y] = [a.map((one) => Math.exp(0.4 * one)), b.map((one) => Math.exp(0.2 * one))];
    const product = x.map((one, at) => one * (y[at] ?? 0));
    const whole = Math.exp(0.4 ** 2 + 0.2 ** 2) - 1;
    const shareX = (Math.exp(0.4 ** 2) - 1) / whole;
    const shareY = (Math.exp(0.2 ** 2) - 1) / whole;
    expect(Math.abs(shareOf(x, product) - shareX)).toBeLessThan(0.015);
    expect(Math.abs(shareOf(y, product) - shareY)).toBeLessThan(0.015);
    // What both do together is nobody's alone.
    expect(shareX + shareY).toBeLessThan(1);
  });

  it('is 1 for what alone causes it, 0 for what never varies', () => {
    expect(
      shareOf(
        a,
        a.map((one) => -7 * one),
      ),
    ).toBeCloseTo(1, 12);
    expect(shareOf(new Float64Array(3).fill(2), column(1, 2, 3))).toBe(0);
    expect(shareOf(column(1, 2, 3), new Float64Array(3))).toBe(0);
  });

  it('is the same wherever the two stand: only how they vary counts', () => {
    const sum = a.map((one, at) => 3 * one + 2 * (b[at] ?? 0));
    const shifted = (by: number) => sum.map((one) => one + by);
    for (const by of [1, 1e6, -1e6]) expect(shareOf(a, shifted(by))).toBeCloseTo(shareOf(a, sum), 8);
  });

  // Shares of parts that make up the whole of a surface, each 1: their sum differs in its last digit.
  it('is 0 for what differs by rounding alone, a billionth of its mean', () => {
    const rounded = column(1, 1 + 2 ** -52, 1 - 2 ** -53, 1);
    expect(spreadOf(rounded).squares).toBe(0);
    expect(shareOf(rounded, column(1, 2, 3, 4))).toBe(0);
    const deviating = (by: number) => spreadOf(column(7 - 7 * by, 7 + 7 * by)).squares;
    expect(deviating(0.9e-9)).toBe(0);
    expect(deviating(1.1e-9)).toBeCloseTo(2 * (7 * 1.1e-9) ** 2, 20);
    expect(spreadOf(column(-1e-12, 1e-12)).squares).toBeGreaterThan(0);
  });

  it('lies between 0 and 1, whatever was drawn', () => {
    const value = fc.oneof(
      fc.double({ min: -1e9, max: 1e9, noNaN: true }),
      fc.constantFrom(0, 18, 18 + 2 ** -48),
      fc.double({ min: 1e6, max: 1e6 + 1e-6, noNaN: true }),
    );
    const pairs = fc.array(fc.tuple(value, value), { maxLength: 40 });
    fc.assert(
      fc.property(pairs, (drawn) => {
        const share = shareOf(column(...drawn.map(([x]) => x)), column(...drawn.map(([, y]) => y)));
        expect(share).toBeGreaterThanOrEqual(0);
        expect(share).toBeLessThanOrEqual(1);
      }),
    );
  });
});
