// Report view: how good an order is, in plain words. In: an order, what it is for. Out: sentences.
import type { Order } from '../../model/order.js';
import type { NumberWords } from './word-numbers.js';

/** How a search is given more time, with an example. */
export const searchLonger = 'Plan again with more time to search, such as --seconds 60.';

const proofs: Record<'army' | 'shelf', { readonly all: string; readonly rest: string }> = {
  army: {
    all: 'Proved: no order that covers these amounts costs less. Every mix of pots, sets and shops was weighed, postage included.',
    rest: 'No order that covers this rest costs less: that is proved.',
  },
  shelf: {
    all: 'Proved: beside the order for the army, nothing that fills these pots up costs less.',
    rest: 'Beside the order for the army, nothing that covers this rest costs less: that is proved.',
  },
};

/** Of a proved order that may not be the one in the fewest shops and pots. */
const open = ` Time ran out before all orders at this cost were compared: another may take fewer shops or pots. ${searchLonger}`;

/** Proved, or how far above the best possible at most, and what can't be met. An order of nothing says nothing. */
export function wordProof(
  { status, aboveBestMinor, tiesOpen, lines }: Order,
  whom: 'army' | 'shelf',
  words: NumberWords,
): string {
  if (lines.length === 0) return '';
  const unmet = status === "can't be met";
  const lead = unmet
    ? 'The offers do not cover everything: what they lack is listed, the rest is ordered. '
    : '';
  if (aboveBestMinor === 0) return `${lead}${proofs[whom][unmet ? 'rest' : 'all']}${tiesOpen ? open : ''}`;
  return `${lead}Not proved to be the cheapest: it costs at most ${words.money(aboveBestMinor)} above the best possible. ${searchLonger}`;
}

/** How another sum lies to that of an order: `€0.95 more`. */
export function wordMore(extraMinor: number, words: NumberWords): string {
  if (extraMinor === 0) return 'the same';
  return `${words.money(Math.abs(extraMinor))} ${extraMinor > 0 ? 'more' : 'less'}`;
}
