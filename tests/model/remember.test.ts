// Remembering: what is asked again is not worked out again.
import { expect, it } from 'vitest';
import { remember } from '../../src/model/remember.js';

const counted = () => {
  const asked: number[] = [];
  const halve = (value: number): number => {
    asked.push(value);
    return value / 2;
  };
  return { asked, halve };
};

it('works each answer out once, 0 among them', () => {
  const { asked, halve } = counted();
  const half = remember(halve);
  expect([4, 0, 4, 0, 6].map(half)).toEqual([2, 0, 2, 0, 3]);
  expect(asked).toEqual([4, 0, 6]);
});

it('answers alike what has one key', () => {
  const { asked, halve } = counted();
  const half = remember(halve, (value) => value % 10);
  expect([14, 24, 15].map(half)).toEqual([7, 7, 7.5]);
  expect(asked).toEqual([14, 15]);
});
