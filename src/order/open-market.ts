// Order: what there is to buy, whatever is needed. In: the market. Out: its offers as stock, in a fixed order, looked up once.
import { usableShare } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import { mostGoods } from '../model/most-goods.js';
import type { Offer, OfferPot, Shop } from '../model/sheets.js';
import { type Alike, findNeedless, groupAlike } from './find-needless.js';
import type { Stocked } from './ware.js';

/** What can be bought, and where. */
export interface Market {
  readonly offers: readonly Offer[];
  readonly shops: ReadonlyMap<string, Shop>;
  readonly assumptions: Assumptions;
}

/** Usable ml in one pot of an offer. */
export function usableMlOf({ sizeMl, container }: OfferPot, assumptions: Assumptions): number {
  return sizeMl * usableShare(assumptions, container);
}

/** A market as stock. */
interface OpenMarket {
  /**
   * By shop and offer name, so that the order of rows does not matter. Left out are shops that can't reach their own least
   * order, and what is sold out.
   */
  readonly stock: readonly Stocked[];
  /** Of it what others of the shop make needless, whatever is needed. */
  readonly needless: ReadonlySet<Stocked>;
  /** The rest, and those of it that may make one another needless. */
  readonly worth: readonly Stocked[];
  readonly alike: readonly Alike[];
}

/** A plan asks some sixty questions of one market, which may have a hundred thousand offers. */
const opened = new WeakMap<Market, OpenMarket>();

export function openMarket(market: Market): OpenMarket {
  const known = opened.get(market) ?? lookUp(market);
  opened.set(market, known);
  return known;
}

function lookUp(market: Market): OpenMarket {
  const stock = stockOf(market);
  const needless = findNeedless(groupAlike(stock, market.shops), {
    coverOf: ({ mlOf }, paint) => mlOf.get(paint) ?? 0,
    enoughOf: () => Number.POSITIVE_INFINITY,
  });
  const worth = stock.filter((stocked) => !needless.has(stocked));
  return { stock, needless, worth, alike: groupAlike(worth, market.shops) };
}

function stockOf({ offers, shops, assumptions }: Market): Stocked[] {
  const open = openShops(offers, shops);
  return offers
    .filter(({ shop, available }) => open.has(shop) && available !== 0)
    .sort((a, b) => compare(a.shop, b.shop) || compare(a.offer, b.offer))
    .map((offer) => {
      const mlOf = new Map<string, number>();
      for (const pot of offer.pots)
        mlOf.set(pot.paint, (mlOf.get(pot.paint) ?? 0) + usableMlOf(pot, assumptions) * pot.count);
      const pots = offer.pots.reduce((total, { count }) => total + count, 0);
      return { offer, mlOf, pots, limit: offer.available ?? Number.POSITIVE_INFINITY };
    });
}

/** Plain code point order: the same on every machine, whatever its locale. */
const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** Shops whose offers, all of them together, reach the least order. */
function openShops(offers: readonly Offer[], shops: Market['shops']): Set<string> {
  return new Set(
    [...mostGoods(offers)].flatMap(([shop, sum]) =>
      sum >= (shops.get(shop)?.leastOrderMinor ?? 0) ? [shop] : [],
    ),
  );
}
