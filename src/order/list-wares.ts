// Order: offers as the program counts them. In: needs, the market. Out: wares in a fixed order.
import type { OrderNeed } from '../model/order.js';
import type { Offer } from '../model/sheets.js';
import { sameMl } from '../model/volume.js';
import { findNeedless } from './find-needless.js';
import { type Market, openMarket } from './open-market.js';
import { mostOf, type Ware } from './ware.js';

/** Offers of which an order must hold so many. */
export type Held = ReadonlyMap<Offer, number>;

/**
 * Wares by shop and offer name. Left out are offers that neither hold a needed paint nor help to reach a sum, and those that
 * others of their shop make needless.
 */
export function listWares(needs: readonly OrderNeed[], market: Market, held: Held = new Map()): Ware[] {
  const needOf = new Map(needs.map(({ paint, ml }) => [paint, ml]));
  const isHeld = (offer: Offer): boolean => (held.get(offer) ?? 0) > 0;
  const { shops } = market;
  const { alike, ...open } = openMarket(market);
  const needless = findNeedless(alike, {
    coverOf: ({ mlOf }, paint) => Math.min(mlOf.get(paint) ?? 0, needOf.get(paint) ?? 0),
    enoughOf: ({ offer, mlOf }) => mostOf(offer, usefulOf(mlOf, needOf), shops.get(offer.shop)),
  });
  const stock =
    held.size === 0
      ? open.worth
      : open.stock.filter((stocked) => !open.needless.has(stocked) || isHeld(stocked.offer));
  const wares: Ware[] = [];
  for (const stocked of stock) {
    const { offer, mlOf, pots, limit } = stocked;
    if (needless.has(stocked) && !isHeld(offer)) continue;
    const useful = usefulOf(mlOf, needOf);
    const most = Math.min(limit, mostOf(offer, useful, shops.get(offer.shop)));
    if (most > 0 || isHeld(offer)) wares.push({ offer, mlOf, pots, limit, useful, most });
  }
  return dropSpareFillers(wares, shops, isHeld);
}

/** So many of an offer cover every need that it can cover. */
function usefulOf(mlOf: Ware['mlOf'], needOf: ReadonlyMap<string, number>): number {
  let useful = 0;
  for (const [paint, ml] of mlOf)
    useful = Math.max(useful, Math.ceil(((needOf.get(paint) ?? 0) - sameMl) / ml));
  return useful;
}

type IsHeld = (offer: Offer) => boolean;

/**
 * Of offers that hold nothing needed and cost the same in one shop, only as many as could be bought to fill up an
 * order: those of the fewest pots, then the first names, as ties are settled.
 */
function dropSpareFillers(wares: Ware[], shops: Market['shops'], isHeld: IsHeld): Ware[] {
  const sums = new Map<string, number>();
  const spare = new Set<Ware>();
  const fillers = wares.filter(({ offer, useful }) => useful === 0 && !isHeld(offer));
  for (const ware of fillers.sort((a, b) => a.pots - b.pots)) {
    const { offer, most } = ware;
    const key = `${offer.shop}\n${offer.priceMinor}`;
    const before = sums.get(key) ?? 0;
    sums.set(key, before + most);
    if (before >= mostOf(offer, 0, shops.get(offer.shop))) spare.add(ware);
  }
  return spare.size === 0 ? wares : wares.filter((ware) => !spare.has(ware));
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
