import { describe, expect, it } from 'vitest';
import { openStream } from '../../src/ranges/open-stream.js';
import {
  correlationOf,
  deviationOf,
  distanceFrom,
  meanOf,
  momentOf,
  normalDistribution,
} from './measure-columns.js';

const many = 100_000;
const named = (name: string, seed = 1, draws = 5): Float64Array =>
  openStream(seed, name).fillNormal(new Float64Array(draws));

/** The distance that one column in ten thousand passes: `1.95 + 0.2` over the root of its length covers it (Smirnov 1948). */
const mostDistance = 2.2 / Math.sqrt(many);

describe('a stream', () => {
  it('gives the same numbers for the same seed and name, others for another seed or name', () => {
    expect(named('brush wet film')).toEqual(named('brush wet film'));
    expect(named('brush wet film')).not.toEqual(named('brush wet film', 2));
    expect(named('brush wet film')).not.toEqual(named('brush transfer'));
  });

  it('does not give one name under one seed what a name nearby has under the next', () => {
    expect(named('a film', 1)).not.toEqual(named('b film', 2));
    expect(named('film 1', 11)).not.toEqual(named('film 1', 1));
  });

  // Of 10,000 pairs a correlation has deviation 0.01: 0.04 is passed by one in sixteen thousand.
  it.each([
    [
      'names that differ in the last letter',
      (at: number) => [named(`pot ${at}`, 1, 1), named(`pot ${at + 1}`, 1, 1)],
    ],
    ['seeds that follow each other', (at: number) => [named('film', at, 1), named('film', at + 1, 1)]],
    ['two names under one seed', (at: number) => [named('film', at, 1), named('transfer', at, 1)]],
  ])('begins apart for %s', (_, pairOf) => {
    const pairs = Array.from({ length: 10_000 }, (_pair, at) => pairOf(at));
    const [one, other] = [0, 1].map((side) => pairs.map((pair) => pair[side]?.[0] ?? Number.NaN));
    expect(Math.abs(correlationOf(one ?? [], other ?? []))).toBeLessThan(0.04);
  });

  it('is not correlated with others over its length', () => {
    const column = named('reading of Slate 0', 1, 10_000);
    const others = Array.from({ length: 60 }, (_, at) => named(`reading of Slate ${at + 1}`, 1, 10_000));
    for (const other of others) expect(Math.abs(correlationOf(column, other))).toBeLessThan(0.045);
  });
});

describe('uniform numbers', () => {
  const stream = openStream(28, 'uniform');
  const column = Float64Array.from({ length: many }, () => stream.uniform());

  it('have mean 1/2, variance 1/12, and lie between 0 and 1', () => {
    // Standard errors: of the mean sqrt(1/12/n) = 0.0009, of the variance sqrt(1/180/n) = 0.00024.
    expect(Math.abs(meanOf(column) - 1 / 2)).toBeLessThan(0.0036);
    expect(Math.abs(momentOf(column, 2) - 1 / 12)).toBeLessThan(0.001);
    expect(Math.min(...column.slice(0, 1000))).toBeGreaterThan(0);
    expect(column.every((value) => value > 0 && value < 1)).toBe(true);
  });

  it('are spread evenly (Kolmogorov-Smirnov)', () => {
    expect(distanceFrom(column, (value) => value)).toBeLessThan(mostDistance);
  });

  it('do not follow from each other', () => {
    expect(Math.abs(correlationOf(column.slice(1), column.slice(0, -1)))).toBeLessThan(4 / Math.sqrt(many));
  });
});

describe('normal numbers', () => {
  const column = named('normal', 28, many);

  it('have mean 0, deviation 1, no skew, kurtosis 3', () => {
    // Standard errors for normal numbers: 1/sqrt(n), 1/sqrt(2n), sqrt(6/n), sqrt(24/n); four of each.
    expect(Math.abs(meanOf(column))).toBeLessThan(4 / Math.sqrt(many));
    expect(Math.abs(deviationOf(column) - 1)).toBeLessThan(4 / Math.sqrt(2 * many));
    expect(Math.abs(momentOf(column, 3))).toBeLessThan(4 * Math.sqrt(6 / many));
    expect(Math.abs(momentOf(column, 4) / momentOf(column, 2) ** 2 - 3)).toBeLessThan(
      4 * Math.sqrt(24 / many),
    );
  });

  it('follow the normal distribution (Kolmogorov-Smirnov)', () => {
    expect(distanceFrom(column, normalDistribution)).toBeLessThan(mostDistance);
  });

  it('do not follow from each other', () => {
    expect(Math.abs(correlationOf(column.slice(1), column.slice(0, -1)))).toBeLessThan(4 / Math.sqrt(many));
  });
});
