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
  'log-takes-back-nothing': {
    severity: 'warning',
    says: 'no row before it is like this one, so it takes nothing back',
    hint: 'Copy the row that never was, all its cells, and write not before its what.',
  },
  'log-unknown-shop': {
    severity: 'warning',
    says: 'no sheet of yours knows the shop "{found}"',
    hint: 'It counts all the same[; if that is meant, write {expected}].',
  },
  'log-idle-cell': {
    severity: 'warning',
    says: 'of a row with {expected} in what this cell is not read',
    hint: 'Leave it blank, or write another row for it.',
  },
  'log-nothing-counted': {
    severity: 'warning',
    says: 'this count says neither what is left nor how many pots there are',
    hint: 'Write left, such as 40%, or pots.',
  },
  'log-empty-missing': {
    severity: 'warning',
    says: 'nobody knows what the empty pot weighs, so this count is left out',
    hint: 'Write its weight into empty g of the pots sheet, or what is left in ml or percent.',
  },
  'log-not-coming': {
    severity: 'warning',
    says: 'more arrived than was bought: {expected} on the way',
    hint: 'Write the row with bought before it, with its day, size and shop; until then it brings no more than that.',
  },
  'log-not-there': {
    severity: 'warning',
    says: 'on that day so many do not stand on the shelf: {expected}',
    hint: 'Check paint, size and day, and whether what was bought has arrived.',
  },
  'log-no-size': {
    severity: 'warning',
    says: 'nobody knows how large a pot this is, so it is left out',
    hint: 'Write size ml.',
  },
  'log-count-gains': {
    severity: 'warning',
    says: 'there is more in the pot, {found}, than at the count before, {expected}',
    hint: 'The later count holds; check both, and whether a pot was bought.',
  },
  'pot-old': {
    severity: 'warning',
    says: 'this pot was opened on {found}, and nobody has looked into it since {expected}',
    hint: 'Does it still flow? If so count it, and write the day into counted; if not, take its row out.',
  },
  'log-too-many-pots': {
    severity: 'error',
    says: 'up to this row the log has bought {found} pots, and {expected} can be followed',
    hint: 'Write the pots that are still there into the pots sheet, and begin a new log.',
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
