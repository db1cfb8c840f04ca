import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coatOpacity, coatsToHide } from '../../src/colour/count-coats.js';

const alone = (opacity: number, thin = 0): number => coatOpacity([{ share: 1, opacity, thin }]);

describe('hiding', () => {
  // Contrast ratio 0.98 counts as full hiding (practice with ISO 6504-3); 1 - (1 - o)^n, worked out.
  it.each([
    [0.5, 6],
    [0.6, 5],
    [0.7, 4],
    [0.8, 3],
    [0.9, 2],
    [0.98, 1],
  ])('an opacity of %f reaches 0.98 in %i coats', (opacity, coats) => {
    expect(coatsToHide({ dE00: 1, opacity, limit: 0.02 })).toBe(coats);
  });

  // 60 x 0.3^n: 18, 5.4, 1.62. 60 x 0.13^n: 7.8, 1.01. 60 x 0.05^n: 3, 0.15.
  it.each([
    [60, 0.7, 3],
    [60, 0.87, 2],
    [60, 0.95, 2],
    [39, 0.95, 1],
    [6.6, 0.7, 1],
    [6.7, 0.7, 2],
    [2, 0.7, 1],
    [0, 0.7, 1],
    [100, 1, 1],
  ])('dE00 %f under an opacity of %f, limit 2: %i coats', (dE00, opacity, coats) => {
    expect(coatsToHide({ dE00, opacity, limit: 2 })).toBe(coats);
  });

  it('is never reached by a coat that hides nothing, or under a limit of 0', () => {
    expect(coatsToHide({ dE00: 10, opacity: 0, limit: 2 })).toBeUndefined();
    expect(coatsToHide({ dE00: 10, opacity: 0.5, limit: 0 })).toBeUndefined();
  });

  it('takes the least number that does: one coat fewer shows', () => {
    const range = fc.record({
      dE00: fc.double({ min: 0.1, max: 100, noNaN: true }),
      opacity: fc.double({ min: 0.05, max: 0.999, noNaN: true }),
    });
    fc.assert(
      fc.property(range, ({ dE00, opacity }) => {
        const coats = coatsToHide({ dE00, opacity, limit: 2 }) ?? 0;
        const shows = (n: number): number => dE00 * (1 - opacity) ** n;
        expect(coats).toBeGreaterThanOrEqual(1);
        expect(shows(coats)).toBeLessThanOrEqual(2 + 1e-9);
        if (coats > 1) expect(shows(coats - 1)).toBeGreaterThan(2 - 1e-9);
      }),
    );
  });
});

describe('one coat', () => {
  it('hides less when thinned: 1 - (1 - o)^(1 / (1 + thin))', () => {
    expect(alone(0.7)).toBeCloseTo(0.7, 12);
    expect(alone(0.7, 1)).toBeCloseTo(1 - Math.sqrt(0.3), 12);
    expect(alone(0.91, 1)).toBeCloseTo(0.7, 12);
  });

  it('of a mix hides as its paints by their shares; a mix of one paint with itself is that paint', () => {
    const twice = [
      { share: 0.4, opacity: 0.87, thin: 0 },
      { share: 0.6, opacity: 0.87, thin: 0 },
    ];
    expect(coatOpacity(twice)).toBeCloseTo(0.87, 12);
    // 0.05^0.5 x 0.3^0.5 = 0.015^0.5 = 0.12247 stays open.
    const unlike = [
      { share: 0.5, opacity: 0.95, thin: 0 },
      { share: 0.5, opacity: 0.7, thin: 0 },
    ];
    expect(coatOpacity(unlike)).toBeCloseTo(1 - 0.122474487, 8);
  });

  it('of nothing hides nothing; no opacity lies outside 0 to 1', () => {
    expect(coatOpacity([])).toBe(0);
    expect(alone(1.5)).toBe(1);
    expect(alone(-1)).toBe(0);
  });
});
