// Policy: what later orders may buy. In: the paints of the work, the market. Out: offers by place, and which hold each paint.
import type { OrderLine } from '../../model/order.js';
import type { Offer } from '../../model/sheets.js';
import { type Market, openMarket } from '../open-market.js';

export interface Goods {
  /** The paints of the work. */
  readonly paints: readonly string[];
  /** Offers of these alone, few enough to be looked through thousands of times. */
  readonly market: Market;
  /** Places of the offers that hold each paint of the work. */
  readonly holders: readonly (readonly number[])[];
  /** The place of a paint; -1: the work needs none of it. */
  readonly placeOf: (paint: string) => number;
  /** The place of an offer; undefined: it is not among these. */
  readonly offerAt: (offer: Pick<OrderLine, 'shop' | 'offer'>) => number | undefined;
}

/** How many of each offer can still be had, by place; Infinity for no limit. */
export type Left = readonly number[];

/** Whoever orders again and again asks no more shops than this, where there are very many. */
const mostShops = 8;

/** Of a paint in such a shop, so many offers. */
const mostOffers = 6;

/** Fewer offers than this are all looked at. */
const manyOffers = 1000;

/** Goods for paints of the work. Of very many offers those of the shops that have most of the paints at the least price. */
export function listGoods(paints: readonly string[], market: Market): Goods {
  const offers = market.offers.length < manyOffers ? market.offers : narrow(new Set(paints), market);
  const sold = new Set(soldIn(market));
  const placeOf = new Map(paints.map((paint, place) => [paint, place]));
  const holders = paints.map((): Set<number> => new Set());
  for (const [at, offer] of offers.entries()) {
    if (sold.has(offer)) for (const { paint } of offer.pots) holders[placeOf.get(paint) ?? -1]?.add(at);
  }
  const offerAt = new Map(offers.map((offer, at) => [nameOf(offer), at]));
  return {
    ...{ paints, market: { ...market, offers } },
    holders: holders.map((places) => [...places]),
    placeOf: (paint) => placeOf.get(paint) ?? -1,
    offerAt: (offer) => offerAt.get(nameOf(offer)),
  };
}

/** No shop has two offers of one name. */
const nameOf = ({ shop, offer }: Pick<OrderLine, 'shop' | 'offer'>): string => `${shop}\n${offer}`;

/** What can be had of a market. */
const soldIn = (market: Market): Offer[] => openMarket(market).stock.map(({ offer }) => offer);

function narrow(paints: ReadonlySet<string>, market: Market): Offer[] {
  const held = soldIn(market).filter(({ pots }) => pots.some(({ paint }) => paints.has(paint)));
  const names = chooseShops(held);
  const taken = new Map<string, number>();
  const perMl = ({ priceMinor, pots }: Offer): number =>
    priceMinor / pots.reduce((sum, { sizeMl, count }) => sum + sizeMl * count, 0);
  return held
    .filter(({ shop }) => names.has(shop))
    .sort((a, b) => perMl(a) - perMl(b))
    .filter(({ shop, pots }) => {
      const keys = pots.map(({ paint }) => `${shop}\n${paint}`);
      for (const key of keys) taken.set(key, (taken.get(key) ?? 0) + 1);
      return keys.some((key) => (taken.get(key) ?? 0) <= mostOffers);
    });
}

/** Names of shops, those first that are the cheapest for most paints. */
function chooseShops(offers: readonly Offer[]): Set<string> {
  const cheapest = new Map<string, Offer>();
  for (const offer of offers)
    for (const { paint } of offer.pots)
      if (offer.priceMinor < (cheapest.get(paint)?.priceMinor ?? Number.POSITIVE_INFINITY))
        cheapest.set(paint, offer);
  const times = new Map(offers.map(({ shop }) => [shop, 0]));
  for (const { shop } of cheapest.values()) times.set(shop, (times.get(shop) ?? 0) + 1);
  const sorted = [...times].sort((a, b) => b[1] - a[1]);
  return new Set(sorted.slice(0, mostShops).map(([shop]) => shop));
}
