// What the small army costs, in cents, and how many units become one row. By hand.
import { describe, expect, it } from 'vitest';
import { mostUnitRows, type UnitSums } from '../../src/model/cost-sums.js';
import { exactMinor } from '../../src/model/money.js';
import type { Costs } from '../../src/model/plan.js';
import { sumCosts } from '../../src/summary/sum-costs.js';
import { ram, smallCosts, smallUnits, wardens } from '../report/a-small-army.js';
import { smallRanges } from '../report/a-small-doubt.js';

const jobs = new Map([
  [wardens, 2],
  [ram, 1],
]);
const sumsOf = (costs: Costs, figureCount = 21) =>
  sumCosts({ costs, ranges: smallRanges, estimate: { jobs }, figureCount });
const minors = ({ whole, remaining, done }: UnitSums): number[] =>
  [whole, remaining, done].map(({ exactMinor: minor }) => minor.toNumber());

describe('the small army', () => {
  const sums = sumsOf(smallCosts);

  it('costs 910.3 of 21 figures, 640 to 1,340', () => {
    expect(sums.perFigure.exactMinor.toNumber()).toBeCloseTo(910.3 / 21, 9);
    expect(sums.perFigure.atLeast).toBe(true);
    expect(sums.perFigureRange).toEqual({ low: 640 / 21, high: 1340 / 21 });
  });

  it('costs least with the ram, most with the wardens', () => {
    const { least, most } = sums.spread ?? {};
    expect([least?.unit, least?.exactMinor.toNumber()]).toEqual(['The ram', 39.3]);
    expect(most?.exactMinor.toNumber()).toBeCloseTo(43.55, 9);
  });

  it('has used 36 of it: the ram’s primer', () => {
    expect(minors(sums.army)).toEqual([910.3, 874.3, 36]);
    expect(sums.units.map(minors)).toEqual([
      [435.5, 435.5, 0],
      [435.5, 435.5, 0],
      [39.3, 3.3, 36],
    ]);
  });

  it('spends 740: 35.24 a figure, rounded to 35; on ten wardens 37 each', () => {
    expect(sums.army.cashPerFigureMinor).toBe(35);
    expect(sums.units.map(({ cashPerFigureMinor }) => cashPerFigureMinor)).toEqual([37, 37, 0]);
  });

  it('gives a unit its figures’ range, and a figure without a price at least nothing', () => {
    expect(sums.units[0]?.wholeRange).toEqual({ low: 304, high: 642 });
    expect(sums.units[2]?.figuresPrice.atLeast).toBe(true);
    expect(sums.units[2]?.figuresPrice.exactMinor.toNumber()).toBe(0);
  });

  it('has its dearest figure in the ram, whatever its likely cost', () => {
    expect(sums.dearestMinor).toBe(68.9);
  });

  it('doubts the wash’s money twice, as two units share a job: 305 against 260 by brush and 276 by can', () => {
    expect(sums.trust.biggestDoubt).toBe('flood transfer');
  });
});

it('rounds half a cent up: 7 for 2 figures is 4 each', () => {
  const [unit] = smallUnits;
  const two = { ...unit, unit: { ...unit.unit, count: 2 }, cashMinor: 7 };
  expect(sumsOf({ ...smallCosts, units: [two] }).units[0]?.cashPerFigureMinor).toBe(4);
});

it('has a range only where something is in doubt', () => {
  const ranges = { ...smallRanges, perFigure: new Map([[wardens, { low: 43.55, high: 43.55 }]]) };
  const { units } = sumCosts({ costs: smallCosts, ranges, estimate: { jobs }, figureCount: 21 });
  expect(units.map(({ wholeRange }) => wholeRange)).toEqual([undefined, undefined, undefined]);
});

describe('many units', () => {
  const unitsOf = (count: number): UnitSums[] =>
    sumsOf({ ...smallCosts, units: Array.from({ length: count }, () => smallUnits[0]) }).units.slice(
      mostUnitRows,
    );

  it('have no further row up to the most', () => {
    expect(unitsOf(mostUnitRows)).toEqual([]);
  });

  it('beyond are one row: three units of ten at 435.5', () => {
    const [rest, ...none] = unitsOf(mostUnitRows + 3);
    if (rest === undefined) throw new Error('no row');
    expect(none).toEqual([]);
    expect(rest).toMatchObject({ unit: undefined, figures: 30, wholeRange: undefined, cashMinor: 1110 });
    expect(minors(rest)).toEqual([1306.5, 1306.5, 0]);
    expect(rest.figuresPrice.exactMinor.toNumber()).toBe(4500);
  });
});

it('is nothing of an army of nobody', () => {
  const nothing = { exactMinor: exactMinor('0'), atLeast: false };
  const none = sumsOf(
    { ...smallCosts, units: [], useWhole: nothing, useRemaining: nothing, cashMinor: 0 },
    0,
  );
  expect([none.perFigure.exactMinor.toNumber(), none.dearestMinor, none.army.cashPerFigureMinor]).toEqual([
    0, 0, 0,
  ]);
  expect(none.perFigureRange).toEqual({ low: 0, high: 0 });
});
