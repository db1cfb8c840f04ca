// Order: offers as packs of one paint. In: offers, usable shares. Out: per paint the offers that hold it alone.
import { usableShare } from '../assumptions/look-up.js';
import type { Assumptions } from '../model/assumption.js';
import type { Offer, OfferPot } from '../model/sheets.js';
import type { Pack } from './choose-pots.js';

/** An offer that holds one paint only, as a pack. */
export interface PaintPack extends Pack {
  readonly offer: Offer;
}

/** Per paint the offers that hold nothing else; sets of several paints are left out. */
export function packsByPaint(offers: readonly Offer[], assumptions: Assumptions): Map<string, PaintPack[]> {
  const packs = new Map<string, PaintPack[]>();
  for (const offer of offers) {
    const paint = offer.pots[0]?.paint;
    if (paint === undefined || offer.pots.some((pot) => pot.paint !== paint)) continue;
    packs.set(paint, [...(packs.get(paint) ?? []), packOf(offer, assumptions)]);
  }
  return packs;
}

function packOf(offer: Offer, assumptions: Assumptions): PaintPack {
  const ml = offer.pots.reduce((total, pot) => total + usableMlOf(pot, assumptions) * pot.count, 0);
  const pots = offer.pots.reduce((total, { count }) => total + count, 0);
  return {
    offer,
    ml,
    pots,
    priceMinor: offer.priceMinor,
    limit: offer.available ?? Number.POSITIVE_INFINITY,
  };
}

/** Usable ml in one pot of an offer. */
export function usableMlOf({ sizeMl, container }: OfferPot, assumptions: Assumptions): number {
  return sizeMl * usableShare(assumptions, container);
}
