// Report view: the workbook's English, but for its sheets and columns. In: results. Out: text.
import type { Plan } from '../../../model/plan.js';
import { formOf } from '../../words/form-of.js';
import { sheetWords } from './sheet-words.js';

const plainWords: readonly string[] = [
  'Coats that the colours decided: they were chosen by comparing colours. Other coats follow the assumption, or are the scheme’s own.',
  'What is left in the pots, as read on the day of the plan and lowered by the log; only its usable share follows the assumption.',
  'The order and its pots: the program searched for them. If the need grows past the pots, the rest of it counts as unpriced.',
  'What is promised to be enough ("promised ml to buy"): it was drawn many times, not worked out. Low and high are for reading only.',
  'The cash for the order, and each unit’s share of it.',
  'What the log taught: it stands among the assumptions with the mark "weighed". A value that you change is not weighed again.',
  'How many figures the log calls done, and how many zones share one palette.',
];

/** What may be changed, what follows, and what does not: lines one below the other. */
export const readMeWords = {
  name: 'read me',
  header: 'Halfpot',
  lead: (date: string, currency: string): readonly string[] => [
    `This is the estimate of ${date}, worked out once more. Change a number and see what becomes of it.`,
    'Blue numbers are there to be changed: a wet film, a transfer, a dress factor, a count, what a pot costs. Black ones are formulas and follow.',
    'Nothing goes back: to keep a value of yours, write its name and the value into your settings sheet and plan again.',
    `Volumes are ml, areas cm2, films µm, money ${currency}. "Whole" is the whole scheme on all figures, "remaining" what is still to be done.`,
  ],
  together: (units: number): string =>
    `To keep this workbook small, ${units} units are put together by figure, scheme and step done ("more units"): their sittings are plain numbers.`,
  leftOut: (units: number): string =>
    `To keep this workbook small, ${formOf(units, 'one unit is', `${units} units are`)} left out: paint and cost are plain numbers in the sheets paints and costs, and do not follow. plan.json has their lines.`,
  sheets: ['The sheets', ...Object.values(sheetWords).map(({ name, says }) => `${name}: ${says}.`)],
  plain: ['What does not follow', ...plainWords],
};

export const totalWords = {
  figures: 'figures',
  whole: 'paint put out, whole scheme',
  remaining: 'paint put out, remaining',
  missing: 'likely to be missing',
  cost: 'cost of use, whole scheme',
  extras: 'of it extras',
  each: 'cost of use, a figure',
  left: 'cost of use, remaining',
  figuresPrice: 'price of the unpainted figures',
  /** Behind a sum where something in it has no price. */
  atLeast: ', at least',
  order: ({ promised: { surePercent } }: Plan): string =>
    surePercent === undefined ? 'cash for the order' : `cash for the order, to be ${surePercent}% sure`,
};

export const moneySheetWords = {
  used: 'used up',
  standing: 'standing in the pots',
  onWay: 'on its way',
  bought: (month: string): string => `bought in ${month}`,
  estimated: 'a finished figure, estimated',
  really: 'a finished figure, really',
};

export const cellWords = {
  atLeast: 'at least',
  unpriced: 'unpriced',
  /** Whether an assumption changes anything here. */
  works: { yes: 'yes', no: 'no' },
  allExtras: 'all of them',
  moreUnits: (units: number): string => `${units} more units`,
  leftOut: (units: number): string => formOf(units, 'the unit left out', `the ${units} units left out`),
  pot: (row: number, { isOnWay, sheet }: { readonly isOnWay: boolean; readonly sheet: string }): string =>
    `${isOnWay ? 'on its way' : 'shelf'}, row ${row} of ${sheet}`,
  notThere: (row: number, sheet: string): string => `not there; priced as row ${row} of ${sheet}`,
  ordered: (shop: string): string => `order, ${shop}`,
};
