// Report view: what follows once an order has come. In: the painted draws' results. Out: sentences.
import type { Follows } from '../../model/choices.js';
import { nameOf } from './word-name.js';
import type { NumberWords } from './word-numbers.js';
import { wordTimes } from './word-sure.js';
import { sharedWords } from './words.js';

/** Where the next order comes; '' where none does. */
export function wordNext({ next }: Follows, say: NumberWords): string {
  if (next === undefined) return '';
  const { unit, chanceThere, cashMinor } = next;
  return `The next most likely comes before ${nameOf(unit)} is done (in ${wordTimes(chanceThere, say)} armies), for about ${say.about(cashMinor.value)}.`;
}

/** Orders below it are as rare as a pot that should last is empty (common practice). */
const fewOrders = 0.1;

/** In the answer: how many more orders, before which unit, and all of them together. */
export function wordInAll({ meanInAllMinor, ordersAfter, atLeast, next }: Follows, say: NumberWords): string {
  if (next === undefined) return 'No other order follows.';
  if (ordersAfter.value < fewOrders) return 'No other order should follow.';
  const all = (atLeast ? sharedWords.atLeast : about)(say.about(meanInAllMinor.value));
  return `${wordOrders(ordersAfter.value, say)}, the next before ${nameOf(next.unit)} is done: ${all} in all.`;
}

const about = (sum: string): string => `about ${sum}`;

function wordOrders(orders: number, say: NumberWords): string {
  const [fewest, most] = [Math.floor(orders), Math.ceil(orders)];
  if (fewest === 0) return orders < 0.5 ? 'Perhaps one more order' : 'Expect one more order';
  const between = fewest === most ? '' : `${say.count(fewest)} or `;
  return `Expect ${between}${say.count(most)} more ${most === 1 ? 'order' : 'orders'}`;
}
