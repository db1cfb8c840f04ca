// Report view: how good an order is, in plain words. In: an order, what it is for. Out: sentences.
import type { Order } from '../../model/order.js';
import { joinSentences } from './join-sentences.js';
import type { NumberWords } from './word-numbers.js';
import { sharedWords } from './words.js';

/** How a search is given more time, with an example. */
export const { searchLonger } = sharedWords;

/** Proved, or how far above the best possible at most, and what can't be met. An order of nothing says nothing. */
export function wordProof(
  { status, aboveBestMinor, tiesOpen, lines }: Order,
  whom: 'army' | 'shelf',
  words: NumberWords,
): string {
  if (lines.length === 0) return '';
  const isUnmet = status === "can't be met";
  const { proofs, notProved, unmet, tiesOpen: open } = sharedWords;
  const isOpen = aboveBestMinor > 0 || tiesOpen === true;
  return joinSentences(
    isUnmet ? unmet : '',
    aboveBestMinor > 0 ? notProved(words.money(aboveBestMinor)) : proofs[whom][isUnmet ? 'rest' : 'all'],
    aboveBestMinor === 0 && isOpen ? open : '',
    isOpen ? searchLonger : '',
  );
}

/** How another sum lies to that of an order: `€0.95 more`. */
export function wordMore(extraMinor: number, words: NumberWords): string {
  if (extraMinor === 0) return sharedWords.same;
  const { more, less } = sharedWords;
  return (extraMinor > 0 ? more : less)(words.money(Math.abs(extraMinor)));
}

/** After what an order is said to reach; '' where the offers cover all of it. */
export const wordBut = ({ unmet }: Pick<Order, 'unmet'>): string =>
  unmet.length === 0 ? '' : sharedWords.butUnmet;
