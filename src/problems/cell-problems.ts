// Problems: words for one column, one cell or one row by itself. `[...]` falls away where nothing is expected.
import { readingProblems } from './reading-problems.js';
import { error, warning } from './wording.js';

export const cellProblems = {
  'missing-column': error(
    'there is no such column',
    'Add it to the header row[, or rename {expected} if that is meant].',
  ),
  'near-column': warning(
    'no column of this sheet is called so',
    'Rename it "{expected}" if that is meant; as it stands it is not read.',
  ),
  'column-maybe-meant': warning(
    'this column is not read, and "{expected}" counts as blank: {found}',
    'Rename it "{expected}" if that is meant, or let its header end in "notes" if not.',
  ),
  'blank-column-maybe-meant': warning(
    'this column is not read, and "{expected}" is blank: {found}',
    'Take the blank column out and rename this one "{expected}" if that is meant, or let its header end in "notes" if not.',
  ),
  'blank-cell': error('this cell is blank', 'Write {expected}.'),
  ...readingProblems,
  'pots-of-two-counts': error(
    '"{found}" is not as many pots as "{expected}" in this row',
    'Say in one way only how many there are.',
  ),
  'left-over-size': error('"{found}" is more than the whole pot, {expected}', 'Check both numbers.'),
  'empty-missing': error(
    'a weight in "left" tells nothing without the weight of the empty pot',
    'Weigh an empty pot of the same kind and write its grams, such as 14.5.',
  ),
  'below-empty': error('"{found}" is less than the empty pot weighs, {expected}', 'Check both weights.'),
  'heavier-than-full': error(
    '"{found}" is more than the full pot could weigh, {expected}',
    'Check both weights and the size.',
  ),
  'left-of-ordered': warning(
    '"{found}" is left aside, as a pot on its way counts as full',
    'Leave one of the two cells blank.',
  ),
  'without-base': warning(
    '"{found}" counts for nothing, as this figure has no base',
    'Write its base, or leave this cell blank.',
  ),
  'no-eye-height': error(
    'without a box, a figure needs the height of its eyes',
    'Measure from the soles to the eyes and write millimetres, such as 28.',
  ),
  'eyes-high': warning(
    'eyes at "{found}" mm are higher than those of most figures',
    'If a decimal point or comma was lost, write {expected}; a bust or a large scale may be right as it is.',
  ),
  'count-high': warning(
    '"{found}" figures are more than one unit usually has',
    'Check the digits; if there are so many, leave it as it is.',
  ),
  'box-with-body': error('{expected}', 'Leave this cell blank; give a crew or a rider a row of its own.'),
  'no-length': error(
    'what is built as "{found}" is measured by one length',
    'Measure {expected} and write millimetres, such as 60.',
  ),
  'length-unused': warning(
    '"{found}" counts for nothing, as this figure is not measured by one length',
    'Write {expected} into "build", or leave this cell blank.',
  ),
  'wrong-build': error(
    '"{found}" is no build of {expected}',
    'Write one of these, or leave this cell blank.',
  ),
  'no-surface': error(
    'the figure "{found}" has nothing that could be painted',
    'Give it a dress, kit, a base or a box.',
  ),
  'offer-for-nothing': error(
    '"{found}" is no price for an offer',
    'Write what it costs, or take the offer out.',
  ),
  'log-gains': error(
    '"{found}" is more than before, {expected}',
    'Swap the two weights if they stand in the wrong columns.',
  ),
  'log-half-weighed': warning(
    'only one of the two weights is there',
    'Write both; until then the row lowers no pot.',
  ),
  'log-without-amount': warning(
    'this row does not say how much was used',
    'Write both weights, or used ml; until then it lowers no pot.',
  ),
  'log-too-little': warning(
    '{found} less than brush and palette alone take for {expected}',
    'Check the digits of both; the row teaches just what it says.',
  ),
  'log-two-amounts': warning(
    'used ml says {found}, and the two weights come to {expected}',
    'The weights count; leave this cell blank if they are right.',
  ),
  'log-no-progress': warning(
    'this row has {found} and no {expected}, so it does not count as progress',
    'Write unit, step and figures, all three, or at most the unit.',
  ),
  'unknown-setting': error(
    '"{found}" is not a setting',
    'Write currency, date, locale, sure %, buy, again, restock or the name of an assumption[; near it is {expected}].',
  ),
};
