// Order: the whole order as one integer program. In: needs, offers, shops. Out: columns and rows, and what they mean.
import { at } from '../model/at.js';
import type { OrderNeed } from '../model/order.js';
import type { Shop } from '../model/sheets.js';
import { findHolders, type Holders, placesByShop } from './list-wares.js';
import type { Column, IntegerProgram, Row } from './solver/integer-program.js';
import type { Ware } from './ware.js';

/** A shop's columns: 1 where it is bought from; 1 where its postage is waived. */
interface ShopColumns {
  readonly used?: number;
  readonly free?: number;
}

/** Which column says what. */
export interface OrderProgram {
  readonly program: IntegerProgram;
  /** Column i counts ware i. */
  readonly wares: readonly Ware[];
  readonly holders: Holders;
  readonly shops: ReadonlyMap<string, ShopColumns>;
}

/** What an order program is written from. */
export interface Demand {
  readonly needs: readonly OrderNeed[];
  readonly wares: readonly Ware[];
  readonly shops: ReadonlyMap<string, Shop>;
  /** How many of each ware the order must hold. */
  readonly held: readonly number[];
}

/**
 * Least cash for offers that cover every need:
 * minimise `price x count + postage x (used - free)` over all offers and shops, where
 * each paint: `sum of min(ml, need) x count >= need` (more than the need in one offer helps no further);
 * each offer: `count <= most x used`; each shop: `goods >= least order x used`, `goods >= free from x free`,
 * `free <= used`. Needs must lie within what the offers hold.
 */
export function buildProgram({ needs, wares, held, shops }: Demand): OrderProgram {
  const holders = findHolders(wares);
  const columns: Column[] = wares.map(({ offer, most }, index) => {
    const lower = at(held, index);
    return whole(offer.priceMinor, Math.max(most, lower), lower);
  });
  const rows: Row[] = needs.map((need) => coverRow(need, holders));
  const shopColumns = new Map<string, ShopColumns>();
  for (const [shop, places] of placesByShop(wares)) {
    const terms = shops.get(shop) ?? { shop, postageMinor: 0 };
    const goods = places.map((column): [number, number] => [column, at(columns, column).cost]);
    shopColumns.set(shop, addShop(terms, goods, columns, rows));
  }
  return { program: { columns, rows }, wares, holders, shops: shopColumns };
}

const whole = (cost: number, upper: number, lower = 0): Column => ({ cost, lower, upper, integer: true });
const atLeast = (lower: number, terms: Row['terms']): Row => ({
  lower,
  upper: Number.POSITIVE_INFINITY,
  terms,
});

/** The covering row of one paint, its coefficients tightened to the need, so that its relaxation is tighter. */
function coverRow({ paint, ml: need }: OrderNeed, holders: Holders): Row {
  return atLeast(
    need,
    (holders.get(paint) ?? []).map(({ column, ml }) => [column, Math.min(ml, need)]),
  );
}

/** `goods`: the columns of what the shop sells, each with its price. */
function addShop(
  { postageMinor, freeFromMinor, leastOrderMinor = 0 }: Shop,
  goods: Row['terms'],
  columns: Column[],
  rows: Row[],
): ShopColumns {
  const used = columns.push(whole(postageMinor, 1)) - 1;
  for (const [column] of goods) {
    rows.push(
      atLeast(0, [
        [used, at(columns, column).upper],
        [column, -1],
      ]),
    );
  }
  if (leastOrderMinor > 0) rows.push(atLeast(0, [...goods, [used, -leastOrderMinor]]));
  if (freeFromMinor === undefined || postageMinor === 0) return { used };
  const free = columns.push(whole(-postageMinor, 1)) - 1;
  rows.push(
    atLeast(0, [
      [used, 1],
      [free, -1],
    ]),
    atLeast(0, [...goods, [free, -freeFromMinor]]),
  );
  return { used, free };
}

/** Every column's value where so many of each ware are bought: shops used, postage waived. */
export function columnsOf(
  { program, wares, shops }: OrderProgram,
  counts: readonly number[],
  terms: Demand['shops'],
): number[] {
  const values = program.columns.map((_, column) => (column < wares.length ? at(counts, column) : 0));
  const places = placesByShop(wares);
  for (const [shop, { used, free }] of shops) {
    const bought = (places.get(shop) ?? []).filter((place) => at(counts, place) > 0);
    const isUsed = bought.length > 0;
    const sum = bought.reduce(
      (total, place) => total + at(counts, place) * at(wares, place).offer.priceMinor,
      0,
    );
    if (used !== undefined) values[used] = isUsed ? 1 : 0;
    if (free !== undefined) values[free] = isUsed && sum >= (terms.get(shop)?.freeFromMinor ?? 0) ? 1 : 0;
  }
  return values;
}
