// Answer: its English where there is no army. In: results, ways to say numbers. Out: text; '' where there is nothing to say.
import type { ShelfSums } from '../../../model/summary.js';
import { formOf } from '../../words/form-of.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';

export const shelfWords = (say: NumberWords) => ({
  stands: {
    question: 'What stands on the shelf?',
    figure: ({ pots }: ShelfSums) => countOf(say, pots, 'pot'),
    holds: ({ paints, haveMl }: ShelfSums) =>
      `Of ${countOf(say, paints, 'paint')}, with ${say.ml(haveMl)} that can be got out.`,
    low: (paints: readonly string[]) =>
      paints.length === 0
        ? 'None is below its keep level.'
        : `Below ${formOf(paints.length, 'its', 'their')} keep level: ${listOf(paints.map(nameOf))}.`,
  },
  worth: {
    question: 'What is it worth?',
    noPrices: 'No prices yet',
    howToPrice: 'Write what your pots cost into the price column of the pots sheet.',
    says: 'What the pots cost, by what can still be got out of them.',
    unpriced: ({ unpriced }: ShelfSums) =>
      unpriced === 0 ? '' : `Without a price: ${countOf(say, unpriced, 'pot')}.`,
  },
  restock: {
    question: 'What must I restock?',
    nothing: (low: number) => (low === 0 ? 'Nothing' : 'Nothing on offer'),
    says: 'So much brings low pots back to their keep level, postage included.',
    why: (low: number) =>
      low === 0 ? 'No pot is below its keep level.' : 'Low pots stand below; no offer holds their paint.',
  },
});
