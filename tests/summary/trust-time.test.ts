// What minutes are doubted for: ten figures with a zone each, and three assumptions. By hand.
import { expect, it } from 'vitest';
import type { Assumption, Mark } from '../../src/model/assumption.js';
import type { Job, Line } from '../../src/model/work.js';
import { trustTime } from '../../src/summary/trust-time.js';
import { wardens } from '../report/a-small-army.js';

type Range = readonly [low: number, likely: number, high: number];

const assume = (name: string, [low, likely, high]: Range, mark: Mark = 'from memory'): Assumption => ({
  ...{ name, low, likely, high, mark },
  unit: '',
  source: '',
});

/** Pace 0.5 min a cm2 and handling 0.2 min a coat, each give or take a half; care 1, give or take a tenth. */
const known = [
  assume('brush pace', [0.25, 0.5, 0.75]),
  assume('base coat care', [0.9, 1, 1.1], 'common practice'),
  assume('brush handling', [0.1, 0.2, 0.3], 'yours'),
];

function trustOf(line: Partial<Line>, assumptions = known) {
  const tunic = wardens.lines[1];
  if (tunic === undefined) throw new Error('no tunic');
  const job: Job = { ...wardens, remaining: [{ ...tunic, coats: 1, figures: 10, ...line }] };
  return trustTime(new Map([[job, 1]]), assumptions);
}

it('is the pace where areas are large: 10 x 5 x 0.5 = 25 minutes against 10 x 0.2 = 2', () => {
  expect(trustOf({ areaCm2: 5 })).toEqual({ mark: 'from memory', biggestDoubt: 'brush pace' });
});

it('is the handling where they are small: 10 x 0.3 x 0.5 = 1.5 minutes against 2', () => {
  expect(trustOf({ areaCm2: 0.3 }).biggestDoubt).toBe('brush handling');
  expect(trustOf({ areaCm2: 5, areaShare: 0.06 }).biggestDoubt).toBe('brush handling');
});

it('weighs by how far each may lie off: care by 1.8 times, pace by once', () => {
  const [pace, , handling] = known;
  if (pace === undefined || handling === undefined) throw new Error('no assumption');
  const unsure = [pace, assume('base coat care', [0.1, 1, 1.9], 'common practice'), handling];
  expect(trustOf({ areaCm2: 5 }, unsure).biggestDoubt).toBe('base coat care');
});

it('has the weakest mark of what it rests on', () => {
  const sure = known.map((one) => ({
    ...one,
    mark: one.mark === 'from memory' ? ('weighed' as const) : one.mark,
  }));
  expect(trustOf({}, sure).mark).toBe('common practice');
});

it('leaves out what is unknown, or takes no time', () => {
  const none = [assume('brush pace', [0, 0, 0]), assume('flood handling', [1, 2, 3])];
  expect(trustOf({}, none)).toEqual({ mark: 'weighed', biggestDoubt: '' });
  expect(trustTime(new Map(), known)).toEqual({ mark: 'weighed', biggestDoubt: '' });
});
