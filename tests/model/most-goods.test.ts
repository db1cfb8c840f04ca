import { expect, it } from 'vitest';
import { mostGoods } from '../../src/model/most-goods.js';
import { makeOffer, offerPot } from '../make-sheets.js';

it('adds up what each shop could sell: limited, without a limit, for nothing', () => {
  // Quay 2 x 3.00 + 1 x 4.50; Lock without end; Weir gives away.
  const offers = [
    makeOffer({ pots: [offerPot('Slate')], shop: 'Quay', priceMinor: 300, available: 2 }),
    makeOffer({ pots: [offerPot('Slate')], shop: 'Quay', priceMinor: 450, available: 1 }),
    makeOffer({ pots: [offerPot('Slate')], shop: 'Lock', priceMinor: 300 }),
    makeOffer({ pots: [offerPot('Slate')], shop: 'Weir', priceMinor: 0 }),
  ];
  expect([...mostGoods(offers)]).toEqual([
    ['Quay', 1050],
    ['Lock', Number.POSITIVE_INFINITY],
    ['Weir', 0],
  ]);
});
