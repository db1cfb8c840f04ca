// Order: wares that a search is worth among. In: wares, needs, shops, an order already known. Out: the wares that a cheaper
// order may hold, and what no order costs less than.
import { at } from '../model/at.js';
import type { OrderNeed } from '../model/order.js';
import type { Shop } from '../model/sheets.js';
import { sameMl } from '../model/volume.js';
import { findFirstOrder } from './first-order.js';
import { findHolders } from './list-wares.js';
import type { Market } from './open-market.js';
import type { Ware } from './ware.js';

/** Wares in one program: among more, a solver takes a gigabyte before it finds anything. */
const mostWares = 6000;

/** Each round leaves fewer wares, so the next one may price needs higher; after these little changes. */
const mostRounds = 3;

/** Of whole minor units, what rounding may have taken from a sum. */
const roundedOff = 1e-4;

/** What bounds wares. */
export interface Bounding {
  readonly needs: readonly OrderNeed[];
  readonly shops: ReadonlyMap<string, Shop>;
  /** What an order costs that covers the needs; Infinity where none is known. */
  readonly knownMinor: number;
  /** Wares that must stay: those of the order known, and those that the order must hold. */
  readonly isKept: (ware: Ware) => boolean;
}

export interface Bounded {
  readonly wares: readonly Ware[];
  /** No order that covers the needs costs less. */
  readonly leastMinor: number;
  /** False where there were too many: a cheaper order may hold one that was left out. */
  readonly areAll: boolean;
}

/**
 * Reduced-cost fixing by a dual bound that needs no solver. A price for each ml of each need, under which no ware covers more
 * worth than it costs, is dual feasible: no order costs less than the needs are worth (weak duality). A ware's reduced cost is
 * what it costs over the worth that it covers; an order with it costs that much more, and its shop's postage where the known order
 * is too small to travel free. Wares that so pass the known order are left out. Of still too many those of the least reduced
 * cost are kept.
 */
export function boundWares(wares: readonly Ware[], bounding: Bounding): Bounded {
  const { needs, shops, knownMinor, isKept } = bounding;
  let left = wares;
  let priced = priceNeeds(left, needs);
  for (let round = 0; round < mostRounds; round++) {
    const { leastMinor, overOf } = priced;
    const kept = left.filter(
      (ware) =>
        isKept(ware) ||
        leastMinor + overOf(ware) + costToUse(shops.get(ware.offer.shop), knownMinor) <=
          knownMinor + roundedOff,
    );
    if (kept.length === left.length) break;
    left = kept;
    priced = priceNeeds(left, needs);
  }
  const { leastMinor, overOf } = priced;
  const areAll = left.length <= mostWares;
  return { wares: areAll ? left : nearest(left, overOf, isKept), leastMinor, areAll };
}

/**
 * The wares of a program of which only is known what it may need at the most. Where there are too many those stay that a first
 * order for all of that holds, so that whatever it asks for can be had.
 */
export function leaveFarWares(wares: readonly Ware[], needs: readonly OrderNeed[], market: Market): Bounded {
  if (wares.length <= mostWares) return { wares, leastMinor: 0, areAll: true };
  const first = findFirstOrder(
    needs,
    { wares, holders: findHolders(wares), held: wares.map(() => 0) },
    market,
  );
  const held = new Set(wares.filter((_, place) => at(first, place) > 0));
  return boundWares(wares, {
    ...{ needs, shops: market.shops, knownMinor: Number.POSITIVE_INFINITY },
    isKept: (ware) => held.has(ware),
  });
}

/** What buying from a shop costs beside the goods, at the least, in an order of no more than a sum. */
function costToUse(shop: Shop | undefined, mostMinor: number): number {
  if (shop === undefined) return 0;
  const { postageMinor, freeFromMinor = Number.POSITIVE_INFINITY, leastOrderMinor = 0 } = shop;
  if (leastOrderMinor > mostMinor) return Number.POSITIVE_INFINITY;
  return freeFromMinor > mostMinor ? postageMinor : 0;
}

interface PricedNeeds {
  readonly leastMinor: number;
  /** The reduced cost of a ware: what it costs over the worth of what it covers; never below 0. */
  readonly overOf: (ware: Ware) => number;
}

/** Dual prices, one for a ml of each need: no ware covers more worth than it costs. */
function priceNeeds(wares: readonly Ware[], needs: readonly OrderNeed[]): PricedNeeds {
  const needOf = new Map(needs.map(({ paint, ml }) => [paint, ml]));
  const perMl = priceAlone(wares, needOf);
  const worthOf = ({ mlOf }: Ware): number => {
    let worth = 0;
    for (const [paint, ml] of mlOf) worth += (perMl.get(paint) ?? 0) * Math.min(ml, needOf.get(paint) ?? 0);
    return worth;
  };
  // Where a set covers more, its paints come down until it does not.
  for (const ware of wares) {
    const worth = worthOf(ware);
    if (worth <= ware.offer.priceMinor) continue;
    for (const paint of ware.mlOf.keys()) {
      const price = perMl.get(paint);
      if (price !== undefined) perMl.set(paint, (price * ware.offer.priceMinor) / worth);
    }
  }
  const leastMinor = needs.reduce((sum, { paint, ml }) => sum + (perMl.get(paint) ?? 0) * (ml - sameMl), 0);
  return { leastMinor, overOf: (ware) => Math.max(0, ware.offer.priceMinor - worthOf(ware)) };
}

/** What a ml of each need costs in the cheapest ware, as if nothing else were in it; no more of it counts than is needed. */
function priceAlone(wares: readonly Ware[], needOf: ReadonlyMap<string, number>): Map<string, number> {
  const perMl = new Map<string, number>();
  for (const { offer, mlOf } of wares) {
    for (const [paint, ml] of mlOf) {
      const need = needOf.get(paint);
      if (need === undefined) continue;
      const price = offer.priceMinor / Math.min(ml, need);
      if (price < (perMl.get(paint) ?? Number.POSITIVE_INFINITY)) perMl.set(paint, price);
    }
  }
  return perMl;
}

/** Those that must stay, and as many others as there is room for. */
function nearest(wares: readonly Ware[], overOf: PricedNeeds['overOf'], isKept: Bounding['isKept']): Ware[] {
  const kept = wares.filter(isKept);
  const others = wares
    .filter((ware) => !isKept(ware))
    .map((ware) => ({ ware, over: overOf(ware) }))
    .sort((a, b) => a.over - b.over)
    .slice(0, Math.max(0, mostWares - kept.length));
  const near = new Set([...kept, ...others.map(({ ware }) => ware)]);
  return wares.filter((ware) => near.has(ware));
}
