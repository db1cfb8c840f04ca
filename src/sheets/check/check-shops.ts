// Checks: the shops sheet against the offers. In: rows of both. Out: one Shop for each shop that sells something.
import type { Shop } from '../../model/sheets.js';
import type { Table } from '../table.js';
import type { OfferSheet } from './check-offers.js';
import { type Findings, useDefault } from './collect-findings.js';
import { makeNameBook, type NameBook } from './keep-names.js';
import { column, type RowOf } from './open-sheet.js';
import type { CellKind } from './read-cell/cell-kind.js';
import { nameKind } from './read-cell/read-name.js';
import { type ReadSheet, readRows } from './read-rows.js';
import { tellRepeat } from './tell-repeat.js';

export const shopsSchema = (price: CellKind<number>) => ({
  shop: column('shop', nameKind),
  postage: column('postage', price, { blank: 0, meaning: '0' }),
  freeFrom: column('free from', price, { meaning: 'postage is always paid' }),
  leastOrder: column('least order', price, { meaning: 'any sum' }),
});

type ShopSheet = ReadSheet<ReturnType<typeof shopsSchema>>;
type Row = RowOf<ReturnType<typeof shopsSchema>>;

interface Given {
  readonly table: Table | undefined;
  readonly price: CellKind<number>;
  readonly offers: OfferSheet;
  readonly findings: Findings;
}

export interface CheckedShops {
  readonly sheet: ShopSheet;
  readonly shops: ReadonlyMap<string, Shop>;
  readonly book: NameBook;
}

/** Shops by name: those with a row, then those that only the offers name, which send for nothing. */
export function checkShops({ table, price, offers, findings }: Given): CheckedShops {
  const sheet: ShopSheet = readRows('shops', shopsSchema(price), { table, findings });
  const book = makeNameBook();
  const shops = new Map<string, Shop>();
  const first = new Map<string, number>();
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
  if (table === undefined) {
    useDefault(findings, {
      sheet: 'shops',
      column: 'postage',
      rows: unlisted,
      meaning: '0, as there is no shops sheet',
    });
  }
  return { sheet, shops, book };
}

function takeShop(
  sheet: ShopSheet,
  row: Row,
  {
    book,
    shops,
    first,
  }: Omit<CheckedShops, 'sheet'> & { readonly shops: Map<string, Shop>; readonly first: Map<string, number> },
): void {
  const { postage, freeFrom, leastOrder } = row;
  checkFreeFrom(sheet, row);
  if (row.shop === undefined) return;
  const shop = book.add(row.shop);
  if (tellRepeat(sheet, row, { key: 'shop', name: shop, first })) return;
  shops.set(shop, {
    shop,
    postageMinor: postage ?? 0,
    ...(freeFrom === undefined ? {} : { freeFromMinor: freeFrom }),
    ...(leastOrder === undefined ? {} : { leastOrderMinor: leastOrder }),
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
