// Words: a shop's bill. In: its goods and postage. Out: text.
import type { ShopBill } from '../../model/order.js';
import type { Summary } from '../../model/summary.js';
import type { NumberWords } from './word-numbers.js';

/** `isMore`: another order to the shop pays its postage already. */
export type Posting = Pick<Summary, 'isPostageKnown'> & { readonly isMore: boolean };

/** `Goods €56.70, postage free` */
export function wordGoods(
  { goodsMinor, postageMinor }: Pick<ShopBill, 'goodsMinor' | 'postageMinor'>,
  posting: Posting,
  say: NumberWords,
): string {
  return `Goods ${say.money(goodsMinor)}, ${wordPostage(postageMinor, posting, say)}`;
}

/** Goods of the shelf's group may make those of the army travel free. */
function wordPostage(minor: number, { isMore, isPostageKnown }: Posting, say: NumberWords): string {
  if (minor !== 0) return minor < 0 ? `postage back ${say.money(-minor)}` : `postage ${say.money(minor)}`;
  if (isMore) return 'no more postage';
  return isPostageKnown ? 'postage free' : 'postage not known';
}
