// Order: what to buy. In: needs in usable ml, offers, shops, assumptions. Out: offers, bills, total, what stays unmet.
import type { Assumptions } from '../model/assumption.js';
import type { Order, OrderedPot, OrderLine, OrderNeed } from '../model/plan.js';
import type { Offer, Shop } from '../model/sheets.js';
import { billShops } from './bill-shops.js';
import { choosePots } from './choose-pots.js';
import { priceSet } from './price-set.js';
import { type PaintPack, packsByPaint, usableMlOf } from './read-offers.js';

/** What can be bought, and where. */
export interface Market {
  readonly offers: readonly Offer[];
  readonly shops: ReadonlyMap<string, Shop>;
  readonly assumptions: Assumptions;
}

/** Any way to turn needs into an order. */
export type ChooseOrder = (needs: readonly OrderNeed[], market: Market) => Order;

/**
 * The cheapest whole pots for each paint by itself, exactly; sets of several paints and postage are not weighed.
 * Where the offers can't cover a need, everything they have is bought and the rest is listed as unmet.
 * No needs: an empty order.
 */
export const chooseByPaint: ChooseOrder = (needs, market) => {
  const packs = packsByPaint(market.offers, market.assumptions);
  const chosen = needs.map((need) => coverNeed(need, packs.get(need.paint) ?? []));
  const counts = new Map(chosen.flatMap(({ counts }) => [...counts]));
  const lines = market.offers.flatMap((offer) => lineOf(offer, counts.get(offer) ?? 0, market));
  const bills = billShops(lines, market.shops);
  const postageMinor = bills.reduce((total, bill) => total + bill.postageMinor, 0);
  const goodsMinor = bills.reduce((total, bill) => total + bill.goodsMinor, 0);
  const unmet = chosen.flatMap(({ unmet }) => unmet);
  return {
    status: lines.length + unmet.length === 0 ? 'nothing to buy' : 'by paint',
    totalMinor: goodsMinor + postageMinor,
    postageMinor,
    lines,
    bills,
    unmet,
  };
};

interface Covered {
  readonly counts: ReadonlyMap<Offer, number>;
  readonly unmet: readonly OrderNeed[];
}

function coverNeed({ paint, ml }: OrderNeed, packs: readonly PaintPack[]): Covered {
  const counts = choosePots(ml, packs);
  if (counts !== undefined) return { counts: countsOf(packs, counts), unmet: [] };
  const limits = packs.map(({ limit }) => limit);
  const bought = packs.reduce((total, pack) => total + pack.ml * pack.limit, 0);
  return { counts: countsOf(packs, limits), unmet: [{ paint, ml: ml - bought }] };
}

const countsOf = (packs: readonly PaintPack[], counts: readonly number[]): Map<Offer, number> =>
  new Map(packs.map(({ offer }, index) => [offer, counts[index] ?? 0]));

/** The order line for so many of an offer; none for none. */
function lineOf(offer: Offer, count: number, { offers, assumptions }: Market): OrderLine[] {
  if (count === 0) return [];
  const costMinor = offer.priceMinor * count;
  const shares = priceSet(offer.pots, costMinor, offers);
  const pots = offer.pots.map((pot, index): OrderedPot => {
    const { paint, sizeMl, container, code } = pot;
    return {
      paint,
      sizeMl,
      container,
      count: pot.count * count,
      usableMl: usableMlOf(pot, assumptions),
      costMinor: shares[index] ?? 0,
      ...(code === undefined ? {} : { code }),
    };
  });
  return [{ shop: offer.shop, offer: offer.offer, count, priceMinor: offer.priceMinor, costMinor, pots }];
}
