// Order: offers as the program counts them. In: needs, offers, shops, assumptions. Out: wares in a fixed order.

import { usableShare } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import { mostGoods } from '../model/most-goods.js';
import type { OrderNeed } from '../model/order.js';
import type { Offer, OfferPot, Shop } from '../model/sheets.js';
import { sameMl } from '../model/volume.js';

/** What can be bought, and where. */
export interface Market {
  readonly offers: readonly Offer[];
  readonly shops: ReadonlyMap<string, Shop>;
  readonly assumptions: Assumptions;
}

/** One offer with what an order needs to know of it. */
export interface Ware {
  readonly offer: Offer;
  /** Usable ml of each paint in one of it. */
  readonly mlOf: ReadonlyMap<string, number>;
  readonly pots: number;
  /** How many can be had; Infinity for no limit. */
  readonly limit: number;
  /** So many cover every need that it can cover; 0 where it holds nothing needed. */
  readonly useful: number;
  /** The most of it that a cheapest order can hold. */
  readonly most: number;
}

/** Usable ml in one pot of an offer. */
export function usableMlOf({ sizeMl, container }: OfferPot, assumptions: Assumptions): number {
  return sizeMl * usableShare(assumptions, container);
}

/** Offers of which an order must hold so many. */
export type Held = ReadonlyMap<Offer, number>;

/**
 * Wares by shop and offer name, so that the order of rows does not matter. Left out are shops that can't reach their
 * own least order, and offers that neither hold a needed paint nor help to reach a sum.
 */
export function listWares(needs: readonly OrderNeed[], market: Market, held: Held = new Map()): Ware[] {
  const needOf = new Map(needs.map(({ paint, ml }) => [paint, ml]));
  const open = openShops(market.offers, market.shops);
  const wares = market.offers
    .filter(({ shop }) => open.has(shop))
    .sort((a, b) => compare(a.shop, b.shop) || compare(a.offer, b.offer))
    .map((offer) => wareOf(offer, needOf, market))
    .filter(({ offer, most }) => most > 0 || held.has(offer));
  return dropSpareFillers(wares, market.shops, held);
}

/** Plain code point order: the same on every machine, whatever its locale. */
const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Shops whose offers, all of them together, reach the least order. */
export function openShops(offers: readonly Offer[], shops: Market['shops']): Set<string> {
  return new Set(
    [...mostGoods(offers)].flatMap(([shop, sum]) =>
      sum >= (shops.get(shop)?.leastOrderMinor ?? 0) ? [shop] : [],
    ),
  );
}

function wareOf(offer: Offer, needOf: ReadonlyMap<string, number>, { shops, assumptions }: Market): Ware {
  const mlOf = new Map<string, number>();
  for (const pot of offer.pots) {
    mlOf.set(pot.paint, (mlOf.get(pot.paint) ?? 0) + usableMlOf(pot, assumptions) * pot.count);
  }
  const limit = offer.available ?? Number.POSITIVE_INFINITY;
  const useful = Math.max(
    ...[...mlOf].map(([paint, ml]) => Math.ceil(((needOf.get(paint) ?? 0) - sameMl) / ml)),
    0,
  );
  return {
    offer,
    mlOf,
    pots: offer.pots.reduce((total, { count }) => total + count, 0),
    limit,
    useful,
    most: Math.min(limit, mostOf(offer, useful, shops.get(offer.shop))),
  };
}

/** How many of an offer an order may hold beyond its use, to reach a least order or free postage. */
function mostOf({ priceMinor }: Offer, useful: number, shop: Shop | undefined): number {
  if (priceMinor === 0) return useful;
  // So many reach the least order alone; more are only worth it while they cost less than the postage they save.
  const forLeast = Math.max(useful, Math.ceil((shop?.leastOrderMinor ?? 0) / priceMinor));
  const saved = shop?.freeFromMinor === undefined ? 0 : shop.postageMinor;
  return forLeast + Math.max(0, Math.ceil(saved / priceMinor) - 1);
}

/**
 * Of offers that hold nothing needed and cost the same in one shop, only as many as could be bought to fill up an
 * order: those of the fewest pots, then the first names, as ties are settled.
 */
function dropSpareFillers(wares: readonly Ware[], shops: Market['shops'], held: Held): Ware[] {
  const sums = new Map<string, number>();
  const spare = new Set<Ware>();
  for (const ware of [...wares].sort((a, b) => a.pots - b.pots)) {
    const { offer, useful, most } = ware;
    if (useful > 0 || held.has(offer)) continue;
    const key = `${offer.shop}\n${offer.priceMinor}`;
    const before = sums.get(key) ?? 0;
    sums.set(key, before + most);
    if (before >= mostOf(offer, 0, shops.get(offer.shop))) spare.add(ware);
  }
  return wares.filter((ware) => !spare.has(ware));
}

/** The places of each shop's wares in the list, shops as they first come. */
export function placesByShop(wares: readonly Ware[]): Map<string, number[]> {
  const places = new Map<string, number[]>();
  for (const [place, { offer }] of wares.entries()) {
    const known = places.get(offer.shop);
    if (known === undefined) places.set(offer.shop, [place]);
    else known.push(place);
  }
  return places;
}

/** Which wares hold a paint: the ware's place in the list, and usable ml in one of it. */
export type Holders = ReadonlyMap<string, readonly { readonly column: number; readonly ml: number }[]>;

/** The holders of every paint, looked up once for a whole list of wares. */
export function findHolders(wares: readonly Ware[]): Holders {
  const holders = new Map<string, { column: number; ml: number }[]>();
  for (const [column, { mlOf }] of wares.entries()) {
    for (const [paint, ml] of mlOf) {
      const known = holders.get(paint);
      if (known === undefined) holders.set(paint, [{ column, ml }]);
      else known.push({ column, ml });
    }
  }
  return holders;
}

/** Usable ml of a paint in so many of each ware. */
export function heldMl(holders: Holders, paint: string, countOf: (column: number) => number): number {
  return (holders.get(paint) ?? []).reduce((sum, { column, ml }) => sum + ml * countOf(column), 0);
}
