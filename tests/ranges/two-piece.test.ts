// The two-piece lognormal: P10, median and P90 are the registry's low, likely and high.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assume, z90 } from '../../src/assumptions/look-up.js';
import { registry } from '../../src/assumptions/registry.js';
import type { Assumption } from '../../src/model/assumption.js';
import { quantileOf } from '../../src/model/quantiles.js';
import { drawFactors } from '../../src/ranges/draw-factors.js';
import { isExact, twoPieceOf, valueAt } from '../../src/ranges/two-piece.js';
import { normalDistribution } from './measure-columns.js';

const of = (low: number, likely: number, high: number, unit = ''): Assumption => ({
  ...{ name: 'film', low, likely, high, unit },
  ...{ mark: 'from memory', source: '' },
});

describe('a two-piece lognormal', () => {
  it('has the standard normal’s 90 % quantile for P10 and P90', () => {
    // 1.2815515655446004: NIST/SEMATECH e-Handbook, table of the normal distribution, to more digits.
    expect(z90).toBeCloseTo(1.2815515655446004, 7);
    expect(normalDistribution(z90)).toBeCloseTo(0.9, 6);
  });

  it('30 / 50 / 80 has s 0.3986 below and 0.3667 above', () => {
    const { below, above } = twoPieceOf(of(30, 50, 80));
    expect(below).toBeCloseTo(Math.log(50 / 30) / z90, 12);
    expect([below, above]).toEqual([expect.closeTo(0.3986, 4), expect.closeTo(0.3667, 4)]);
  });

  it('gives low, likely and high at their deviates, exactly', () => {
    for (const one of registry.values()) {
      const piece = twoPieceOf(one);
      expect(valueAt(piece, 0), one.name).toBe(one.likely);
      if (isExact(piece)) continue;
      expect(valueAt(piece, -z90) / one.low, one.name).toBeCloseTo(1, 12);
      expect(valueAt(piece, z90) / one.high, one.name).toBeCloseTo(1, 12);
    }
  });

  it('rises with the deviate, and a share never passes the whole', () => {
    const positive = fc.double({ min: 0.01, max: 10, noNaN: true });
    const deviate = fc.double({ min: -6, max: 6, noNaN: true });
    fc.assert(
      fc.property(positive, positive, deviate, deviate, (down, up, one, other) => {
        const piece = twoPieceOf(of(0.5 / (1 + down), 0.5, 0.5 * (1 + up), 'of the paint put out'));
        expect(valueAt(piece, Math.min(one, other))).toBeLessThanOrEqual(
          valueAt(piece, Math.max(one, other)),
        );
        expect(valueAt(piece, one)).toBeLessThanOrEqual(1);
      }),
    );
  });

  it('of an exact value, or of 0, has no spread', () => {
    expect(isExact(twoPieceOf(of(5, 5, 5)))).toBe(true);
    expect(isExact(twoPieceOf(of(0, 0, 0)))).toBe(true);
    expect(valueAt(twoPieceOf(of(5, 5, 5)), 3)).toBe(5);
  });
});

describe('drawn factors', () => {
  const drawing = { draws: 100_000, seed: 1 };
  const beliefs = { assumptions: registry, joint: undefined };
  const doubtful = [...registry.values()].filter((one) => !isExact(twoPieceOf(one)));
  const sample = [
    'brush wet film',
    'brush transfer',
    'spray can leftover',
    'dress clothed',
    'density',
    'painter',
  ];
  const factors = drawFactors(sample, beliefs, drawing);

  it('lie about P10, P50 and P90 as far as 100,000 draws may', () => {
    // A quantile's rank is off by sqrt(p (1 - p) / n) of the draws; four of these.
    for (const name of sample) {
      const { low, likely, high } = assume(registry, name);
      const column = factors.get(name)?.values ?? new Float64Array();
      for (const [p, value] of [
        [0.1, low],
        [0.5, likely],
        [0.9, high],
      ] as const) {
        const error = 4 * Math.sqrt((p * (1 - p)) / column.length);
        expect(quantileOf(column, p - error), `${name} P${100 * p}`).toBeLessThan(value);
        expect(quantileOf(column, p + error), `${name} P${100 * p}`).toBeGreaterThan(value);
      }
    }
  });

  it('are drawn for what is in doubt and for nothing else', () => {
    expect(doubtful.length).toBeGreaterThan(40);
    const all = drawFactors(registry.keys(), beliefs, { draws: 2, seed: 1 });
    expect([...all.keys()]).toEqual(doubtful.map(({ name }) => name));
  });

  it('stay the same where others join them', () => {
    const few = { draws: 100, seed: 1 };
    const alone = drawFactors(['painter'], beliefs, few);
    expect(alone.get('painter')).toEqual(drawFactors(sample, beliefs, few).get('painter'));
  });
});
