import { describe, expect, it } from 'vitest';
import { shareToCover, thresholdOf } from '../../../src/order/policy/threshold.js';

describe('the newsvendor', () => {
  // Nahmias, Production and Operations Analysis, the chapter on inventory under uncertain demand: a paper is bought at 0.25, sold at
  // 0.75, and worth 0.10 when unsold; demand normal, mean 11.73, deviation 4.74. Ratio 0.77, z 0.74, order 15.24, so 15.
  // (Prices from memory.)
  it('covers 0.77 of the cases, which is 15 papers', () => {
    const ratio = shareToCover(0.75 - 0.25, 0.25 - 0.1);
    expect(ratio).toBeCloseTo(0.77, 2);
    const z = 0.74;
    expect(standardNormal(z)).toBeCloseTo(ratio, 2);
    expect(11.73 + z * 4.74).toBeCloseTo(15.24, 2);
  });

  it.each([
    [1, 0, 1],
    [0, 1, 0],
    [1, 1, 0.5],
    [0, 0, 0.5],
  ])('short %d, over %d: %d', (short, over, share) => {
    expect(shareToCover(short, over)).toBe(share);
  });
});

/** Abramowitz & Stegun 1964, 26.2.17; off by less than 7.5e-8. */
function standardNormal(z: number): number {
  const t = 1 / (1 + 0.2316419 * z);
  const terms = [0.31938153, -0.356563782, 1.781477937, -1.821255978, 1.330274429];
  const sum = terms.reduce((total, term, at) => total + term * t ** (at + 1), 0);
  return 1 - (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * sum;
}

describe('a pot is bought now', () => {
  it.each([
    ['a pot of 2.95, postage 3.95, as much again', 295, 395, undefined, 295 / 1085],
    ['a can of 12.90', 1290, 395, undefined, 1290 / 2080],
    ['where another order is worth nothing beyond its postage', 295, 395, 0, 295 / 690],
    ['where it is worth a ten', 295, 395, 1000, 295 / 1690],
    [
      'where postage is free and an order is no trouble: only where it is sure to be needed',
      295,
      0,
      undefined,
      1,
    ],
    ['that costs nothing: all but what is hardly ever needed', 0, 395, undefined, 0.01],
    ['that costs nearly nothing: no less', 1, 395, undefined, 0.01],
    ['that costs nothing, as an order does: from an even chance', 0, 0, undefined, 0.5],
  ])('%s', (_, priceMinor, postageMinor, againMinor, threshold) => {
    expect(thresholdOf({ priceMinor, postageMinor, againMinor })).toBeCloseTo(threshold, 12);
  });
});
