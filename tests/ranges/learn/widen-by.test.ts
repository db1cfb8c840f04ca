import { expect, it } from 'vitest';
import { widenBy } from '../../../src/ranges/learn/widen-by.js';

const rowsOf = (...values: number[]) => values.map((value) => ({ value, deviation: 0.5 }));

it('leaves rows alone that agree within their errors, and a single one whatever it says', () => {
  // Chi squared 0.5^2 + 1.5^2 = 2.5 of one degree; up to 1 + 3 x 1.414 = 5.24 is no wonder.
  expect(widenBy([2, 2], rowsOf(2.25, 2.75))).toBe(1);
  expect(widenBy([2], rowsOf(9))).toBe(1);
  expect(widenBy([], [])).toBe(1);
});

it('widens by the root of chi squared over its degrees where they contradict one another', () => {
  // 6, 0.05, 5 and 0.02 ml about 2.5: 7^2 + 4.9^2 + 5^2 + 4.96^2 = 122.6 of three degrees.
  expect(widenBy([2.5, 2.5, 2.5, 2.5], rowsOf(6, 0.05, 5, 0.02))).toBeCloseTo(
    Math.sqrt((7 ** 2 + 4.9 ** 2 + 5 ** 2 + 4.96 ** 2) / 3),
    12,
  );
});
