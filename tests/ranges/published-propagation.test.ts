// Published cases of propagated uncertainty, and two closed forms, through the tool's own streams, factors, formula and quantiles.
import { describe, expect, it } from 'vitest';
import { z90 } from '../../src/assumptions/look-up.js';
import { registry } from '../../src/assumptions/registry.js';
import type { Assumption, Assumptions } from '../../src/model/assumption.js';
import { quantileOf, rangeOf } from '../../src/model/quantiles.js';
import { drawFactors, drawNormals } from '../../src/ranges/draw-factors.js';
import { openStream } from '../../src/ranges/open-stream.js';
import { openPutOut } from '../../src/ranges/put-out.js';
import { deviationOf, meanOf } from './measure-columns.js';

const drawing = { draws: 1_000_000, seed: 1 };
const normal = (name: string, mean: number, deviation: number): Float64Array =>
  drawNormals(name, drawing).map((z) => mean + deviation * z);
const uniform = (name: string): Float64Array => {
  const stream = openStream(drawing.seed, name);
  return Float64Array.from({ length: drawing.draws }, () => stream.uniform());
};
const at = (column: Float64Array | undefined, draw: number): number => column?.[draw] ?? Number.NaN;
const sumOf = (columns: readonly Float64Array[]): Float64Array =>
  new Float64Array(drawing.draws).map((_, draw) => columns.reduce((sum, one) => sum + at(one, draw), 0));

describe('a product of four factors, c = 0.15, 0.20, 0.10, 0.25', () => {
  const spreads = [0.15, 0.2, 0.1, 0.25];
  const lognormal = (likely: number, c: number, name: string): Assumption => {
    const stretch = Math.exp(z90 * Math.sqrt(Math.log(1 + c * c)));
    const [low, high] = [likely / stretch, likely * stretch];
    return { name, low, likely, high, unit: '', mark: 'yours', source: '' };
  };
  const exact = (name: string, likely: number): Assumption => ({ ...lognormal(likely, 0, name) });
  const plain = ['brush wet film', 'brush transfer', 'painter'].map((name) => exact(name, 1));
  const four = spreads.map((c, place) => lognormal(2 + place, c, `factor ${place}`));
  const names = four.map(({ name }) => name);
  const assumptions: Assumptions = new Map(
    [...registry.values(), ...plain, ...four].map((one) => [one.name, one]),
  );
  const factors = drawFactors(
    [...names, ...plain.map(({ name }) => name)],
    { assumptions, joint: undefined },
    drawing,
  );
  const columnOf = (name: string): Float64Array | undefined => factors.get(name)?.values;
  const putOut = openPutOut({ assumptions, figures: new Map(), columnOf, draws: drawing.draws });
  const films = [{ method: 'brush' as const, target: '', factors: names, onFigureMl: 1 }];
  const product = putOut({ films, leftovers: new Map() });

  it('has the relative deviation 0.3757 of Goodman 1960 (JASA 55:708): 1 + CV2 is the product of 1 + c2', () => {
    const exactly = Math.sqrt(spreads.reduce((total, c) => total * (1 + c * c), 1) - 1);
    expect(exactly).toBeCloseTo(0.3757141533, 9);
    // The error of a deviation of this shape is about 0.1 % at a million draws.
    expect(Math.abs(deviationOf(product) / meanOf(product) / exactly - 1)).toBeLessThan(0.005);
  });

  it('which the first order of the GUM (JCGM 100:2008, 5.1.6), 0.3674, falls a fortieth short of', () => {
    const firstOrder = Math.hypot(...spreads);
    expect(firstOrder).toBeCloseTo(0.3674234614, 9);
    expect(deviationOf(product) / meanOf(product)).toBeGreaterThan(firstOrder * 1.015);
  });

  it('as lognormals has s 0.36338 and P10, P90 at 0.6277 and 1.5931 of the median (computed from the formula)', () => {
    const logs = product.map(Math.log);
    expect(Math.abs(deviationOf(logs) - 0.3633817205)).toBeLessThan(0.0011);
    const { low, high } = rangeOf(product);
    // A quantile of the log is off by sqrt(p (1 - p) / n) / density = 0.0006; four of these.
    expect(Math.abs(low / 0.627700327 - 1)).toBeLessThan(0.0025);
    expect(Math.abs(high / 1.5931169015 - 1)).toBeLessThan(0.0025);
    expect(Math.abs(quantileOf(product, 0.5) - 1)).toBeLessThan(0.002);
  });
});

