// Cash against figures of the small plan, and what a budget finishes of it.
import type { Budget, Stairs } from '../../src/model/order.js';
import { smallOrder } from './a-small-shelf.js';

/**
 * Nettle coat: 0.6 ml a figure and 0.05 a sitting of ten; 4.08 owned reach for 6 figures (3.65), not for 7 (4.25).
 * One pot more (20.4) reaches up to 13 figures of a second army (12.1 + 6.05 + 1.85 = 20.0), the 34th. Pond wash:
 * 17.28 less 12.2 reach for 8 of a second army (8 x 0.6 + 0.1 = 4.9), the 29th; a pot of it is taken at 5.50.
 */
export const smallStairs: Stairs = {
  steps: [
    { figures: 0, cashMinor: 0, because: [], proved: true },
    { figures: 7, cashMinor: 740, because: ['Nettle coat'], proved: true },
    { figures: 30, cashMinor: 1290, because: ['Pond wash'], proved: true },
    { figures: 35, cashMinor: 1640, because: ['Nettle coat'], proved: true },
  ],
  mostFigures: 42,
  everyStep: true,
};

/** Eight euros: the whole order but for the rest of the second watch. */
export const smallBudget: Budget = {
  budgetMinor: 800,
  order: smallOrder,
  units: [
    { unit: 'First watch', figures: 10, finished: 10 },
    { unit: 'Second watch', figures: 10, finished: 6 },
    { unit: 'The ram', figures: 1, finished: 1 },
  ],
  nextSteps: [{ unit: 'Second watch', figures: 4, extraMinor: 550 }],
  proved: true,
  notTried: 0,
};
