// Seeded draws for order tests and the bench: the same seed gives the same market on every machine.

import type { Offer, Shop } from '../../src/model/sheets.js';
import { makeOffer, makeShop, offerPot } from '../make-sheets.js';

export interface Draws {
  /** A whole number from `low` to `high`. */
  readonly whole: (low: number, high: number) => number;
  /** 0 to 1. */
  readonly share: () => number;
  readonly chance: (share: number) => boolean;
}

/** Mulberry32, a public-domain generator of 32 bits. */
export function drawFrom(seed: number): Draws {
  let state = seed >>> 0;
  const share = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  return {
    share,
    chance: (of) => share() < of,
    whole: (low, high) => low + Math.floor(share() * (high - low + 1)),
  };
}

export interface DrawnMarket {
  readonly needs: readonly { readonly paint: string; readonly ml: number }[];
  readonly offers: readonly Offer[];
  readonly shops: ReadonlyMap<string, Shop>;
}

interface Size {
  readonly paints: number;
  readonly offers: number;
  readonly shops: number;
  /** Share of the offers that are sets. */
  readonly sets?: number;
}

const sizesMl = [12, 17, 18, 22, 24, 60];

/** A market like that of a hobby: single pots at several shops, sets at 60 to 85 % of their singles' price. */
export function drawMarket(
  seed: number,
  { paints, offers: count, shops: shopCount, sets = 0.1 }: Size,
): DrawnMarket {
  const draws = drawFrom(seed);
  const shops = Array.from({ length: shopCount }, (_, index) => drawShop(`shop ${index}`, draws));
  const basePrice = Array.from({ length: paints }, () => draws.whole(220, 420));
  const priceOf = (paint: number, sizeMl: number): number =>
    (basePrice[paint] ?? 300) * (sizeMl / 17) ** 0.85;
  const single = (paint: number, index: number): Offer => {
    const sizeMl = sizesMl[draws.whole(0, 5)] ?? 17;
    const priceMinor = Math.max(
      50,
      Math.round((priceOf(paint, sizeMl) * (0.85 + draws.share() * 0.3)) / 5) * 5,
    );
    return makeOffer({
      shop: `shop ${draws.whole(0, shopCount - 1)}`,
      offer: `pot ${index}`,
      priceMinor,
      pots: [offerPot(`paint ${paint}`, sizeMl)],
    });
  };
  const set = (index: number): Offer => {
    const sizeMl = sizesMl[draws.whole(0, 4)] ?? 17;
    const held = [...new Set(Array.from({ length: draws.whole(3, 12) }, () => draws.whole(0, paints - 1)))];
    const worth = held.reduce((sum, paint) => sum + priceOf(paint, sizeMl), 0);
    const priceMinor = Math.round((worth * (0.6 + draws.share() * 0.25)) / 10) * 10;
    return makeOffer({
      shop: `shop ${draws.whole(0, shopCount - 1)}`,
      offer: `set ${index}`,
      priceMinor,
      pots: held.map((paint) => offerPot(`paint ${paint}`, sizeMl)),
    });
  };
  const singles = count - Math.round(count * sets);
  const offers = Array.from({ length: count }, (_, index) =>
    index < singles ? single(index < paints ? index : draws.whole(0, paints - 1), index) : set(index),
  );
  const needs = Array.from({ length: paints }, (_, index) => ({
    paint: `paint ${index}`,
    ml: Math.round((Math.exp(draws.share() * 3.5) + draws.share()) * 100) / 100,
  }));
  return { needs, offers, shops: new Map(shops.map((shop) => [shop.shop, shop])) };
}

function drawShop(shop: string, { whole, chance }: Draws): Shop {
  return makeShop({
    shop,
    postageMinor: whole(250, 690),
    freeFromMinor: whole(40, 120) * 100,
    ...(chance(0.4) ? { leastOrderMinor: whole(5, 20) * 100 } : {}),
  });
}
