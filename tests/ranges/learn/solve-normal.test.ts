import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deviationsOf, type Predicted, rootOf, solveNormal } from '../../../src/ranges/learn/solve-normal.js';

/** Measurements that go with the deviates in proportion: `offset + slopes z`. */
const linear =
  (offsets: readonly number[], slopes: readonly (readonly number[])[]) =>
  (z: readonly number[]): Predicted => ({
    values: offsets.map((offset, row) =>
      (slopes[row] ?? []).reduce((sum, slope, at) => sum + slope * (z[at] ?? 0), offset),
    ),
    slopes,
  });

describe('the normal-normal update', () => {
  // Hoff 2009, A First Course in Bayesian Statistical Methods, section 5.2: wing lengths of nine midges, prior normal
  // with mean 1.9 and deviation 0.95, variance of the data 0.017: posterior mean 1.805, variance 0.002. From memory.
  it('is that of a textbook', () => {
    const midges = [1.64, 1.7, 1.72, 1.74, 1.82, 1.82, 1.82, 1.9, 2.08];
    const { mean, covariance } = solveNormal(
      1,
      linear(
        midges.map(() => 1.9),
        midges.map(() => [0.95]),
      ),
      () => midges.map((value) => ({ value, deviation: Math.sqrt(0.017) })),
    );
    expect(1.9 + 0.95 * (mean[0] ?? 0)).toBeCloseTo(1.805, 3);
    expect(0.95 ** 2 * (covariance[0]?.[0] ?? 0)).toBeCloseTo(0.002, 3);
  });

  it('of one deviate weighs prior and measurements by their precisions', () => {
    const number = fc.double({ min: -5, max: 5, noNaN: true });
    const deviation = fc.double({ min: 0.1, max: 5, noNaN: true });
    const measured = fc.array(fc.record({ value: number, deviation }), { maxLength: 6 });
    fc.assert(
      fc.property(number, deviation, measured, (prior, priorDeviation, rows) => {
        const { mean, covariance } = solveNormal(
          1,
          linear(
            rows.map(() => prior),
            rows.map(() => [priorDeviation]),
          ),
          () => rows,
        );
        // The closed form: precisions add up, means are weighed by them.
        const precisions = [1 / priorDeviation ** 2, ...rows.map((row) => 1 / row.deviation ** 2)];
        const precision = precisions.reduce((sum, one) => sum + one, 0);
        const values = [prior, ...rows.map((row) => row.value)];
        const expected =
          values.reduce((sum, value, at) => sum + value * (precisions[at] ?? 0), 0) / precision;
        expect(prior + priorDeviation * (mean[0] ?? 0)).toBeCloseTo(expected, 6);
        expect(priorDeviation ** 2 * (covariance[0]?.[0] ?? 0)).toBeCloseTo(1 / precision, 9);
      }),
    );
  });

  it('of two deviates is the closed form (I + J’WJ)^-1, J’W(y - p)', () => {
    const number = fc.double({ min: -3, max: 3, noNaN: true });
    const row = fc.record({
      a: number,
      b: number,
      value: number,
      deviation: fc.double({ min: 0.2, max: 3, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 5 }), (rows) => {
        let [aa, ab, bb, ya, yb] = [1, 0, 1, 0, 0];
        for (const { a, b, value, deviation } of rows) {
          const weight = 1 / deviation ** 2;
          [aa, ab, bb] = [aa + a * a * weight, ab + a * b * weight, bb + b * b * weight];
          [ya, yb] = [ya + a * weight * (value - 0.5), yb + b * weight * (value - 0.5)];
        }
        const determinant = aa * bb - ab * ab;
        const { mean, covariance } = solveNormal(
          2,
          linear(
            rows.map(() => 0.5),
            rows.map(({ a, b }) => [a, b]),
          ),
          () => rows,
        );
        expect(mean[0]).toBeCloseTo((bb * ya - ab * yb) / determinant, 6);
        expect(mean[1]).toBeCloseTo((aa * yb - ab * ya) / determinant, 6);
        expect(covariance[0]?.[0]).toBeCloseTo(bb / determinant, 9);
        expect(covariance[0]?.[1]).toBeCloseTo(-ab / determinant, 9);
        expect(covariance[1]?.[0]).toBeCloseTo(-ab / determinant, 9);
        expect(covariance[1]?.[1]).toBeCloseTo(aa / determinant, 9);
      }),
    );
  });

  it('without measurements leaves the prior: mean 0, deviation 1, independent', () => {
    const none = solveNormal(
      2,
      () => ({ values: [], slopes: [] }),
      () => [],
    );
    expect(none).toEqual({
      mean: [0, 0],
      covariance: [
        [1, 0],
        [0, 1],
      ],
    });
  });

  it('of a bent prediction ends where prior and measurement pull alike: exp z = 20, measured to 1', () => {
    const bent = (z: readonly number[]): Predicted => {
      const value = Math.exp(z[0] ?? 0);
      return { values: [value], slopes: [[value]] };
    };
    const { mean } = solveNormal(1, bent, () => [{ value: 20, deviation: 1 }]);
    const z = mean[0] ?? 0;
    expect(Math.exp(z) * (20 - Math.exp(z))).toBeCloseTo(z, 4);
    expect(z).toBeCloseTo(Math.log(20), 1);
  });

  it('weighs measurements by what is predicted at the end, and tells predictions how wide the belief is', () => {
    const heard: number[] = [];
    const predict = (z: readonly number[], spread: readonly number[]): Predicted => {
      heard.push(spread[0] ?? Number.NaN);
      return { values: [10 + (z[0] ?? 0)], slopes: [[1]] };
    };
    const { mean, covariance } = solveNormal(1, predict, ([predicted = 0]) => [
      { value: 12, deviation: predicted / 10 },
    ]);
    // Precision 1 + 1 / (p / 10)^2 with p = 10 + z, and z = (12 - p) / (p / 10)^2.
    const z = mean[0] ?? 0;
    expect(z).toBeCloseTo((2 - z) / ((10 + z) / 10) ** 2, 6);
    expect(covariance[0]?.[0]).toBeCloseTo(1 / (1 + 1 / ((10 + z) / 10) ** 2), 6);
    expect(heard[0]).toBe(1);
    expect(heard.at(-1)).toBeCloseTo(deviationsOf(covariance)[0] ?? 0, 5);
  });
});

describe('the root of a covariance', () => {
  // By hand: L L' multiplied out.
  it.each([
    [[[4]], [[2]]],
    [
      [
        [4, 2],
        [2, 5],
      ],
      [
        [2, 0],
        [1, 2],
      ],
    ],
    [
      [
        [25, 15, -5],
        [15, 18, 0],
        [-5, 0, 11],
      ],
      [
        [5, 0, 0],
        [3, 3, 0],
        [-1, 1, 3],
      ],
    ],
  ])('of %j is %j', (matrix, root) => {
    expect(rootOf(matrix)).toEqual(root);
  });

  it('of a deviate that is known for sure is 0', () => {
    expect(rootOf([[0]])).toEqual([[0]]);
  });
});
