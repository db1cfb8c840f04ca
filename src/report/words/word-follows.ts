// Report view: what follows once an order has come. In: the painted draws' results. Out: sentences.
import type { Follows } from '../../model/choices.js';
import { nameOf } from './word-name.js';
import type { NumberWords } from './word-numbers.js';
import { wordChance } from './word-sure.js';
import { sharedWords } from './words.js';

/** Where the next order comes; '' where none does. */
export function wordNext({ next }: Follows, say: NumberWords): string {
  if (next === undefined) return '';
  const { unit, chanceThere, cashMinor } = next;
  return `The next most likely falls before ${nameOf(unit)} is done (${wordChance(chanceThere, say)}), for about ${say.money(Math.round(cashMinor.value))}.`;
}

/** In the answer: all orders together, and the next one. */
export function wordInAll(follows: Follows, say: NumberWords): string {
  const { meanInAllMinor, highInAllMinor, ordersAfter, atLeast, next } = follows;
  if (next === undefined) return 'No other order follows.';
  const all = (atLeast ? sharedWords.atLeast : String)(say.money(Math.round(meanInAllMinor.value)));
  return `With ${say.tenth(ordersAfter.value)} more orders, on average, it is ${all} in all, one time in ten over ${say.money(Math.round(highInAllMinor.value))}. ${wordNext(follows, say)}`;
}
