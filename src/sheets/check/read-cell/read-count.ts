// Checks: whole numbers. In: a cell. Out: a whole number inside its bounds, or a mistake.
import type { ProblemCode } from '../../../problems/catalogue.js';
import { type Bound, figureThings, numberKind } from './read-number.js';

const count = (noun: string, example: string, most: Bound, ifZero: ProblemCode = 'zero') =>
  numberKind({ noun, code: 'not-a-count', example, whole: true, ifZero, most, things: figureThings });

const largestArmy: Bound = [1e6, 'the largest army, 1000000 figures'];

export const figureCount = count('a number of figures', '20', largestArmy);
export const batchSize = count('a batch', '10', largestArmy);
export const figuresPerBase = count('a number of figures', '1', [1000, 'the fullest base, 1000 figures']);
export const stepNumber = count('a step', '1', [1000, 'the longest scheme, 1000 steps']);
export const coatCount = count('a number of coats', '2', [20, 'the thickest layer, 20 coats']);
export const potCount = count('a number of pots', '1', [1000, 'the largest set, 1000 pots']);
export const loggedCount = count('a number of pots', '1', [1000, 'the largest set, 1000 pots'], 'no-pots');
export const ownedCount = count('a number of pots', '1', [1000, 'the fullest row, 1000 pots']);

/** 0: nothing is done yet. */
export const doneStep = numberKind({
  noun: 'a step',
  code: 'not-a-count',
  example: '3',
  whole: true,
  zero: true,
  most: [1000, 'the longest scheme, 1000 steps'],
});

/** 0: sold out. */
export const availableCount = numberKind({
  noun: 'a number of offers',
  code: 'not-a-count',
  example: '4',
  whole: true,
  zero: true,
  most: [1e6, 'the largest shop, 1000000 of one offer'],
});
