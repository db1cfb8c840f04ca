import { describe, expect, it } from 'vitest';
import { findSinglePrices, priceSet } from '../../src/order/price-set.js';
import { makeOffer, offerPot } from '../make-sheets.js';

describe("a set's price over its pots", () => {
  const single = (paint: string, priceMinor: number) => makeOffer({ priceMinor, pots: [offerPot(paint)] });

  it('follows the cheapest single prices: 10.00 over 3.00 and 2.00 is 6.00 and 4.00', () => {
    const singles = [single('Slate', 350), single('Slate', 300), single('Oat', 200)];
    expect(priceSet([offerPot('Slate'), offerPot('Oat')], 1000, findSinglePrices(singles))).toEqual([
      600, 400,
    ]);
  });

  it('follows the ml where a single price is not known, and always adds up', () => {
    const singles = findSinglePrices([single('Slate', 300)]);
    expect(priceSet([offerPot('Slate', 10), offerPot('Oat', 20)], 1000, singles)).toEqual([333, 667]);
  });
});
