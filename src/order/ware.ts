// Order: one offer as the program counts it. In: an offer, what is useful of it, its shop. Out: the most that makes sense.
import type { Offer, Shop } from '../model/sheets.js';

/** One offer with what it holds. */
export interface Stocked {
  readonly offer: Offer;
  /** Usable ml of each paint in one of it. */
  readonly mlOf: ReadonlyMap<string, number>;
  readonly pots: number;
  /** How many can be had; Infinity for no limit. */
  readonly limit: number;
}

/** The same with what an order needs to know of it. */
export interface Ware extends Stocked {
  /** So many cover every need that it can cover; 0 where it holds nothing needed. */
  readonly useful: number;
  /** The most of it that a cheapest order can hold. */
  readonly most: number;
}

/** Whether goods of a certain sum change what a shop asks for: then a dearer pot may be worth more than a cheaper one. */
export const hasSums = (shop: Shop | undefined): boolean =>
  (shop?.leastOrderMinor ?? 0) > 0 || (shop?.freeFromMinor !== undefined && shop.postageMinor > 0);

/** How many of an offer without a limit an order may hold beyond its use, to reach a least order or free postage. */
export function mostOf({ priceMinor }: Offer, useful: number, shop: Shop | undefined): number {
  if (priceMinor === 0) return useful;
  // So many reach the least order alone; more are only worth it while they cost less than the postage they save.
  const forLeast = Math.max(useful, Math.ceil((shop?.leastOrderMinor ?? 0) / priceMinor));
  const saved = shop?.freeFromMinor === undefined ? 0 : shop.postageMinor;
  return forLeast + Math.max(0, Math.ceil(saved / priceMinor) - 1);
}
