// Checks: shops at which nothing can be bought. In: the shops sheet, offers. Out: a warning at each least order that all of a
// shop's offers together do not reach.
import { mostGoods } from '../../model/most-goods.js';
import type { Offer } from '../../model/sheets.js';
import type { CheckedShops } from './check-shops.js';

/** Told at the row of the shop. */
export function questionLeast({ sheet, book }: CheckedShops, offers: readonly Offer[]): void {
  const most = mostGoods(offers);
  for (const row of sheet.rows) {
    const shop = row.shop === undefined ? undefined : book.find(row.shop);
    const sum = shop === undefined ? undefined : most.get(shop);
    if (sum !== undefined && sum < (row.leastOrder ?? 0))
      sheet.blame('least-out-of-reach', row, 'leastOrder');
  }
}
