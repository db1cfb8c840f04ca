// Cards of the small army by hand: ten wardens and the ram, whose next batches are all of them.
import { describe, expect, it } from 'vitest';
import { at } from '../../src/model/at.js';
import type { PlanResults } from '../../src/model/plan.js';
import { ram, wardens } from '../report/a-small-army.js';
import { ramTime, wardensTime } from '../report/a-small-clock.js';
import { changedPlan, smallPlan } from '../report/a-small-plan.js';

const { bench } = smallPlan.summary;
const stepsOf = (changes: Partial<PlanResults>) =>
  changedPlan(changes).summary.bench.jobs.get(wardens)?.steps ?? [];

it('stand in the order in which units are finished, those not spelled out last', () => {
  expect(bench.cards.map(({ unit, doneOnEvening }) => [unit.unit, doneOnEvening])).toEqual([
    ['The ram', 2],
    ['First watch', undefined],
    ['Second watch', undefined],
  ]);
  expect(bench.more).toBe(0);
});

describe('a coat', () => {
  const steps = bench.jobs.get(wardens)?.steps ?? [];

  // 6.05 ml in three coats, at most 9.6; drops of 0.05 ml, likely to the nearest, enough to the next.
  it('is its share of the line, in whole drops', () => {
    const [paint] = steps[1]?.paints ?? [];
    expect(paint?.coatMl).toBeCloseTo(6.05 / 3, 9);
    expect(paint?.coatHighMl).toBeCloseTo(3.2, 9);
    expect(steps.map(({ paints }) => [paints[0]?.drops, paints[0]?.highDrops])).toEqual([
      [undefined, undefined],
      [40, 64],
      [122, 194],
      [9, 17],
      [1, 3],
    ]);
  });

  it('is never less than a drop', () => {
    const batches = new Map([
      [wardens, wardens.remaining.map(() => ({ figures: 10, likelyMl: 0.01, highMl: 0.02 }))],
    ]);
    const [, tunic] = stepsOf({ ranges: { ...smallPlan.ranges, batches } });
    expect(tunic?.paints[0]).toMatchObject({ drops: 1, highDrops: 1 });
  });

  it('goes by the drops of the painter', () => {
    const assumptions = smallPlan.assumptions.map((one) =>
      one.name === 'drop' ? { ...one, likely: 0.1 } : one,
    );
    expect(stepsOf({ assumptions })[2]?.paints[0]).toMatchObject({ drops: 61, highDrops: 97 });
  });
});

describe('a step', () => {
  const partedOf = (job: Partial<typeof wardens>, figures = [10, 10, 10, 10, 10]) => {
    const changed = { ...wardens, ...job };
    const units = smallPlan.estimate.units.map((one) =>
      one.job === wardens ? { ...one, job: changed } : one,
    );
    const batches = new Map([
      [
        changed,
        changed.remaining.map((_, place) => ({ figures: at(figures, place), likelyMl: 1, highMl: 2 })),
      ],
    ]);
    const changes = { estimate: { ...smallPlan.estimate, units }, ranges: { ...smallPlan.ranges, batches } };
    const steps = changedPlan(changes).summary.bench.jobs.get(changed)?.steps ?? [];
    return steps.filter(({ isParted }) => isParted).map(({ zone, paints }) => [zone, paints[0]?.figures]);
  };
  /** The wash as a part of the second step. */
  const joined = wardens.lines.map((line) => (line.step === 3 ? { ...line, step: 2 } : line));

  it('is parted where the batch lacks its paints on other figures, or has some already', () => {
    expect(partedOf({}, [10, 4, 10, 10, 10])).toEqual([]);
    expect(partedOf({ lines: joined, remaining: joined })).toEqual([]);
    expect(partedOf({ lines: joined, remaining: joined }, [10, 4, 10, 10, 10])).toEqual([
      ['tunic', 4],
      ['whole', 10],
    ]);
    expect(partedOf({ lines: joined, remaining: joined.filter(({ zone }) => zone !== 'tunic') })).toEqual([
      ['whole', 10],
    ]);
  });
});

