// Which offers a search goes among: what others of a shop make needless stays out.
import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import type { Offer, Shop } from '../../src/model/sheets.js';
import { listWares } from '../../src/order/list-wares.js';
import { makeOffer, makeShop, offerPot } from '../make-sheets.js';

/** A pot of Slate: name, size on the label, price, how many there are. */
const pot = (offer: string, sizeMl: number, priceMinor: number, available?: number): Offer =>
  makeOffer({
    ...{ offer, priceMinor, pots: [offerPot('Slate', sizeMl)] },
    ...(available === undefined ? {} : { available }),
  });

/** Names of the offers that are left for so many ml of each paint. */
function left(
  needs: Record<string, number>,
  offers: readonly Offer[],
  shop: Partial<Shop> = {},
  held?: Offer,
) {
  const shops = new Map([['Quay', makeShop(shop)]]);
  const wares = listWares(
    Object.entries(needs).map(([paint, ml]) => ({ paint, ml })),
    { offers, shops, assumptions: registry },
    held && new Map([[held, 1]]),
  );
  return wares.map(({ offer }) => offer.offer);
}

describe('offers of one shop', () => {
  // 17 ml on the label give 15.98: two such pots cover 30 ml.
  const needs = { Slate: 30 };
  const plain = pot('b', 17, 300);

  it('that hold no more for a higher price are left out, and of two alike the later name', () => {
    expect(left(needs, [plain, pot('a', 17, 310), pot('d', 12, 310), pot('c', 17, 300)])).toEqual(['b']);
    expect(left(needs, [plain, pot('a', 24, 310), pot('d', 12, 290)])).toEqual(['a', 'b', 'd']);
  });

  it('that hold more than is needed hold no more than it', () => {
    expect(left({ Slate: 15.97 }, [plain, pot('a', 24, 310)])).toEqual(['b']);
    expect(left({ Slate: 15.99 }, [plain, pot('a', 24, 310)])).toEqual(['a', 'b']);
  });

  it('stay where they are fewer pots than what is cheaper', () => {
    const pair = makeOffer({ offer: 'pair', priceMinor: 290, pots: [{ ...offerPot('Slate'), count: 2 }] });
    expect(left(needs, [plain, pair])).toEqual(['b', 'pair']);
  });

  it('stay where there are not enough of the cheaper ones', () => {
    expect(left(needs, [pot('b', 17, 300, 1), pot('a', 17, 310)])).toEqual(['a', 'b']);
    expect(left(needs, [pot('b', 17, 300, 2), pot('a', 17, 310)])).toEqual(['b']);
    expect(left(needs, [pot('b', 17, 300, 1), pot('c', 24, 305, 1), pot('a', 17, 310)])).toEqual(['b', 'c']);
  });

  it('stay where a dearer one may reach a sum; of one price they do not', () => {
    const offers = [plain, pot('a', 17, 310), pot('c', 17, 300), pot('d', 12, 310)];
    expect(left(needs, offers, { leastOrderMinor: 1 })).toEqual(['a', 'b']);
    expect(left(needs, offers, { freeFromMinor: 900, postageMinor: 1 })).toEqual(['a', 'b']);
    expect(left(needs, offers, { freeFromMinor: 900, postageMinor: 0 })).toEqual(['b']);
  });

  it('stay where the order must hold one', () => {
    const dear = pot('a', 17, 310);
    expect(left(needs, [plain, dear], {}, dear)).toEqual(['a', 'b']);
  });

  it('that are sets are compared paint by paint', () => {
    const set = (offer: string, priceMinor: number, oatMl: number) =>
      makeOffer({ offer, priceMinor, pots: [offerPot('Oat', oatMl), offerPot('Slate')] });
    const both = { Slate: 30, Oat: 30 };
    expect(left(both, [set('a', 500, 17), set('b', 520, 17), set('c', 520, 24)])).toEqual(['a', 'c']);
    // Oat is in no need, so all three hold the same.
    expect(left(needs, [set('a', 500, 17), set('b', 520, 17), set('c', 520, 24)])).toEqual(['a']);
  });
});
