// Problems: words for rows that do not fit one another, within a sheet or across sheets.
import type { Wording } from './wording.js';

export const crossProblems = {
  'unknown-paint': {
    severity: 'error',
    says: 'no sheet of yours knows the paint "{found}"',
    hint: 'Add it to the pots, paints or offers sheet, or spell it as there: {expected}.',
  },
} as const satisfies Record<string, Wording>;
