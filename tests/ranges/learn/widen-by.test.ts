import { describe, expect, it } from 'vitest';
import { drawNormals } from '../../../src/ranges/draw-factors.js';
import { rarelyPassed, widenBy } from '../../../src/ranges/learn/widen-by.js';

const rowsOf = (...values: number[]) => values.map((value) => ({ value, deviation: 0.5 }));
/** Each row is told the same, for one degree of freedom. */
const toldOf = (value: number, rows: number) => ({ values: new Array<number>(rows).fill(value), learned: 1 });

describe('what chance passes once in a hundred cases', () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods 1.3.6.7.4, upper critical values of chi squared, probability 0.99.
  it.each([
    [1, 6.635],
    [2, 9.21],
    [3, 11.345],
    [4, 13.277],
    [5, 15.086],
    [6, 16.812],
    [7, 18.475],
    [8, 20.09],
    [9, 21.666],
    [10, 23.209],
    [20, 37.566],
    [30, 50.892],
    [50, 76.154],
    [100, 135.807],
  ])('of %i degrees is %f, within a hundredth', (degrees, chiSquared) => {
    expect(rarelyPassed(degrees) / chiSquared).toBeGreaterThan(0.99);
    expect(rarelyPassed(degrees) / chiSquared).toBeLessThan(1.01);
  });
});

describe('how much wider', () => {
  it('is not at all for rows that agree within their errors, and for a single one whatever it says', () => {
    // Chi squared 0.5^2 + 1.5^2 = 2.5 of one degree.
    expect(widenBy(toldOf(2, 2), rowsOf(2.25, 2.75))).toBe(1);
    expect(widenBy(toldOf(2, 1), rowsOf(9))).toBe(1);
    expect(widenBy({ values: [], learned: 0 }, [])).toBe(1);
  });

  it('begins where chi squared passes that', () => {
    // Two rows as far to either side: of one degree, and of two where they taught nothing.
    const apart = (chiSquared: number) => rowsOf(2, 2 + 0.5 * Math.sqrt(chiSquared));
    for (const [learned, degrees] of [
      [1, 1],
      [0, 2],
      [1.9, 1],
      [0.5, 1.5],
    ] as const) {
      const least = rarelyPassed(degrees);
      expect(widenBy({ values: [2, 2], learned }, apart(0.999 * least))).toBe(1);
      expect(widenBy({ values: [2, 2], learned }, apart(1.001 * least))).toBeCloseTo(
        Math.sqrt((1.001 * least) / degrees),
        9,
      );
    }
  });

  it('is the root of chi squared over its degrees where rows contradict one another', () => {
    // 6, 0.05, 5 and 0.02 ml about 2.5: 7^2 + 4.9^2 + 5^2 + 4.96^2 = 122.6 of three degrees.
    expect(widenBy(toldOf(2.5, 4), rowsOf(6, 0.05, 5, 0.02))).toBeCloseTo(
      Math.sqrt((7 ** 2 + 4.9 ** 2 + 5 ** 2 + 4.96 ** 2) / 3),
      12,
    );
  });

  // Of 40,000 logs a share of 0.01 is seen within 0.0005.
  it.each([2, 3, 4, 6, 10])(
    'is seen by chance in one log of a hundred with %i rows about their mean',
    (rows) => {
      const logs = 40_000;
      const errors = drawNormals(`errors of ${rows}`, { draws: rows * logs, seed: 1 });
      let widened = 0;
      for (let log = 0; log < logs; log++) {
        const values = [...errors.subarray(rows * log, rows * (log + 1))].map((z) => 5 + 0.5 * z);
        const mean = values.reduce((sum, value) => sum + value, 0) / rows;
        if (widenBy(toldOf(mean, rows), rowsOf(...values)) > 1) widened += 1 / logs;
      }
      expect(widened).toBeGreaterThan(0.0085);
      expect(widened).toBeLessThan(0.0115);
    },
  );
});
