// Report view: one line of the reorder list. In: the line, its shop, its order. Out: prices as text, what its pots cover
// and leave over, why it is there where it covers nothing.

import type { Order } from '../../../model/order.js';
import type { OrderSums } from '../../../model/order-sums.js';
import { codeOfSet } from '../../reorder/code-of-set.js';
import type { ReorderLine, ReorderShop } from '../../reorder/view-reorder.js';
import { hexOf } from '../../words/hex-of.js';
import type { Worded } from '../../words/view-inputs.js';
import type { ShoppingWords } from './words.js';

export interface ShoppingLine {
  readonly offer: string;
  /** Of a set as a whole; '' where each pot has its own. */
  readonly code: string;
  /** Beside its box, for who can't see the table. */
  readonly tick: string;
  /** Its cost in minor units, by which its tick is known again. */
  readonly minor: number;
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
  /** How likely it is needed; '' where nothing was drawn. */
  readonly needed: string;
  /** Why more of it is bought than is needed; else ''. */
  readonly why: string;
}

/** What lines are worded from. */
export interface LineInputs extends Worded<ShoppingWords> {
  readonly order: Order;
  readonly sums: OrderSums;
}

/** Price, count, pots; an offer that covers nothing says why it is bought. */
export function viewLine(line: ReorderLine, shop: ReorderShop, inputs: LineInputs): ShoppingLine {
  const { plan, words, texts } = inputs;
  const code = codeOfSet(line);
  return {
    ...{ offer: line.offer, code },
    tick: texts.tick(line.offer),
    minor: line.costMinor,
    count: words.count(line.count),
    price: words.money(line.priceMinor),
    cost: words.money(line.costMinor),
    pots: line.pots.map((pot) => ({
      paint: pot.paint,
      hex: hexOf(plan, pot.paint),
      what: texts.pots(pot),
      covers: texts.covers(pot),
      code: code === '' ? pot.code : '',
    })),
    needed: line.needed === undefined ? '' : texts.needed(line.needed, plan.aim),
    why: wordWhy(line, shop, inputs),
  };
}

function wordWhy(line: ReorderLine, shop: ReorderShop, { order, texts }: LineInputs): string {
  if (line.spare > 0) return texts.spare(line, order.aboveBestMinor === 0, shop);
  return line.pots.some(({ coversMl }) => coversMl === 0) ? texts.idle : '';
}
