// Steps by the cards that they stand on. A step of one line takes 3.8 mm, so 28 of them fill the 109 mm of a card.
import { expect, it } from 'vitest';
import { placeCards } from '../../../../src/report/sections/bench/place-cards.js';
import type { StepView } from '../../../../src/report/sections/bench/view-step.js';

const makeStep = (no: number, letters = 20): StepView => ({
  ...{ no, place: '', tick: '', batch: 1, zone: 'cloth', layer: '', coats: 'x'.repeat(letters), dries: '' },
  ...{ figures: 10, isParted: false, sprays: [], paints: [] },
});
const rows = (of: number, from = 1) => Array.from({ length: of }, (_, at) => makeStep(from + at));
const sizes = (steps: readonly StepView[]) => placeCards(steps).map(({ length }) => length);

it.each([
  [0, []],
  [1, [1]],
  [28, [28]],
  [29, [15, 14]],
  [30, [15, 15]],
  [56, [28, 28]],
  [57, [19, 19, 19]],
  [100, [25, 25, 25, 25]],
])('%d steps of a line are shared out evenly', (steps, cards) => {
  expect(sizes(rows(steps))).toEqual(cards);
});

it('rows of one step stay together', () => {
  const five = Array.from({ length: 5 }, () => makeStep(14));
  expect(sizes([...rows(13), ...five, ...rows(12, 15)])).toEqual([13, 17]);
});

it('a step of more rows than a card holds is parted', () => {
  expect(sizes(Array.from({ length: 40 }, () => makeStep(1)))).toEqual([20, 20]);
});

it('cards are even by lines, not by steps', () => {
  // Over 74 letters are two lines: ten such steps of 6.7 mm are as high as 17.6 of one line.
  const long = Array.from({ length: 10 }, (_, at) => makeStep(at + 1, 130));
  expect(sizes([...long, ...rows(18, 11)])).toEqual([10, 18]);
});

it('all steps stand there once, in order, and no card is blank', () => {
  for (let count = 1; count < 120; count++) {
    const steps = Array.from({ length: count }, (_, at) => makeStep(Math.floor(at / 2), (at * 37) % 200));
    const cards = placeCards(steps);
    expect(cards.flat()).toEqual(steps);
    expect(cards.every(({ length }) => length > 0)).toBe(true);
  }
});
