// Problems: words for one cell or one row by itself.
import type { Wording } from './wording.js';

export const cellProblems = {
  'not-a-volume': {
    severity: 'error',
    says: '"{found}" is not a volume',
    hint: 'Write a number of millilitres, such as 12.5.',
  },
} as const satisfies Record<string, Wording>;
