// How sure the small plan is. Nothing is drawn here: ranges and chances are set by hand so that each case has one, in states
// that fit them (`enough` up to a tenth, `tight` to a half); what is to be bought stands in a-small-shelf.ts.
import type { BatchMl } from '../../src/model/bench.js';
import type { Chance, Doubt, Learned, PaintRange, Promised, Range, Ranges } from '../../src/model/ranges.js';
import type { Job } from '../../src/model/work.js';
import { ram, wardens } from './a-small-army.js';

const range = (low: number, high: number): Range => ({ low, high });
const chance = (share: number, error = 0.004): Chance => ({ chance: share, error });

interface Known {
  readonly needMl: Range;
  readonly haveMl: Range;
  readonly short: number;
  readonly doubts?: readonly Doubt[];
}

const paint = (name: string, { needMl, haveMl, short, doubts = [] }: Known): [string, PaintRange] => [
  name,
  { needMl, haveMl, chanceShort: chance(short), doubts },
];

/** Both next batches are all that is left of their jobs, so that what is likely is what the lines put out. */
const batchOf = (job: Job, figures: number, highs: readonly number[]): [Job, readonly BatchMl[]] => [
  job,
  job.remaining.map(({ putOutMl }, at) => ({ figures, likelyMl: putOutMl, highMl: highs[at] ?? putOutMl })),
];

/** Cost of use of a figure: wardens 43.55 cents, the ram 39.3; of the army 910.3, still to be used 874.3. */
export const smallRanges: Ranges = {
  draws: 10_000,
  seed: 1,
  paints: new Map([
    paint('Kettle grey', { needMl: range(29, 130), haveMl: range(58, 121), short: 0.08 }),
    paint('Nettle coat', {
      needMl: range(7.3, 22.4),
      haveMl: range(2, 6.2),
      short: 0.974,
      doubts: [
        { name: 'brush wet film', share: 0.38 },
        { name: 'brush transfer', share: 0.35 },
        { name: 'painter', share: 0.11 },
        { name: 'reading of Nettle coat', share: 0.06 },
      ],
    }),
    paint('Pond wash', {
      needMl: range(7.1, 21.5),
      haveMl: range(15.8, 18.8),
      short: 0.213,
      doubts: [
        { name: 'flood wet film', share: 0.6 },
        { name: 'reading of Pond wash', share: 0.04 },
      ],
    }),
    paint('Chalk light', { needMl: range(0.5, 1.8), haveMl: range(16.32, 16.32), short: 0 }),
    paint('Bell brass', { needMl: range(0.09, 0.28), haveMl: range(1.2, 5.3), short: 0.003 }),
    paint('Rust hush', { needMl: range(2.4, 7.6), haveMl: range(0, 0), short: 1 }),
  ]),
  chanceAllLast: chance(0, 0.0001),
  useWhole: range(640, 1340),
  useRemaining: range(610, 1290),
  batches: new Map([batchOf(wardens, 10, [48, 9.6, 9.7, 0.81, 0.13]), batchOf(ram, 1, [6.6])]),
  perFigure: new Map([
    [wardens, range(30.4, 64.2)],
    [ram, range(22.6, 68.9)],
  ]),
  doubts: [
    { name: 'brush wet film', share: 0.41 },
    { name: 'brush transfer', share: 0.37 },
    { name: 'reading of Nettle coat', share: 0.02 },
  ],
  remedies: [
    { how: 'weigh', what: 'brush', paint: 'Nettle coat', share: 0.78 },
    { how: 'weigh', what: 'spray can', paint: 'Kettle grey', share: 0.09 },
    { how: 'measure', what: 'Reed warden', paint: '', share: 0.05 },
    { how: 'read', what: 'Nettle coat', paint: '', share: 0.02 },
  ],
};

/** Rust hush is not on offer. One pot of Nettle coat does for every promise but the surest two. */
export const smallPromised: Promised = {
  surePercent: 80,
  met: chance(0.236),
  metOnFreshDraws: chance(0.2381, 0.0043),
  metOfOffered: chance(0.8213, 0.0038),
  likely: { cashMinor: 740, met: chance(0.7719, 0.0042) },
  levels: [
    { surePercent: 50, cashMinor: 740, met: chance(0.8213, 0.0038), proved: true },
    { surePercent: 80, cashMinor: 740, met: chance(0.8213, 0.0038), proved: true },
    { surePercent: 90, cashMinor: 1290, met: chance(0.9144, 0.0028), proved: true },
    { surePercent: 95, cashMinor: 1640, met: chance(0.9571, 0.002), proved: false },
  ],
};

/** 4.5 ml where 3.8 were expected, then 2.2 for 1.9. Slope through the origin (4.5 x 3.8 + 2.2 x 1.9) / (3.8^2 + 1.9^2) = 1.179. */
export const smallLearned: Learned = {
  weighings: [
    {
      row: 2,
      date: '2026-09-12',
      paint: 'Nettle coat',
      unit: 'First watch',
      figures: 6,
      usedMl: 4.5,
      expectedMl: 3.8,
      errorMl: 0.5,
    },
    {
      row: 3,
      date: '2026-09-19',
      paint: 'Nettle coat',
      unit: 'Second watch',
      figures: 3,
      usedMl: 2.2,
      expectedMl: 1.9,
      errorMl: 0.4,
    },
  ],
  slope: 1.179,
  slopeError: 0.11,
  widened: 1,
};
