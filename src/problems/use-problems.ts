// Problems: words for rows of log and swaps that do not fit the others. `[...]` falls away where no known name is near.
import type { Wording } from './wording.js';

export const useProblems = {
  'log-over-pot': {
    severity: 'error',
    says: 'this row used {found}, more than there was: {expected}',
    hint: 'Check the amount, the paint, and what the pots sheet says of it.',
  },
  'log-over-shelf': {
    severity: 'warning',
    says: 'up to this row the log has used {found} of this paint, and its pots held {expected}',
    hint: 'Add pots that came since; where left was read later than these rows, write that day into counted.',
  },
  'log-over-unit': {
    severity: 'warning',
    says: 'up to this row {found} figures have had this paint in this step, and the unit has {expected}',
    hint: 'Log a step once, when all its coats are on; no more than the whole unit counts as progress.',
  },
  'log-other-paint': {
    severity: 'warning',
    says: '"{found}" is not a paint of this step, so the row does not count as progress',
    hint: 'Check step and paint[; the step uses {expected}]. A paint used instead belongs in the swaps sheet.',
  },
  'log-row-repeated': {
    severity: 'warning',
    says: 'the same stands in {expected} already',
    hint: 'It counts twice: take one of the two out if it is the same work.',
  },
  'swap-not-narrowed': {
    severity: 'warning',
    says: 'a swap holds for every {expected} of its scheme and step, so this column is not read',
    hint: 'Give what is meant a scheme or a step of its own and name that; if this is a note, let its header end in "notes".',
  },
  'swap-of-other-scheme': {
    severity: 'error',
    says: 'this unit is painted as "{expected}", not as "{found}"',
    hint: 'Leave one of the two cells blank.',
  },
  'swap-of-nothing': {
    severity: 'error',
    says: 'this row does not say what is swapped',
    hint: 'Write the paint that is not used, or the step in which every paint is swapped.',
  },
  'swap-for-itself': {
    severity: 'error',
    says: '"{found}" is the very paint that it is to stand in for',
    hint: 'Write another paint, or take the row out.',
  },
  'swap-circle': {
    severity: 'error',
    says: 'these swaps go in a circle: {found}',
    hint: 'Take one of the rows out; two paints that change places need rows for different steps.',
  },
  'swap-repeated': {
    severity: 'error',
    says: 'the same scheme, step and paint already stand in {expected}',
    hint: 'One paint can be used instead: take one of the two rows out.',
  },
  'swap-of-other-kind': {
    severity: 'warning',
    says: '{found}, while {expected}',
    hint: 'It is used as you say; check that it is meant.',
  },
  'swap-without-use': {
    severity: 'warning',
    says: 'this row swaps nothing, as no scheme has {found} there',
    hint: 'Check scheme, step and paint.',
  },
  'swap-in-schemes': {
    severity: 'warning',
    says: 'with no scheme given, this holds for step {found} of {expected}',
    hint: 'Write the scheme if only one of them is meant.',
  },
} as const satisfies Record<string, Wording>;