describe('NIST TN 1900 (Possolo 2015), example E3: viscosity of a solution, all inputs normal', () => {
  const c = normal('calibration', 4.63, 0.0463);
  const standardTime = normal('time of the standard', 36.6, 5.49);
  const time = normal('time', 61, 6.1);
  const ball = normal('density of the ball', 2217, 0.5);
  const standard = normal('density of the standard', 810, 0.5);
  const solution = normal('density of the solution', 1180, 0.5);
  const [muC, tC, tM, rB, rC, rM] = [c, standardTime, time, ball, standard, solution];
  const viscosity = muC.map(
    (mu, draw) =>
      (mu * at(tM, draw) * (at(rB, draw) - at(rM, draw))) / (at(tC, draw) * (at(rB, draw) - at(rC, draw))),
  );

  it('has mean 5.82, deviation 1.11 and 95 % between 4.05 and 8.39', () => {
    expect(meanOf(viscosity)).toBeCloseTo(5.82, 1);
    expect(Math.abs(meanOf(viscosity) - 5.82)).toBeLessThan(0.01);
    expect(Math.abs(deviationOf(viscosity) - 1.11)).toBeLessThan(0.02);
    expect(Math.abs(quantileOf(viscosity, 0.025) - 4.05)).toBeLessThan(0.02);
    expect(Math.abs(quantileOf(viscosity, 0.975) - 8.39)).toBeLessThan(0.03);
  });
});

describe('JCGM 101:2008, sums of four', () => {
  const names = ['one', 'two', 'three', 'four'];

  it('9.2.2: standard normals: deviation 2.0, 95 % within 3.92', () => {
    const sum = sumOf(names.map((name) => normal(name, 0, 1)));
    expect(Math.abs(deviationOf(sum) - 2)).toBeLessThan(0.006);
    expect([quantileOf(sum, 0.025), quantileOf(sum, 0.975)]).toEqual([
      expect.closeTo(-3.92, 1),
      expect.closeTo(3.92, 1),
    ]);
    expect(Math.abs(quantileOf(sum, 0.975) - quantileOf(sum, 0.025) - 7.84)).toBeLessThan(0.03);
  });

  it('9.2.3: rectangular ones of deviation 1: 95 % within 3.88', () => {
    const half = Math.sqrt(3);
    const sum = sumOf(names.map((name) => uniform(name).map((share) => half * (2 * share - 1))));
    expect(Math.abs(deviationOf(sum) - 2)).toBeLessThan(0.006);
    expect(Math.abs(quantileOf(sum, 0.975) - quantileOf(sum, 0.025) - 7.76)).toBeLessThan(0.03);
  });
});

describe('the product of two even numbers from 0 to 1 (closed form)', () => {
  const other = uniform('other');
  const product = uniform('one').map((share, draw) => share * at(other, draw));

  it('has mean 1/4, P5 0.0087, median 0.1867, P95 0.7009: its distribution is x (1 - ln x)', () => {
    const distribution = (x: number): number => x * (1 - Math.log(x));
    expect(Math.abs(meanOf(product) - 1 / 4)).toBeLessThan(0.001);
    for (const [p, value] of [
      [0.05, 0.0087049407],
      [0.5, 0.1866823089],
      [0.95, 0.7009200073],
    ] as const) {
      expect(distribution(value)).toBeCloseTo(p, 8);
      // The share below a drawn quantile is off by sqrt(p (1 - p) / n); four of these.
      const error = 4 * Math.sqrt((p * (1 - p)) / drawing.draws);
      expect(Math.abs(distribution(quantileOf(product, p)) - p)).toBeLessThan(error);
    }
  });
});
