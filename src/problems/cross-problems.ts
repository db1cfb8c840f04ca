// Problems: words for rows that do not fit one another, within a sheet or across sheets.
// `[...]` falls away where no known name is near.
import type { Wording } from './wording.js';

export const crossProblems = {
  'unknown-paint': {
    severity: 'error',
    says: 'no sheet of yours knows the paint "{found}"',
    hint: 'Add it to the pots, paints or offers sheet[, or spell it as there: {expected}].',
  },
  'unknown-figure': {
    severity: 'error',
    says: 'the figures sheet does not know "{found}"',
    hint: 'Add it there[, or spell it as there: {expected}].',
  },
  'unknown-scheme': {
    severity: 'error',
    says: 'the schemes sheet does not know "{found}"',
    hint: 'Add it there[, or spell it as there: {expected}].',
  },
  'like-circle': {
    severity: 'error',
    says: 'these schemes begin like one another: {found}',
    hint: 'Write one of them out, and leave its like blank.',
  },
  'like-nothing': {
    severity: 'error',
    says: 'nothing in "{found}" is what this row is about',
    hint: 'Name a zone, layer or step of that scheme; what is new needs zone, layer and paint.',
  },
  'like-two-ways': {
    severity: 'error',
    says: '"{found}" changes what {expected} changes too, and neither says more closely what is meant',
    hint: 'Say zone, layer and step of both.',
  },
  'unknown-unit': {
    severity: 'error',
    says: 'the army sheet does not know "{found}"',
    hint: 'Add it there[, or spell it as there: {expected}].',
  },
  'unknown-zone': {
    severity: 'error',
    says: '"{found}" is neither a part nor a zone',
    hint: 'Add it to the zones sheet[, or write {expected}].',
  },
  'unknown-column': {
    severity: 'error',
    says: '"{found}" is no column of that sheet',
    hint: 'Write the name of one[, such as {expected}]; leave it blank for a column of your own.',
  },
  'unknown-header': {
    severity: 'error',
    says: 'no header of that sheet is "{found}"',
    hint: 'Write it as it stands there[, such as {expected}], or take this row out.',
  },
  'unknown-step': {
    severity: 'error',
    says: '"{found}" is not a step of its scheme',
    hint: 'Write one of its steps: {expected}.',
  },
  'rows-maybe-not-owned': {
    severity: 'warning',
    says: 'this column is not read, so that each row counts as a pot on the shelf, also where it says "{found}" ({expected})',
    hint: 'Take the rows out that you do not own; if all are yours, let its header end in "notes".',
  },
  'too-many-paints': {
    severity: 'error',
    says: 'this is paint number {found} that the army is painted with, and {expected} can be planned at once',
    hint: 'Take some units out of the army sheet and plan them in sheets of their own.',
  },
  'too-many-swaps': {
    severity: 'error',
    says: 'this is swap number {found}, and {expected} can be taken at once',
    hint: 'Write what is painted now into the schemes sheet, and take those swaps out.',
  },
  'scheme-needed': {
    severity: 'error',
    says: 'there are several schemes, and this unit names none',
    hint: 'Write {expected}.',
  },
  'repeated-name': {
    severity: 'error',
    says: '"{found}" already stands in {expected}',
    hint: 'Give each a name of its own, or take one of the rows out.',
  },
  'buy-and-sure': {
    severity: 'error',
    says: '"{found}" and sure % in {expected} say two different things',
    hint: 'Take one of the rows out: sure % is for an order with which nothing runs out, buy for one that others follow.',
  },
  'repeated-treatment': {
    severity: 'error',
    says: 'this step, zone, layer and paint already stand in {expected}',
    hint: 'Take one of the rows out; more coats go into the coats column.',
  },
  'also-called-twice': {
    severity: 'error',
    says: '"{found}" is already another name of "{expected}"',
    hint: 'One name can mean one paint only: take it from one of the two.',
  },
  'also-called-own': {
    severity: 'warning',
    says: '"{found}" has a row of its own in the paints sheet',
    hint: 'It stays a paint of its own; take it out here, or take out its row.',
  },
  'paint-contradiction': {
    severity: 'error',
    says: '"{found}" does not agree with {expected}',
    hint: 'A paint can have one value only: write the same in both places, or leave one blank.',
  },
  'unknown-range': {
    severity: 'error',
    says: 'no paint of yours is of the range "{found}"',
    hint: 'Write it into the range column of pots or paints[, or spell it as there: {expected}].',
  },
  'range-and-paint': {
    severity: 'error',
    says: '"{found}" is of one paint, and this row prices the whole range "{expected}"',
    hint: 'Leave one of the two cells blank.',
  },
  'too-many-in-all': {
    severity: 'error',
    says: 'with "{found}" here, the rows of this sheet come to more than {expected}',
    hint: 'Leave out what you do not paint with.',
  },
  'offer-without-price': {
    severity: 'error',
    says: 'the offer "{found}" has no price on any of its rows',
    hint: 'Write what the whole offer costs.',
  },
  'offer-two-prices': {
    severity: 'error',
    says: '"{found}" is a second price for this offer, after {expected}',
    hint: 'Write the price of the whole offer on one row.',
  },
  'offer-price-repeated': {
    severity: 'warning',
    says: '"{found}" already stands in {expected} of this offer',
    hint: 'It is taken once, for the whole set; pots sold one by one need offers of their own.',
  },
  'price-out-of-line': {
    severity: 'warning',
    says: 'at "{found}" a millilitre costs {expected}',
    hint: 'Check the decimal point of the price, the size and the number of pots; if all are right, leave them as they are.',
  },
  'offer-two-limits': {
    severity: 'error',
    says: '"{found}" is a second limit for this offer, after {expected}',
    hint: 'Write how many of the whole offer can be had on one row.',
  },
  'shop-without-row': {
    severity: 'warning',
    says: 'the shops sheet does not know "{found}"',
    hint: 'Its postage counts as 0; add it there[, or spell it as there: {expected}].',
  },
  'free-below-least': {
    severity: 'warning',
    says: 'postage is free from "{found}", which is below the least order of {expected}',
    hint: 'Check both sums.',
  },
  'least-out-of-reach': {
    severity: 'warning',
    says: 'all offers of this shop together do not come to its least order of "{found}"',
    hint: 'So nothing can be bought there: check both, or add what else it sells.',
  },
  'free-from-nothing': {
    severity: 'warning',
    says: '"{found}" means that this shop never asks for its postage of {expected}',
    hint: 'Leave this cell blank if postage is always paid; if none ever is, leave postage blank too.',
  },
  'zone-name-taken': {
    severity: 'error',
    says: '"{found}" is already a part or a ready-made zone',
    hint: 'Give your zone another name.',
  },
  'zone-in-zone': {
    severity: 'error',
    says: '"{found}" is a zone, and a zone is made of parts only',
    hint: 'Write its parts instead[: {expected}].',
  },
  'part-over-whole': {
    severity: 'error',
    says: '"{found}" comes to {expected} in this zone',
    hint: 'Bring its shares down to 100% at the most.',
  },
  'zone-not-on-figure': {
    severity: 'warning',
    says: 'the zone "{found}" has no part on the figure "{expected}"',
    hint: 'Nothing is painted there; change the zone, or what the figure has.',
  },
  'paint-not-had': {
    severity: 'warning',
    says: 'no pot and no offer has the paint "{found}"',
    hint: 'It will be listed as unmet; add a pot or an offer of it.',
  },
  'paint-maybe-misspelt': {
    severity: 'warning',
    says: 'no scheme uses the paint "{found}", and no other sheet names it; one that is used is called {expected}',
    hint: 'Write {expected} if that is meant; if this is a paint of its own, give it a row in the paints sheet too.',
  },
  'highlight-before-base': {
    severity: 'warning',
    says: 'this zone is highlighted in step {found}, before its base coat in step {expected}',
    hint: 'Steps are painted in the order of their numbers: renumber them if the base coat comes first.',
  },
  'sprayed-without-can': {
    severity: 'warning',
    says: 'a {found} with no method counts as sprayed from a can, and "{expected}" comes in none',
    hint: 'Write how it goes on, such as brush or airbrush.',
  },
  'step-out-of-order': {
    severity: 'warning',
    says: 'step {found} stands below step {expected}',
    hint: 'Steps are painted in the order of their numbers: renumber it, or move the row.',
  },
  'share-missing': {
    severity: 'error',
    says: 'this row belongs to a mix and has no share',
    hint: 'Write its share, such as 50%, or give it a step of its own.',
  },
  'shares-of-two-kinds': {
    severity: 'error',
    says: '"{found}" is not counted like {expected} in the same mix',
    hint: 'Write all shares of a mix in percent, or all in parts.',
  },
  'shares-not-whole': {
    severity: 'error',
    says: 'the shares of this mix come to {found}',
    hint: 'Bring them to 100%.',
  },
  'mix-contradiction': {
    severity: 'error',
    says: '"{found}" is not what the first row of the mix says[, {expected}]',
    hint: 'Coats, method, area % and thin of a mix stand on its first row: leave this cell blank.',
  },
} as const satisfies Record<string, Wording>;
