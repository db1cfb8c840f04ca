// Where the small staircase rises: 7.40 from the 7th figure on, 12.90 from the 30th, 16.40 from the 35th.
import { describe, expect, it } from 'vitest';
import type { Stairs } from '../../src/model/order.js';
import { sumStairs } from '../../src/summary/sum-stairs.js';
import { smallStairs } from '../report/a-small-climb.js';
import { smallOrder } from '../report/a-small-shelf.js';

const sumsOf = (changes: Partial<Stairs> = {}, figureCount = 21, totalMinor = 740) =>
  sumStairs({ ...smallStairs, ...changes }, { ...smallOrder, totalMinor }, figureCount);

describe('the small army', () => {
  it('rises by 740, 550 and 350; the step from nothing is none', () => {
    expect(sumsOf()?.rises.map(({ figures, riseMinor }) => [figures, riseMinor])).toEqual([
      [7, 740],
      [30, 550],
      [35, 350],
    ]);
  });

  it('next rises at the 30th figure: up to the 29th nothing more is bought', () => {
    expect(sumsOf()?.next).toMatchObject({ extraMinor: 550, reachesFigure: 29, isNext: true });
    expect(sumsOf()?.next?.rise.figures).toBe(30);
  });

  it.each([
    [29, 30],
    [30, 35],
    [35, undefined],
  ])('of %d figures next rises at %j', (figures, next) => {
    expect(sumsOf({}, figures)?.next?.rise.figures).toBe(next);
  });
});

it('leaves steps at the same cash out, but knows that the order reaches only to them where steps may be missing', () => {
  const [none, first, ...later] = smallStairs.steps;
  if (none === undefined || first === undefined) throw new Error('no steps');
  const steps = [none, first, { ...first, figures: 25 }, ...later];
  expect(sumsOf({ steps })?.rises).toHaveLength(3);
  expect(sumsOf({ steps })?.next).toMatchObject({ reachesFigure: 29, isNext: true });
  expect(sumsOf({ steps, everyStep: false })?.next).toMatchObject({ reachesFigure: 24, isNext: false });
});

it('takes the army’s cash from the step where that is more than the order, and no rise below it', () => {
  expect(sumsOf({}, 21, 700)?.armyMinor).toBe(740);
  expect(sumsOf({}, 21, 1400)).toMatchObject({ armyMinor: 1400, next: { extraMinor: 0 } });
});

it('counts steps that are not proved', () => {
  const steps = smallStairs.steps.map((step, at) => ({ ...step, proved: at < 2 }));
  expect([sumsOf()?.unproved, sumsOf({ steps })?.unproved]).toEqual([0, 2]);
});

it('is nothing of an army of nobody', () => {
  expect(sumsOf({ steps: [] }, 0)).toBeUndefined();
});
