import { expect, it } from 'vitest';
import { roundMl } from '../../../src/report/reorder/round-list-ml.js';

it.each([
  [3.1459, 3.15],
  [3.1, 3.1],
  [0.0001, 0.01],
  [0, 0],
  [2.3, 2.3],
])('%d ml are listed as %d', (ml, shown) => {
  expect(roundMl(ml)).toBe(shown);
});
