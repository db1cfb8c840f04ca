// Words: pots, with or without a shop. In: a pot, how many. Out: text.
import type { OrderedPot } from '../../model/order.js';
import type { Alike } from '../../model/order-sums.js';
import { countOf, type NumberWords } from './word-numbers.js';
import { sharedWords } from './words.js';

/** `2 pots of 17 ml` */
export const wordPots = (
  { count, container, sizeMl }: Pick<OrderedPot, 'count' | 'container' | 'sizeMl'>,
  say: NumberWords,
): string => `${countOf(say, count, ...sharedWords.containers[container])} of ${say.plain(sizeMl)}\u00a0ml`;

/** `2 pots of 17 ml like yours, €5.90`; of a paint never owned `1 pot of 17 ml, unpriced`. */
export function wordAlike(alike: Alike, say: NumberWords): string {
  const { count, priceMinor, isOwned } = alike;
  const cost = priceMinor === undefined ? sharedWords.unpriced : say.money(count * priceMinor);
  return `${wordPots(alike, say)}${isOwned ? ' like yours' : ''}, ${cost}`;
}
