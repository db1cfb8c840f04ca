// Problems: words for files, tables and headers as a whole.
import type { Wording } from './wording.js';

export const fileProblems = {
  'missing-path': {
    severity: 'error',
    says: 'there is no such file or folder',
    hint: 'Name the folder that holds pots.csv, figures.csv, schemes.csv and army.csv, or a workbook with those sheets.',
  },
} as const satisfies Record<string, Wording>;
