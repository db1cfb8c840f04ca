// Assumptions: what of a pot can be used, what a weight means, when a pot counts as low.
import type { Assumption } from '../model/assumption.js';
import { define } from './define-assumption.js';

const memory = (source: string) => ({ mark: 'from memory', source }) as const;

export const potAssumptions: readonly Assumption[] = [
  define('usable share of a can', [0.45, 0.6, 0.72], {
    unit: 'of the labelled volume',
    ...memory('a third to a half is propellant, and some stays in the can'),
  }),
  define('usable share of a pot', [0.85, 0.94, 0.97], {
    unit: 'of the labelled volume',
    ...memory('the rest dries on lid, neck and rim'),
  }),
  define('density', [1.1, 1.2, 1.35], { unit: 'g/ml', ...memory('water-based colour') }),
  define('density of a wash', [0.98, 1, 1.05], { unit: 'g/ml', ...memory('mostly water') }),
  define('density in a can', [0.75, 0.8, 0.9], { unit: 'g/ml', ...memory('mostly solvent and propellant') }),
  define('drop', 0.05, { unit: 'ml', mark: 'common practice', source: '20 drops to a millilitre' }),
  define('years of an opened pot', 5, {
    unit: 'years',
    ...memory('older ones are asked about, until they are counted'),
  }),
  define('shelf level', 15, {
    unit: '% of the largest pot',
    ...memory('what is kept back when the sheets name no level'),
  }),
];
