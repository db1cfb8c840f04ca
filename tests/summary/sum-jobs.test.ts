// Each job of the small army by itself: cost of one figure by layer and zone, and what is done. By hand.
import { describe, expect, it } from 'vitest';
import type { Amount } from '../../src/model/money.js';
import type { JobSummary } from '../../src/model/summary.js';
import type { Job } from '../../src/model/work.js';
import { sumJobs } from '../../src/summary/sum-jobs.js';
import { ram, smallUnits, wardens } from '../report/a-small-army.js';

const minors = (of: ReadonlyMap<string, Amount> | undefined) =>
  [...(of ?? [])].map(([name, { exactMinor, atLeast }]) => [name, exactMinor.toNumber(), atLeast]);
const sumOf = (job: Job, units: Parameters<typeof sumJobs>[1] = smallUnits): JobSummary => {
  const sums = sumJobs([job], units).get(job);
  if (sums === undefined) throw new Error('no sums');
  return sums;
};

describe('cost of one figure', () => {
  it('is a tenth of the lines of ten; a part without a price is at least nothing', () => {
    expect(minors(sumOf(wardens).costByLayer)).toEqual([
      ['primer', 12, false],
      ['base coat', 12.1, false],
      ['wash', 15.25, false],
      ['highlight', 0.9, false],
      ['detail', 0, true],
    ]);
    // The tunic has 121 of nettle and 9 of chalk.
    expect(minors(sumOf(wardens).costByZone)).toEqual([
      ['all', 12, false],
      ['tunic', 13, false],
      ['whole', 15.25, false],
      ['belt', 0, true],
    ]);
  });

  it('is doubted for what most of the money hangs on: wash 152.50, brush 130, can 120', () => {
    expect(sumOf(wardens).trust).toEqual({ mark: 'from memory', biggestDoubt: 'flood transfer' });
  });

  it('is none of a job that no unit has', () => {
    expect(sumOf(wardens, []).costByLayer.size).toBe(0);
  });
});

describe('what is done', () => {
  it('is one step of two of the ram, 9 ml of 13.05', () => {
    const { steps, stepsFinished, begun, isBegun, doneShare } = sumOf(ram);
    expect([steps, stepsFinished, begun, isBegun]).toEqual([2, 1, [], true]);
    expect(doneShare).toBeCloseTo(9 / 13.05, 9);
  });

  it('is nothing of the wardens', () => {
    expect(sumOf(wardens)).toMatchObject({
      steps: 5,
      stepsFinished: 0,
      begun: [],
      isBegun: false,
      doneShare: 0,
    });
  });

  it.each([
    [4, 7],
    [7, 4],
  ])('is a step begun on 3 of 10 where its lines lack %d and %d figures', (tunicLeft, cloakLeft) => {
    const remaining = wardens.remaining.map((one) => (one.step === 2 ? { ...one, figures: tunicLeft } : one));
    const [, tunic] = remaining;
    if (tunic === undefined) throw new Error('no line');
    const cloak = { ...tunic, zone: 'cloak', figures: cloakLeft };
    const sums = sumOf({ ...wardens, remaining: [...remaining, cloak] });
    expect(sums).toMatchObject({ stepsFinished: 0, begun: [{ step: 2, figures: 3 }], isBegun: true });
  });

  it('is all of a job with nothing left, and of one that takes no paint', () => {
    expect(sumOf({ ...ram, remaining: [], unfinished: false })).toMatchObject({
      stepsFinished: 2,
      doneShare: 1,
    });
    expect(sumOf({ ...wardens, lines: [], remaining: [] })).toMatchObject({ steps: 0, doneShare: 1 });
  });
});
