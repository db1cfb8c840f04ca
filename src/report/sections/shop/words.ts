// Shop: the English of the list to take along. In: results, ways to say numbers. Out: text.
import { wordAlike, wordPots } from '../../words/word-alike.js';
import { countOf, type NumberWords } from '../../words/word-numbers.js';
import { sharedWords } from '../../words/words.js';

export const shopWords = (say: NumberWords) => ({
  title: 'Shopping list',
  labels: {
    still: 'Still to pay',
    untick: 'Untick all',
    unmet: sharedWords.noShop,
    report: 'The report',
  },
  nothing: sharedWords.nothingToBuy,
  group: sharedWords.whom,
  tick: sharedWords.bought,
  pots: (pots: number) => countOf(say, pots, 'pot'),
  /** For the page's script. */
  potWords: { one: '{count} pot', many: '{count} pots' },
  what: (pot: Parameters<typeof wordPots>[0]) => wordPots(pot, say),
  /** Of several of one offer. */
  apiece: (count: number, priceMinor: number) => `${say.count(count)} at ${say.money(priceMinor)}`,
  alike: (one: Parameters<typeof wordAlike>[0]) => wordAlike(one, say),
});

export type ShopWords = ReturnType<typeof shopWords>;
