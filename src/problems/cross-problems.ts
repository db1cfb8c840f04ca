// Problems: words for rows that do not fit one another, within a sheet or across sheets.
// `[...]` falls away where no known name is near.
import { error, warning } from './wording.js';

export const crossProblems = {
  'unknown-paint': error(
    'no sheet of yours knows the paint "{found}"',
    'Add it to the pots, paints or offers sheet[, or spell it as there: {expected}].',
  ),
  'unknown-figure': error(
    'the figures sheet does not know "{found}"',
    'Add it there[, or spell it as there: {expected}].',
  ),
  'unknown-scheme': error(
    'the schemes sheet does not know "{found}"',
    'Add it there[, or spell it as there: {expected}].',
  ),
  'like-circle': error(
    'these schemes begin like one another: {found}',
    'Write one of them out, and leave its like blank.',
  ),
  'like-nothing': error(
    'nothing in "{found}" is what this row is about',
    'Name a zone, layer or step of that scheme; what is new needs zone, layer and paint.',
  ),
  'like-two-ways': error(
    '"{found}" changes what {expected} changes too, and neither says more closely what is meant',
    'Say zone, layer and step of both.',
  ),
  'unknown-unit': error(
    'the army sheet does not know "{found}"',
    'Add it there[, or spell it as there: {expected}].',
  ),
  'unknown-zone': error(
    '"{found}" is neither a part nor a zone',
    'Add it to the zones sheet[, or write {expected}].',
  ),
  'unknown-column': error(
    '"{found}" is no column of that sheet',
    'Write the name of one[, such as {expected}]; leave it blank for a column of your own.',
  ),
  'unknown-header': error(
    'no header of that sheet is "{found}"',
    'Write it as it stands there[, such as {expected}], or take this row out.',
  ),
  'unknown-step': error('"{found}" is not a step of its scheme', 'Write one of its steps: {expected}.'),
  'rows-maybe-not-owned': warning(
    'this column is not read, so that each row counts as a pot on the shelf, also where it says "{found}" ({expected})',
    'Take the rows out that you do not own; if all are yours, let its header end in "notes".',
  ),
  'too-many-paints': error(
    'this is paint number {found} that the army is painted with, and {expected} can be planned at once',
    'Take some units out of the army sheet and plan them in sheets of their own.',
  ),
  'too-many-swaps': error(
    'this is swap number {found}, and {expected} can be taken at once',
    'Write what is painted now into the schemes sheet, and take those swaps out.',
  ),
  'scheme-needed': error('there are several schemes, and this unit names none', 'Write {expected}.'),
  'repeated-name': error(
    '"{found}" already stands in {expected}',
    'Give each a name of its own, or take one of the rows out.',
  ),
  'buy-and-sure': error(
    '"{found}" and sure % in {expected} say two different things',
    'Take one of the rows out: sure % is for an order with which nothing runs out, buy for one that others follow.',
  ),
  'repeated-treatment': error(
    'this step, zone, layer and paint already stand in {expected}',
    'Take one of the rows out; more coats go into the coats column.',
  ),
  'also-called-twice': error(
    '"{found}" is already another name of "{expected}"',
    'One name can mean one paint only: take it from one of the two.',
  ),
  'also-called-own': warning(
    '"{found}" has a row of its own in the paints sheet',
    'It stays a paint of its own; take it out here, or take out its row.',
  ),
  'paint-contradiction': error(
    '"{found}" does not agree with {expected}',
    'A paint can have one value only: write the same in both places, or leave one blank.',
  ),
  'unknown-range': error(
    'no paint of yours is of the range "{found}"',
    'Write it into the range column of pots or paints[, or spell it as there: {expected}].',
  ),
  'range-and-paint': error(
    '"{found}" is of one paint, and this row prices the whole range "{expected}"',
    'Leave one of the two cells blank.',
  ),
  'too-many-in-all': error(
    'with "{found}" here, the rows of this sheet come to more than {expected}',
    'Leave out what you do not paint with.',
  ),
  'offer-without-price': error(
    'the offer "{found}" has no price on any of its rows',
    'Write what the whole offer costs.',
  ),
  'offer-two-prices': error(
    '"{found}" is a second price for this offer, after {expected}',
    'Write the price of the whole offer on one row.',
  ),
  'offer-price-repeated': warning(
    '"{found}" already stands in {expected} of this offer',
    'It is taken once, for the whole set; pots sold one by one need offers of their own.',
  ),
  'price-out-of-line': warning(
    'at "{found}" a millilitre costs {expected}',
    'Check the decimal point of the price, the size and the number of pots; if all are right, leave them as they are.',
  ),
  'offer-two-limits': error(
    '"{found}" is a second limit for this offer, after {expected}',
    'Write how many of the whole offer can be had on one row.',
  ),
  'shop-without-row': warning(
    'the shops sheet does not know "{found}"',
    'Its postage counts as 0; add it there[, or spell it as there: {expected}].',
  ),
  'free-below-least': warning(
    'postage is free from "{found}", which is below the least order of {expected}',
    'Check both sums.',
  ),
  'least-out-of-reach': warning(
    'all offers of this shop together do not come to its least order of "{found}"',
    'So nothing can be bought there: check both, or add what else it sells.',
  ),
  'free-from-nothing': warning(
    '"{found}" means that this shop never asks for its postage of {expected}',
    'Leave this cell blank if postage is always paid; if none ever is, leave postage blank too.',
  ),
  'zone-name-taken': error(
    '"{found}" is already a part or a ready-made zone',
    'Give your zone another name.',
  ),
  'zone-in-zone': error(
    '"{found}" is a zone, and a zone is made of parts only',
    'Write its parts instead[: {expected}].',
  ),
  'part-over-whole': error(
    '"{found}" comes to {expected} in this zone',
    'Bring its shares down to 100% at the most.',
  ),
  'zone-not-on-figure': warning(
    'the zone "{found}" has no part on the figure "{expected}"',
    'Nothing is painted there; change the zone, or what the figure has.',
  ),
  'paint-not-had': warning(
    'no pot and no offer has the paint "{found}"',
    'It will be listed as unmet; add a pot or an offer of it.',
  ),
  'paint-maybe-misspelt': warning(
    'no scheme uses the paint "{found}", and no other sheet names it; one that is used is called {expected}',
    'Write {expected} if that is meant; if this is a paint of its own, give it a row in the paints sheet too.',
  ),
  'highlight-before-base': warning(
    'this zone is highlighted in step {found}, before its base coat in step {expected}',
    'Steps are painted in the order of their numbers: renumber them if the base coat comes first.',
  ),
  'sprayed-without-can': warning(
    'a {found} with no method counts as sprayed from a can, and "{expected}" comes in none',
    'Write how it goes on, such as brush or airbrush.',
  ),
  'step-out-of-order': warning(
    'step {found} stands below step {expected}',
    'Steps are painted in the order of their numbers: renumber it, or move the row.',
  ),
  'share-missing': error(
    'this row belongs to a mix and has no share',
    'Write its share, such as 50%, or give it a step of its own.',
  ),
  'shares-of-two-kinds': error(
    '"{found}" is not counted like {expected} in the same mix',
    'Write all shares of a mix in percent, or all in parts.',
  ),
  'shares-not-whole': error('the shares of this mix come to {found}', 'Bring them to 100%.'),
  'mix-contradiction': error(
    '"{found}" is not what the first row of the mix says[, {expected}]',
    'Coats, method, area % and thin of a mix stand on its first row: leave this cell blank.',
  ),
};
