// Problems: words for one column, one cell or one row by itself. `[...]` falls away where nothing is expected.
import { readingProblems } from './reading-problems.js';
import type { Wording } from './wording.js';

export const cellProblems = {
  'missing-column': {
    severity: 'error',
    says: 'there is no such column',
    hint: 'Add it to the header row[, or rename {expected} if that is meant].',
  },
  'near-column': {
    severity: 'warning',
    says: 'no column of this sheet is called so',
    hint: 'Rename it "{expected}" if that is meant; as it stands it is not read.',
  },
  'column-maybe-meant': {
    severity: 'warning',
    says: 'this column is not read, and "{expected}" counts as blank: {found}',
    hint: 'Rename it "{expected}" if that is meant, or let its header end in "notes" if not.',
  },
  'blank-column-maybe-meant': {
    severity: 'warning',
    says: 'this column is not read, and "{expected}" is blank: {found}',
    hint: 'Take the blank column out and rename this one "{expected}" if that is meant, or let its header end in "notes" if not.',
  },
  'blank-cell': { severity: 'error', says: 'this cell is blank', hint: 'Write {expected}.' },
  ...readingProblems,
  'pots-of-two-counts': {
    severity: 'error',
    says: '"{found}" is not as many pots as "{expected}" in this row',
    hint: 'Say in one way only how many there are.',
  },
  'left-over-size': {
    severity: 'error',
    says: '"{found}" is more than the whole pot, {expected}',
    hint: 'Check both numbers.',
  },
  'empty-missing': {
    severity: 'error',
    says: 'a weight in "left" tells nothing without the weight of the empty pot',
    hint: 'Weigh an empty pot of the same kind and write its grams, such as 14.5.',
  },
  'below-empty': {
    severity: 'error',
    says: '"{found}" is less than the empty pot weighs, {expected}',
    hint: 'Check both weights.',
  },
  'heavier-than-full': {
    severity: 'error',
    says: '"{found}" is more than the full pot could weigh, {expected}',
    hint: 'Check both weights and the size.',
  },
  'left-of-ordered': {
    severity: 'warning',
    says: '"{found}" is left aside, as a pot on its way counts as full',
    hint: 'Leave one of the two cells blank.',
  },
  'without-base': {
    severity: 'warning',
    says: '"{found}" counts for nothing, as this figure has no base',
    hint: 'Write its base, or leave this cell blank.',
  },
  'no-eye-height': {
    severity: 'error',
    says: 'without a box, a figure needs the height of its eyes',
    hint: 'Measure from the soles to the eyes and write millimetres, such as 28.',
  },
  'eyes-high': {
    severity: 'warning',
    says: 'eyes at "{found}" mm are higher than those of most figures',
    hint: 'If a decimal point or comma was lost, write {expected}; a bust or a large scale may be right as it is.',
  },
  'count-high': {
    severity: 'warning',
    says: '"{found}" figures are more than one unit usually has',
    hint: 'Check the digits; if there are so many, leave it as it is.',
  },
  'box-with-body': {
    severity: 'error',
    says: '{expected}',
    hint: 'Leave this cell blank; give a crew or a rider a row of its own.',
  },
  'no-length': {
    severity: 'error',
    says: 'what is built as "{found}" is measured by one length',
    hint: 'Measure {expected} and write millimetres, such as 60.',
  },
  'length-unused': {
    severity: 'warning',
    says: '"{found}" counts for nothing, as this figure is not measured by one length',
    hint: 'Write {expected} into "build", or leave this cell blank.',
  },
  'wrong-build': {
    severity: 'error',
    says: '"{found}" is no build of {expected}',
    hint: 'Write one of these, or leave this cell blank.',
  },
  'no-surface': {
    severity: 'error',
    says: 'the figure "{found}" has nothing that could be painted',
    hint: 'Give it a dress, kit, a base or a box.',
  },
  'offer-for-nothing': {
    severity: 'error',
    says: '"{found}" is no price for an offer',
    hint: 'Write what it costs, or take the offer out.',
  },
  'log-gains': {
    severity: 'error',
    says: '"{found}" is more than before, {expected}',
    hint: 'Swap the two weights if they stand in the wrong columns.',
  },
  'log-half-weighed': {
    severity: 'warning',
    says: 'only one of the two weights is there',
    hint: 'Write both; until then the row lowers no pot.',
  },
  'log-without-amount': {
    severity: 'warning',
    says: 'this row does not say how much was used',
    hint: 'Write both weights, or used ml; until then it lowers no pot.',
  },
  'log-too-little': {
    severity: 'warning',
    says: '{found} less than brush and palette alone take for {expected}',
    hint: 'Check the digits of both; the row teaches just what it says.',
  },
  'log-two-amounts': {
    severity: 'warning',
    says: 'used ml says {found}, and the two weights come to {expected}',
    hint: 'The weights count; leave this cell blank if they are right.',
  },
  'log-no-progress': {
    severity: 'warning',
    says: 'this row has {found} and no {expected}, so it does not count as progress',
    hint: 'Write unit, step and figures, all three, or at most the unit.',
  },
  'unknown-setting': {
    severity: 'error',
    says: '"{found}" is not a setting',
    hint: 'Write currency, date, locale, sure %, buy, again, restock or the name of an assumption[; near it is {expected}].',
  },
} as const satisfies Record<string, Wording>;
