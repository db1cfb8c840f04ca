// Assumptions: how far off a reading may be. Standard deviations; names are `error by eye`, `error in ml`,
// `error of a rough reading`, `error of a weighed pot`, `error of a scale`, `difference between batches`.
import type { Assumption } from '../model/assumption.js';
import { define } from './define-assumption.js';

const memory = (source: string) => ({ mark: 'from memory', source }) as const;

export const errorAssumptions: readonly Assumption[] = [
  define('error by eye', 10, { unit: '% of the pot’s size', ...memory('held against the light') }),
  define('error in ml', 5, { unit: '% of the pot’s size', ...memory('read off a mark, or drops counted') }),
  define('error of a rough reading', 15, {
    unit: '% of the pot’s size',
    ...memory('about, almost: said without looking closely'),
  }),
  define('error of a weighed pot', 0.3, {
    unit: 'ml',
    ...memory('scale, empty weight and density together'),
  }),
  define('error of a scale', 0.3, { unit: 'g', ...memory('a kitchen scale that shows tenths of a gram') }),
  define('difference between batches', 10, {
    unit: '% of the paint used',
    ...memory('the same painter on another evening'),
  }),
];
