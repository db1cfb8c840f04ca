// Words: pots without a shop. In: a pot, how many. Out: text.
import type { Alike } from '../../model/order-sums.js';
import { countOf, type NumberWords } from './word-numbers.js';
import { sharedWords } from './words.js';

/** `2 pots of 17 ml like yours, €5.90`; of a paint never owned `1 pot of 17 ml, unpriced`. */
export function wordAlike(
  { count, container, sizeMl, priceMinor, isOwned }: Alike,
  say: NumberWords,
): string {
  const pots = `${countOf(say, count, ...sharedWords.containers[container])} of ${say.plain(sizeMl)}\u00a0ml`;
  const cost = priceMinor === undefined ? sharedWords.unpriced : say.money(count * priceMinor);
  return `${pots}${isOwned ? ' like yours' : ''}, ${cost}`;
}
