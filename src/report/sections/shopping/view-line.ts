// Report view: one line of the reorder list in words. In: the line, its shop, its order. Out: prices as text, what its pots
// cover and leave over, why it is there where it covers nothing.
import type { Order } from '../../../model/order.js';
import type { Plan } from '../../../model/plan.js';
import type { OrderSums } from '../../../model/summary.js';
import type { ReorderLine, ReorderPot, ReorderShop } from '../../reorder/view-reorder.js';
import { hexOf } from '../../words/hex-of.js';
import { countOf, mlDigits, type NumberWords } from '../../words/word-numbers.js';

export interface ShoppingLine {
  readonly offer: string;
  readonly count: string;
  readonly price: string;
  readonly cost: string;
  readonly pots: readonly {
    readonly paint: string;
    readonly hex: string;
    /** `2 pots of 17 ml` */
    readonly what: string;
    /** What the needs take of them and what they leave over. */
    readonly covers: string;
    readonly code: string;
  }[];
  /** Why more of it is bought than is needed; else ''. */
  readonly why: string;
}

/** What lines are worded from. */
export interface LineInputs {
  readonly plan: Plan;
  readonly order: Order;
  readonly sums: OrderSums;
  readonly words: NumberWords;
}

/** Price, count, pots; an offer that covers nothing says why it is bought. */
export function viewLine(line: ReorderLine, shop: ReorderShop, inputs: LineInputs): ShoppingLine {
  const { plan, words } = inputs;
  return {
    offer: line.offer,
    count: words.count(line.count),
    price: words.money(line.priceMinor),
    cost: words.money(line.costMinor),
    pots: line.pots.map((pot) => ({
      paint: pot.paint,
      hex: hexOf(plan, pot.paint),
      what: `${countOf(words, pot.count, pot.container)} of ${words.plain(pot.sizeMl)}\u00a0ml`,
      covers: wordCovers(pot, words),
      code: pot.code,
    })),
    why: wordWhy(line, shop, inputs),
  };
}

/** `covers 1.1 ml, leaves 10.5 ml`: both with as many digits as what is covered. */
function wordCovers({ coversMl, overMl }: ReorderPot, words: NumberWords): string {
  if (coversMl === 0) return 'covers nothing';
  const digits = mlDigits(coversMl);
  return `covers ${words.ml(coversMl, digits)}, leaves ${overMl === 0 ? 'nothing' : words.ml(overMl, digits)}`;
}

function wordWhy(line: ReorderLine, shop: ReorderShop, { order, words }: LineInputs): string {
  const { spare, count } = line;
  if (spare > 0) {
    const who = spare !== count ? `${words.count(spare)} of ${words.count(line.count)}` : 'This';
    // Only a proved order is known to hold nothing without reason.
    if (order.aboveBestMinor > 0) return `${who} may not be needed: the order is not proved.`;
    return `${who} only ${spare > 1 && spare !== count ? 'fill' : 'fills'} the order up to ${goalOf(shop)}.`;
  }
  const idle = line.pots.some(({ coversMl }) => coversMl === 0);
  return idle ? 'What covers nothing comes with the set.' : '';
}

/** Where postage is paid none was saved, so it is the least order that had to be reached. */
const goalOf = ({ postageMinor }: ReorderShop): string => {
  if (postageMinor > 0) return 'the least order';
  return postageMinor < 0 ? 'free postage' : 'free postage or the least order';
};
