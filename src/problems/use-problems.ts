// Problems: words for rows of log and swaps that do not fit the others. `[...]` falls away where no known name is near.
import { error, warning } from './wording.js';

export const useProblems = {
  'log-over-pot': error(
    'this row used {found}, more than there was: {expected}',
    'Check the amount, the paint, and what the pots sheet says of it.',
  ),
  'log-over-shelf': warning(
    'up to this row the log has used {found} of this paint, and its pots held {expected}',
    'Add pots that came since; where left was read later than these rows, write that day into counted.',
  ),
  'log-over-unit': warning(
    'up to this row {found} figures have had this paint in this step, and the unit has {expected}',
    'Log a step once, when all its coats are on; no more than the whole unit counts as progress.',
  ),
  'log-other-paint': warning(
    '"{found}" is not a paint of this step, so the row does not count as progress',
    'Check step and paint[; the step uses {expected}]. A paint used instead belongs in the swaps sheet.',
  ),
  'log-row-repeated': warning(
    'the same stands in {expected} already',
    'It counts twice: take one of the two out if it is the same work.',
  ),
  'log-takes-back-nothing': warning(
    'no row before it is like this one, so it takes nothing back',
    'Copy the row that never was, all its cells, and write not before its what.',
  ),
  'log-unknown-shop': warning(
    'no sheet of yours knows the shop "{found}"',
    'It counts all the same[; if that is meant, write {expected}].',
  ),
  'log-idle-cell': warning(
    'of a row with {expected} in what this cell is not read',
    'Leave it blank, or write another row for it.',
  ),
  'log-nothing-counted': warning(
    'this count says neither what is left nor how many pots there are',
    'Write left, such as 40%, or pots.',
  ),
  'log-empty-missing': warning(
    'nobody knows what the empty pot weighs, so this count is left out',
    'Write its weight into empty g of the pots sheet, or what is left in ml or percent.',
  ),
  'log-not-coming': warning(
    'more arrived than was bought: {expected} on the way',
    'Write the row with bought before it, with its day, size and shop; until then it brings no more than that.',
  ),
  'log-not-there': warning(
    'on that day so many do not stand on the shelf: {expected}',
    'Check paint, size and day, and whether what was bought has arrived.',
  ),
  'log-no-size': warning('nobody knows how large a pot this is, so it is left out', 'Write size ml.'),
  'log-count-gains': warning(
    'there is more in the pot, {found}, than at the count before, {expected}',
    'The later count holds; check both, and whether a pot was bought.',
  ),
  'pot-old': warning(
    'this pot was opened on {found}, and nobody has looked into it since {expected}',
    'Does it still flow? If so count it, and write the day into counted; if not, take its row out.',
  ),
  'log-too-many-pots': error(
    'up to this row the log has bought {found} pots, and {expected} can be followed',
    'Write the pots that are still there into the pots sheet, and begin a new log.',
  ),
  'swap-not-narrowed': warning(
    'a swap holds for every {expected} of its scheme and step, so this column is not read',
    'Give what is meant a scheme or a step of its own and name that; if this is a note, let its header end in "notes".',
  ),
  'swap-of-other-scheme': error(
    'this unit is painted as "{expected}", not as "{found}"',
    'Leave one of the two cells blank.',
  ),
  'swap-of-nothing': error(
    'this row does not say what is swapped',
    'Write the paint that is not used, or the step in which every paint is swapped.',
  ),
  'swap-for-itself': error(
    '"{found}" is the very paint that it is to stand in for',
    'Write another paint, or take the row out.',
  ),
  'swap-circle': error(
    'these swaps go in a circle: {found}',
    'Take one of the rows out; two paints that change places need rows for different steps.',
  ),
  'swap-repeated': error(
    'the same scheme, step and paint already stand in {expected}',
    'One paint can be used instead: take one of the two rows out.',
  ),
  'swap-of-other-kind': warning(
    '{found}, while {expected}',
    'It is used as you say; check that it is meant.',
  ),
  'swap-without-use': warning(
    'this row swaps nothing, as no scheme has {found} there',
    'Check scheme, step and paint.',
  ),
  'swap-in-schemes': warning(
    'with no scheme given, this holds for step {found} of {expected}',
    'Write the scheme if only one of them is meant.',
  ),
};
