// Assumptions: what of a measured surface counts. The name is `sky a brush needs`.
import type { Assumption } from '../model/assumption.js';
import { define } from './define-assumption.js';

export const surfaceAssumptions: readonly Assumption[] = [
  define('sky a brush needs', 5, {
    unit: '% of the half sphere',
    mark: 'from memory',
    source: 'deeper folds and pits of a model file are left to the wash that runs in, or to nobody',
  }),
];
