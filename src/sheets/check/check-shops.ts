// Checks: the shops sheet against the offers. In: rows of both. Out: one Shop for each shop that sells something.
import { mostGoods } from '../../model/most-goods.js';
import type { Offer, Shop } from '../../model/sheets.js';
import type { OfferSheet } from './check-offers.js';
import { makeNameBook, type NameBook } from './keep-names.js';
import type { From } from './open-sheet.js';
import { type RowIn, readRows, type SheetOf } from './read-rows.js';
import { tellRepeat } from './tell-names.js';
import { whatIsKnown } from './what-is-known.js';

type ShopSheet = SheetOf<'shops'>;
type Row = RowIn<'shops'>;

interface Given extends From {
  readonly offers: OfferSheet;
}

export interface CheckedShops {
  readonly sheet: ShopSheet;
  readonly shops: ReadonlyMap<string, Shop>;
  readonly book: NameBook;
}

/** Shops by name: those with a row, then those that only the offers name, which send for nothing. */
export function checkShops({ offers, ...from }: Given): CheckedShops {
  const sheet = readRows('shops', from);
  const book = makeNameBook();
  const shops = new Map<string, Shop>();
  const first = new Map<string, string>();
  for (const row of sheet.rows) takeShop(sheet, row, { book, shops, first });

  let unlisted = 0;
  for (const row of offers.rows) {
    if (row.shop === undefined || book.find(row.shop) !== undefined) continue;
    if (sheet.has('shop'))
      offers.blame('shop-without-row', row, 'shop', { expected: book.nearest(row.shop) });
    const shop = book.add(row.shop);
    shops.set(shop, { shop, postageMinor: 0 });
    unlisted += 1;
  }
  if (from.table === undefined) sheet.useBlank('postage', unlisted);
  return { sheet, shops, book };
}

function takeShop(
  sheet: ShopSheet,
  row: Row,
  {
    book,
    shops,
    first,
  }: Omit<CheckedShops, 'sheet'> & { readonly shops: Map<string, Shop>; readonly first: Map<string, string> },
): void {
  const { postage, freeFrom, leastOrder } = row;
  checkFreeFrom(sheet, row);
  if (row.shop === undefined) return;
  const shop = book.add(row.shop);
  if (tellRepeat(sheet, row, { key: 'shop', name: shop, first })) return;
  shops.set(shop, {
    shop,
    postageMinor: postage ?? 0,
    ...whatIsKnown({ freeFromMinor: freeFrom, leastOrderMinor: leastOrder }),
  });
}

/** A sum of 0 was likely meant as "never"; one below the least order is reached by any order. */
function checkFreeFrom(sheet: ShopSheet, row: Row): void {
  const { postage, freeFrom, leastOrder } = row;
  const said = (key: 'postage' | 'leastOrder') => ({ expected: `"${sheet.text(row, key)}"` });
  if (freeFrom === 0 && postage !== undefined && postage > 0) {
    sheet.blame('free-from-nothing', row, 'freeFrom', said('postage'));
  } else if (freeFrom !== undefined && leastOrder !== undefined && freeFrom < leastOrder) {
    sheet.blame('free-below-least', row, 'freeFrom', said('leastOrder'));
  }
}

/** Told at the row of a shop whose least order all of its offers together do not reach. */
export function questionLeast({ sheet, book }: CheckedShops, offers: readonly Offer[]): void {
  const most = mostGoods(offers);
  for (const row of sheet.rows) {
    const shop = row.shop === undefined ? undefined : book.find(row.shop);
    const sum = shop === undefined ? undefined : most.get(shop);
    if (sum !== undefined && sum < (row.leastOrder ?? 0))
      sheet.blame('least-out-of-reach', row, 'leastOrder');
  }
}
