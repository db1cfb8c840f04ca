// Costs: its English. In: results, ways to say numbers. Out: text.
import type { OrderSums } from '../../../model/order-sums.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';
import { lowHighMeaning } from '../../words/word-sure.js';

const labels = {
  heading: 'What it costs',
  lead: {
    before: 'Two sums that are never mixed: what the army ',
    uses: 'uses up',
    between: ', and what you must ',
    spend: 'spend',
    after: ' now.',
  },
  prices:
    'Prices are yours, from the pots and offers sheets. A paint’s price a millilitre is the average of the pots that will be used.',
  ofFigure: 'Cost of use of one figure, by unit',
  ofFigureMeaning:
    'The whole scheme on one figure, split over its layers. Beneath each bar low to high. All share one scale.',
  byLayer: 'Layer by layer',
  byLayerCaption:
    'Cost of use of one figure; cents are shared out so that the layers add up to it, so one may be a cent off',
  byUnit: 'Unit by unit',
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
  use: {
    title: 'Cost of use',
    /** `likeNewest`: paints of which some is priced as the newest pot was. */
    says: (extras: string, likeNewest: readonly string[]): string =>
      `Paint put out for the whole scheme at what its pots cost, and extras (${extras} of it).${wordLikeNewest(likeNewest)} Steps already done count too. Low to high: ${lowHighMeaning}, prices taken as they are.`,
  },
  remaining: {
    title: 'of that, still to be used',
    says: 'The same for the steps that are not done yet.',
  },
  cash: {
    title: 'Cash to spend',
    /** `alike`: what pots without a shop cost. */
    says: (perFigure: string, { minor, atLeast }: OrderSums['alikeCost']): string =>
      `Whole pots on the order, with postage: ${perFigure} a figure.${minor === 0 && !atLeast ? '' : ` Not in it, without a shop: ${say.priced(minor, atLeast)}.`} It is never added to the cost of use: part of it stays in the pots, and pots you own are paid already.`,
  },
  figures: {
    title: 'The figures themselves',
    says: (figures: number): string =>
      `What ${countOf(say, figures, 'unpainted figure')} cost, apart from both.`,
  },
  unpriced: (paints: readonly string[]): string =>
    `Without a price, wholly or in part: ${listOf(paints.map(nameOf), 12)}. They are not free, only unknown, so sums that lack them say “at least”, and their ranges are of the rest.`,
  /** Where the page is not the whole army. */
  more: (shown: number, units: number): string =>
    `The first ${say.count(shown)} of ${say.count(units)} units are shown one by one; the others are summed in one row, and plan.json lists each.`,
});
export type CostWords = ReturnType<typeof costWords>;

const wordLikeNewest = (paints: readonly string[]): string =>
  paints.length === 0
    ? ''
    : ` What neither pots nor order give of ${listOf(paints.map(nameOf), 12)} costs what your newest pot of it did (yours).`;
