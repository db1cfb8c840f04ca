// Costs: its English. In: results, ways to say numbers. Out: text.
import type { Amount } from '../../../model/money.js';
import type { OrderSums } from '../../../model/order-sums.js';
import type { Range } from '../../../model/ranges.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { wordRange } from '../../words/word-sure.js';

const labels = {
  heading: 'What painting costs',
  ofFigure: 'One figure, unit by unit',
  allUnits: 'All units',
  byLayer: 'A figure, layer by layer',
  byLayerCaption:
    'Cost of use of one figure; cents are shared out so that the layers add up to it, so one may be a cent off',
  byUnit: 'Each unit: paint, cash, bare figures',
  byUnitCaption:
    'Cost of use beside cash to spend; the order’s cash goes to units by their share of what is bought',
  unit: 'Unit',
  perFigure: 'a figure',
  use: 'cost of use',
  cash: 'cash to spend',
  figures: 'figures',
  whole: 'whole scheme',
  remaining: 'still to be used',
  cashOfUnit: 'the unit',
  cashPerFigure: 'a figure',
  figuresPrice: 'unpainted figures',
};

export const costWords = (say: NumberWords) => ({
  labels,
  extras: 'extras',
  wholeArmy: 'The whole army',
  otherUnits: 'All other units',
  barTitle: (unit: string, perFigure: string): string => `${nameOf(unit)}: ${perFigure} a figure`,
  lead: (whole: Amount, range: Range): string =>
    whole.atLeast && whole.exactMinor.isZero()
      ? 'No price is known yet.'
      : `Painting uses up ${say.amount(whole)} of paint and extras, usually ${wordRange(range, say.about)}. Cash is another sum: part of it stays in the pots.`,
  use: {
    title: 'Cost of use',
    /** `likeNewest`: paints of which some is priced as the newest pot was. */
    says: (extras: string, likeNewest: readonly string[]): string =>
      `The whole scheme, done or not; extras are ${extras} of it.${wordLikeNewest(likeNewest)}`,
  },
  remaining: { title: 'of that, still to be used', says: '' },
  cash: {
    title: 'Cash to spend',
    /** `alike`: what pots without a shop cost. */
    says: (perFigure: string, { minor, atLeast }: OrderSums['alikeCost']): string =>
      `Whole pots with postage, ${perFigure} a figure.${minor === 0 && !atLeast ? '' : ` Not in it, without a shop: ${say.priced(minor, atLeast)}.`}`,
  },
  figures: {
    title: 'The figures themselves',
    says: (figures: number): string =>
      `What ${countOf(say, figures, 'unpainted figure')} cost, apart from both.`,
  },
  unpriced: (paints: readonly string[]): string =>
    `Without a price, wholly or in part: ${listOf(paints.map(nameOf), 12)}. Sums that lack them say “at least”.`,
  /** Where the page is not the whole army. */
  more: (shown: number, units: number): string =>
    `The first ${say.count(shown)} of ${say.count(units)} units are shown one by one; the others are summed in one row, and plan.json lists each.`,
});
export type CostWords = ReturnType<typeof costWords>;

const wordLikeNewest = (paints: readonly string[]): string =>
  paints.length === 0
    ? ''
    : ` What is still missing of ${listOf(paints.map(nameOf), 12)} is priced like your newest pot of it.`;
