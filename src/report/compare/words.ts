// Compare: its English. In: results. Out: text; '' where there is nothing to say.
import type { SumName } from '../../compare/compare-plans.js';
import { comparedSheets, type SheetDifference } from '../../compare/differ-sheets.js';

const sums: Readonly<Record<SumName, string>> = {
  'cash now': 'Cash now',
  'cash in all': 'Cash in all, on average',
  'cost a figure': 'Cost a figure',
  'pots short': 'Paints that run out',
  evenings: 'Evenings',
  coats: 'Coats to paint',
};

export const compareWords = {
  title: 'Two plans compared',
  sums,
  headings: { sums: 'Side by side', paints: 'Paint to put out, ml', sheets: 'What differs in the sheets' },
  columns: { a: 'A', b: 'B', difference: 'B less A', sum: 'Of the plan', paint: 'Paint', sheet: 'Sheet' },
  same: 'Nothing differs.',
  sameSheets: (hasMarkets: boolean) =>
    `Nothing in ${comparedSheets.slice(0, hasMarkets ? undefined : -2).join(', ')}.`,
  noOffers: 'Offers and shops are not compared: plan.json does not list them. Name the sheets for that.',
  currencies: (a: string, b: string) => `A is in ${a}, B in ${b}: no difference in money is made.`,
  atLeast: 'Sums of “at least” are compared without what has no price.',
  more: (rows: number) => `and ${rows} more in compare.html`,
  alike: (paints: number) =>
    paints === 0 ? '' : paints === 1 ? '1 paint is alike.' : `${paints} paints are alike.`,
  row: ({ sheet, name, column }: SheetDifference) =>
    `${sheet}, ${name}${column === undefined || column === 'value' ? '' : `: ${column}`}`,
  fault: {
    older: 'was written by an older Halfpot',
    newer: 'was written by a newer Halfpot',
    damaged: 'is not a plan, or is damaged',
  },
  missing: 'not there',
  blank: 'none',
};
