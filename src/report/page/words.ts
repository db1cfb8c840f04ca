// Page: the English of the frame around the sections. In: the plan, ways to say numbers. Out: text.
import type { Lacking, Plan } from '../../model/plan.js';
import { nameOf } from '../words/word-name.js';
import { countOf, type NumberWords, wordDate } from '../words/word-numbers.js';
import { sharedWords } from '../words/words.js';

const frame = {
  skip: 'Skip to the answer',
  contents: 'Contents',
  links: {
    answer: 'Answer',
    shopping: 'Buy',
    pots: 'Pots',
    time: 'Evenings',
    cautions: 'Safety',
    costs: 'Cost',
    use: 'Figures',
    weigh: 'Trust',
    sheets: 'Sheets',
    bench: 'Bench cards',
    shop: 'Shopping list',
    everything: 'Print everything',
  },
  made: sharedWords.made,
  /** What the page's script says of its own, and by what it knows how a number is meant. */
  acts: {
    find: 'Find',
    sort: 'Sort',
    unsorted: 'as listed',
    some: sharedWords.some('{some}', '{all}'),
    under: sharedWords.under('').trim(),
    less: 'less fewer',
  },
};

const more: Readonly<Record<Lacking, string>> = {
  army: 'With sheets of figures, schemes and army: whether the pots last, what the army costs, what to buy for it.',
  pots: 'With a sheet of pots: how much of this you have. Without one, all of it is reckoned from scratch.',
  offers: 'With a sheet of offers: what to buy in which shop, and what it costs.',
};

export const pageWords = (say: NumberWords) => ({
  frame,
  title: ({ figureCount, lacking }: Plan) =>
    lacking.includes('army') ? 'Paint on the shelf' : `Paint for ${countOf(say, figureCount, 'figure')}`,
  more,
  /** Units, paints, date. */
  facts: ({ estimate, summary, date, lacking }: Plan, lang: string) => [
    ...(lacking.includes('army')
      ? [countOf(say, summary.shelf.pots, 'pot'), countOf(say, summary.shelf.paints, 'paint')]
      : [countOf(say, estimate.units.length, 'unit'), countOf(say, summary.work.paints.size, 'paint')]),
    wordDate(date, lang),
  ],
  palette: {
    title: 'Palette',
    says: (paints: readonly string[], isShelf: boolean) =>
      `The paints ${isShelf ? 'on your shelf' : 'of this army in the order in which they go on'}: ${paints.map(nameOf).join(', ')}`,
  },
});

export type PageWords = ReturnType<typeof pageWords>;
