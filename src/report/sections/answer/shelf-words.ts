// Answer: its English where there is no army. In: results, ways to say numbers. Out: text; '' where there is nothing to say.

import type { ShelfSums } from '../../../model/cost-sums.js';
import type { OrderSums } from '../../../model/order-sums.js';
import { formOf } from '../../words/form-of.js';
import { nameOf } from '../../words/word-name.js';
import { countOf, listOf, type NumberWords } from '../../words/word-numbers.js';

export const shelfWords = (say: NumberWords) => ({
  stands: {
    question: 'What is on the shelf?',
    holds: ({ pots, paints }: ShelfSums) =>
      `So much can be got out of ${countOf(say, pots, 'pot')} of ${countOf(say, paints, 'paint')}.`,
  },
  worth: {
    question: 'What is it worth?',
    noPrices: 'No prices yet',
    howToPrice: 'Write what your pots cost into the price column of the pots sheet.',
    says: 'At the prices paid, by what is left.',
    unpriced: ({ unpriced }: ShelfSums) =>
      unpriced === 0 ? '' : `${countOf(say, unpriced, 'pot')} ${formOf(unpriced, 'has', 'have')} none.`,
  },
  low: {
    question: 'What is low?',
    nothing: 'Nothing',
    figure: (low: number) => countOf(say, low, 'paint'),
    isEnough: 'Each paint reaches its keep level.',
    names: (paints: readonly string[]) => `${listOf(paints.map(nameOf))}.`,
    restock: (cashMinor: number) => `Restocking costs ${say.money(cashMinor)}, with postage.`,
    noShop: ({ pots, minor, atLeast }: OrderSums['alikeCost']) =>
      pots === 0 ? '' : `Without a shop: ${countOf(say, pots, 'pot')}, ${say.priced(minor, atLeast)}.`,
  },
});
