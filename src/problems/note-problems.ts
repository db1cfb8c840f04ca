// Problems: words for what was read otherwise than written, or left alone. All of them are warnings.
import { warning } from './wording.js';

export const noteProblems = {
  'guessed-encoding': warning(
    'this file is not in UTF-8 and was read as {expected}, in which its first special letters read "{found}"',
    'If that is wrong, save it again as "CSV UTF-8".',
  ),
  'hidden-rows': warning(
    'what is hidden in the workbook was read like any other row: {found}',
    'Delete it if it is not meant.',
  ),
  'hidden-columns': warning(
    'what is hidden in the workbook was read like any other column: {found}',
    'Delete it if it is not meant.',
  ),
  'hidden-sheet': warning(
    'this sheet is hidden in the workbook and was read like any other',
    'Rename or delete it if it is not meant.',
  ),
  'rows-above-header': warning(
    'what stands above the header row was not read: {found}',
    'A title may stay there; what is meant as a row belongs below the header row.',
  ),
  'headers-again': warning(
    'the headers stand there again, which was left alone: {found}',
    'Change a cell of a row that is meant to count.',
  ),
  'table-beside': warning(
    'a second table stands beside the first and was not read: {found}',
    'Move it to a sheet of its own, called {expected}.',
  ),
  'totals-row': warning(
    'this row was left alone, as it adds up those above it: {found}',
    'If it is a row like the others, give it a name of its own and fill in its needed cells.',
  ),
  'note-row': warning(
    'this row was left alone, as a heading or a note: {found}',
    'If it is a row like the others, fill in its needed cells.',
  ),
  'filled-down': warning(
    'blanks under {found} were read as what stands above them ({expected})',
    'Write the name on each row where it is another.',
  ),
  'column-without-header': warning(
    'column {expected} has no header, so what stands in it was not read: {found}',
    'Give it a header if it is meant.',
  ),
};
