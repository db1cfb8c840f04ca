// Problems: words for what was read otherwise than written, or left alone. All of them are warnings.
import type { Wording } from './wording.js';

export const noteProblems = {
  'guessed-encoding': {
    severity: 'warning',
    says: 'this file is not in UTF-8 and was read as {expected}, in which its first special letters read "{found}"',
    hint: 'If that is wrong, save it again as "CSV UTF-8".',
  },
  'hidden-rows': {
    severity: 'warning',
    says: 'what is hidden in the workbook was read like any other row: {found}',
    hint: 'Delete it if it is not meant.',
  },
  'hidden-columns': {
    severity: 'warning',
    says: 'what is hidden in the workbook was read like any other column: {found}',
    hint: 'Delete it if it is not meant.',
  },
  'hidden-sheet': {
    severity: 'warning',
    says: 'this sheet is hidden in the workbook and was read like any other',
    hint: 'Rename or delete it if it is not meant.',
  },
  'rows-above-header': {
    severity: 'warning',
    says: 'what stands above the header row was not read: {found}',
    hint: 'A title may stay there; what is meant as a row belongs below the header row.',
  },
  'headers-again': {
    severity: 'warning',
    says: 'the headers stand there again, which was left alone: {found}',
    hint: 'Change a cell of a row that is meant to count.',
  },
  'table-beside': {
    severity: 'warning',
    says: 'a second table stands beside the first and was not read: {found}',
    hint: 'Move it to a sheet of its own, called {expected}.',
  },
  'totals-row': {
    severity: 'warning',
    says: 'this row was left alone, as it adds up those above it: {found}',
    hint: 'If it is a row like the others, give it a name of its own and fill in its needed cells.',
  },
  'note-row': {
    severity: 'warning',
    says: 'this row was left alone, as a heading or a note: {found}',
    hint: 'If it is a row like the others, fill in its needed cells.',
  },
  'filled-down': {
    severity: 'warning',
    says: 'blanks under {found} were read as what stands above them ({expected})',
    hint: 'Write the name on each row where it is another.',
  },
  'column-without-header': {
    severity: 'warning',
    says: 'column {expected} has no header, so what stands in it was not read: {found}',
    hint: 'Give it a header if it is meant.',
  },
} as const satisfies Record<string, Wording>;