describe('the next batch', () => {
  const startsOf = (time: typeof wardensTime) => {
    const units = smallPlan.time.units.map((one) => (one.time === ramTime ? one : { ...one, time }));
    return stepsOf({ time: { ...smallPlan.time, units } }).map(({ startNext }) => startNext);
  };

  // Primer: nine figures of 0.4 minutes and the next setup are over long before 30. Wash: 9 x 3 + 1 = 28 minutes.
  it('starts where this one has to wait long', () => {
    expect(startsOf(wardensTime)).toEqual([true, false, true, false, false]);
  });

  it('does not where the first figure is just dry in time', () => {
    const passes = wardensTime.passes.map((pass) =>
      pass.layer === 'wash' ? { ...pass, brushMinPerFigure: 29 / 9 } : pass,
    );
    expect(startsOf({ ...wardensTime, passes })).toEqual([true, false, false, false, false]);
  });

  it('does not while less than long drying is waited, nor after the last step', () => {
    const passes = wardensTime.passes.map((pass) => ({
      ...pass,
      driesMin: pass.layer === 'detail' ? 60 : 29.9,
    }));
    expect(startsOf({ ...wardensTime, passes })).toEqual([false, false, false, false, false]);
  });

  it('is counted from the first of the unit: 15 of 25 left in batches of 10', () => {
    const remaining = ram.remaining.map((line) => ({ ...line, figures: 15 }));
    const job = { ...ram, count: 25, batch: 10, remaining };
    const units = [{ unit: at(smallPlan.estimate.units, 0).unit, job }];
    const batches = new Map([[job, remaining.map(() => ({ figures: 10, likelyMl: 1, highMl: 2 }))]]);
    const { summary } = changedPlan({
      estimate: { ...smallPlan.estimate, units },
      ranges: { ...smallPlan.ranges, batches },
    });
    expect(summary.bench.jobs.get(job)).toMatchObject({ batch: 2, batches: 3, figures: 10 });
  });
});

it('a paint that goes on instead of another is known, in its own steps alone', () => {
  const swap = { scheme: 'Marsh', steps: [3, 4], paint: 'Bog wash', by: 'Pond wash' };
  const steps = stepsOf({ swaps: [swap, { ...swap, steps: [4], by: 'Nettle coat' }] });
  expect(steps.map(({ paints }) => paints.map(({ isSwap }) => isSwap))).toEqual([
    [false],
    [false],
    [true],
    [false],
    [false],
  ]);
});

it('paints of a mix are one step', () => {
  const [first] = wardens.remaining;
  if (first === undefined) throw new Error('no line');
  const mixed = { ...wardens, remaining: [first, { ...first, paint: 'Chalk light' }] };
  const units = [{ unit: at(smallPlan.estimate.units, 0).unit, job: mixed }];
  const batches = new Map([[mixed, [1, 2].map((ml) => ({ figures: 10, likelyMl: ml, highMl: 2 * ml }))]]);
  const { summary } = changedPlan({
    estimate: { ...smallPlan.estimate, units },
    ranges: { ...smallPlan.ranges, batches },
  });
  expect(summary.bench.jobs.get(mixed)?.steps.map(({ paints }) => paints.length)).toEqual([2]);
});

it('a hundred units have a card, and the others are counted', () => {
  const [first] = smallPlan.estimate.units;
  if (first === undefined) throw new Error('no unit');
  const unitsOf = (count: number) =>
    Array.from({ length: count }, (_, place) => ({ ...first, unit: { ...first.unit, row: place } }));
  const benchOf = (count: number) =>
    changedPlan({ estimate: { ...smallPlan.estimate, units: unitsOf(count) } }).summary.bench;
  expect([benchOf(100).cards.length, benchOf(100).more]).toEqual([100, 0]);
  expect([benchOf(103).cards.length, benchOf(103).more]).toEqual([100, 3]);
});
