// Model: what another pot of a paint would cost. In: the pots of one paint. Out: the newest of them that has a price.
import type { ShelfPot } from './stock.js';

/** A pot that cost something; `priceMinor` buys `fullUsableMl`. */
export type PaidPot = ShelfPot & { readonly priceMinor: number };

/**
 * The last to be used up of the pots with a price: one on its way or unopened before an opened one, of these the one opened
 * last, then the one in the lowest row. A pot that came for nothing tells no price; undefined where none does.
 */
export function newestPaid(inOrderOfUse: readonly ShelfPot[]): PaidPot | undefined {
  return inOrderOfUse.findLast((pot): pot is PaidPot => (pot.priceMinor ?? 0) > 0);
}
