import { describe, expect, it } from 'vitest';
import { fitSlope } from '../../../src/ranges/learn/fit-slope.js';

const pairs = (x: readonly number[], y: readonly number[]) =>
  x.map((one, at) => ({ x: one, y: y[at] ?? Number.NaN }));
const from = (first: number, count: number): number[] => Array.from({ length: count }, (_, at) => first + at);

describe('a line through the origin', () => {
  // NIST Statistical Reference Datasets, linear regression, certified values of NoInt1 and NoInt2.
  it.each([
    ['NoInt1', pairs(from(60, 11), from(130, 11)), 2.07438016528926, 0.0165289256198347, 3.56753034006338],
    ['NoInt2', pairs([4, 5, 6], [3, 4, 4]), 0.727272727272727, 0.0420827318078432, 0.369274472937998],
  ])('%s of NIST StRD', (_, given, slope, deviation, residual) => {
    const fitted = fitSlope(given);
    expect(fitted.slope).toBeCloseTo(slope, 13);
    expect(fitted.deviation).toBeCloseTo(deviation, 13);
    expect(fitted.residual).toBeCloseTo(residual, 12);
  });

  it('through one pair has its slope and no deviation; without pairs, or with zeros only, it is 1', () => {
    expect(fitSlope([{ x: 2, y: 3 }])).toEqual({ slope: 1.5, deviation: 0, residual: 0 });
    expect(fitSlope([])).toEqual({ slope: 1, deviation: 0, residual: 0 });
    expect(fitSlope([{ x: 0, y: 3 }])).toEqual({ slope: 1, deviation: 0, residual: 0 });
  });
});
