// Promise tests: small armies over few draws, with a market, by chance; and the plain ways to know the cheapest order. Shares no code
// with the order stage.
import { usableShare } from '../../../src/assumptions/look-up.js';
import { registry } from '../../../src/assumptions/registry.js';
import type { DrawnLack } from '../../../src/model/draws.js';
import type { Offer, Shop } from '../../../src/model/sheets.js';
import type { Container } from '../../../src/model/words.js';
import { makeOffer, makeShop } from '../../make-sheets.js';
import { makeDrawn } from '../../ranges/make-drawn.js';
import { drawFrom } from '../draw-market.mjs';

export interface PromiseCase {
  readonly drawn: DrawnLack;
  readonly offers: readonly Offer[];
  readonly shops: ReadonlyMap<string, Shop>;
}

const containers: readonly Container[] = ['pot', 'can'];

/** Up to three paints over 12 draws, five offers with sets among them, two shops with their terms; cans give more or less in each draw. */
export function drawPromise(seed: number, { mixed = false } = {}): PromiseCase {
  const { whole, chance, share } = drawFrom(seed);
  const draws = 12;
  const paints = ['Slate', 'Oat', 'Rust'].slice(0, whole(1, 3));
  const pick = <Value>(from: readonly Value[]): Value => from[whole(0, from.length - 1)] as Value;
  const common = Array.from({ length: draws }, share);
  const lacks = paints.map((paint) => {
    const most = whole(4, 40);
    const tied = chance(0.5);
    return [
      paint,
      common.map((one) => Math.round(most * (tied ? one : share()) * 4) / 4 - whole(0, 6)),
    ] as const;
  });
  const gains = { can: Array.from({ length: draws }, () => 0.7 + 0.6 * share()) };
  const containerOf = new Map(paints.map((paint) => [paint, pick(containers)]));
  const names = ['Quay', 'Mill'].slice(0, whole(1, 2));
  const shops = names.map((shop) =>
    makeShop({
      shop,
      postageMinor: chance(0.7) ? whole(1, 8) * 50 : 0,
      ...(chance(0.4) ? { freeFromMinor: whole(4, 20) * 50 } : {}),
      ...(chance(0.3) ? { leastOrderMinor: whole(2, 10) * 50 } : {}),
    }),
  );
  const offers = Array.from({ length: whole(2, 5) }, (_, index) => {
    const held = chance(0.3) && paints.length > 1 ? [pick(paints), pick(paints)] : [pick(paints)];
    return makeOffer({
      shop: pick(names),
      offer: `offer ${index}`,
      priceMinor: whole(2, 14) * 50 * held.length,
      pots: held.map((paint) => ({
        ...{ paint, sizeMl: pick([10, 12, 17]), count: chance(0.15) ? 2 : 1 },
        container: mixed ? pick(containers) : (containerOf.get(paint) ?? 'pot'),
      })),
      ...(chance(0.3) ? { available: whole(1, 3) } : {}),
    });
  });
  return {
    drawn: makeDrawn(Object.fromEntries(lacks), gains),
    offers,
    shops: new Map(shops.map((shop) => [shop.shop, shop])),
  };
}

/** Draws in which nothing on offer runs out. */
export function drawsKept({ drawn, offers }: PromiseCase, counts: readonly number[]): number {
  const sold = new Set(offers.flatMap(({ pots }) => pots.map(({ paint }) => paint)));
  return Array.from({ length: drawn.drawing.draws }, (_, draw) =>
    drawn.paints.every(({ paint, lackMl }) => {
      if (!sold.has(paint)) return true;
      let got = 0;
      for (const [at, { pots }] of offers.entries())
        for (const pot of pots.filter((one) => one.paint === paint)) {
          const ml = pot.sizeMl * usableShare(registry, pot.container) * pot.count * (counts[at] ?? 0);
          got += ml * (drawn.gainOf(pot.container)?.[draw] ?? 1);
        }
      return got >= (lackMl[draw] ?? 0) - 1e-6;
    }),
  ).filter(Boolean).length;
}

/** What counts of offers cost; undefined where a shop does not get its least order. */
export function costOf({ offers, shops }: PromiseCase, counts: readonly number[]): number | undefined {
  const goods = new Map<string, number>();
  for (const [at, { shop, priceMinor }] of offers.entries()) {
    const count = counts[at] ?? 0;
    if (count > 0) goods.set(shop, (goods.get(shop) ?? 0) + count * priceMinor);
  }
  let cost = 0;
  for (const [name, sum] of goods) {
    const {
      postageMinor = 0,
      freeFromMinor = Number.POSITIVE_INFINITY,
      leastOrderMinor = 0,
    } = shops.get(name) ?? {};
    if (sum < leastOrderMinor) return undefined;
    cost += sum + (sum >= freeFromMinor ? 0 : postageMinor);
  }
  return cost;
}

/** The least cash that keeps a promise, of every order with up to `most` of each offer; undefined where none does. */
export function tryEveryPromise(one: PromiseCase, sure: number, most: number): number | undefined {
  const keep = Math.ceil(sure * one.drawn.drawing.draws - 1e-9);
  const counts = one.offers.map(() => 0);
  let best: number | undefined;
  const visit = (at: number, goodsMinor: number): void => {
    if (best !== undefined && goodsMinor >= best) return;
    const offer = one.offers[at];
    if (offer === undefined) {
      const cost = costOf(one, counts);
      if (cost === undefined || (best !== undefined && cost >= best)) return;
      if (drawsKept(one, counts) >= keep) best = cost;
      return;
    }
    for (let count = 0; count <= Math.min(most, offer.available ?? most); count++) {
      counts[at] = count;
      visit(at + 1, goodsMinor + count * offer.priceMinor);
    }
    counts[at] = 0;
  };
  visit(0, 0);
  return best;
}
