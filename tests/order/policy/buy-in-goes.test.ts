import { describe, expect, it } from 'vitest';
import { registry } from '../../../src/assumptions/registry.js';
import type { OrderLine } from '../../../src/model/order.js';
import { buyInGoes } from '../../../src/order/policy/buy-in-goes.js';
import { listWaiting, tellNeeded } from '../../../src/order/policy/chance-needed.js';
import { potsBought } from '../../../src/order/policy/pot-bought.js';
import { listAsked } from '../../../src/order/promise/list-asked.js';
import { makeOffer, makeShop, offerPot } from '../../make-sheets.js';
import { makeDrawn, makeLine } from '../../ranges/make-drawn.js';

const offers = [
  makeOffer({ offer: 'Slate 17', priceMinor: 300, pots: [offerPot('Slate')] }),
  makeOffer({ offer: 'Slate 60', priceMinor: 900, pots: [offerPot('Slate', 60)] }),
  makeOffer({ shop: 'Mill', offer: 'Slate 17', priceMinor: 280, pots: [offerPot('Slate')], available: 0 }),
  makeOffer({ shop: 'Mill', offer: 'pair', priceMinor: 500, pots: [offerPot('Slate'), offerPot('Oat')] }),
  makeOffer({ offer: 'Oat', priceMinor: 400, pots: [offerPot('Oat')] }),
  makeOffer({ shop: 'Mill', offer: 'both', priceMinor: 700, pots: [offerPot('Rust'), offerPot('Oat')] }),
];
const shops = new Map([
  ['Quay', makeShop({ postageMinor: 300 })],
  ['Mill', makeShop({ shop: 'Mill', postageMinor: 500 })],
]);
const market = { offers, shops, assumptions: registry };

describe('the pot that would be bought', () => {
  it('is the cheapest that is sold by itself and can be had, of a paint only in sets its share', () => {
    const pots = potsBought([], market);
    expect(pots.get('Slate')).toEqual({ priceMinor: 300, postageMinor: 300 });
    expect(pots.get('Oat')).toEqual({ priceMinor: 400, postageMinor: 300 });
    // Nobody sells Rust by itself, so the pots of the set share by ml.
    expect(pots.get('Rust')).toEqual({ priceMinor: 350, postageMinor: 500 });
    expect(pots.has('Moss')).toBe(false);
  });

  it('is the cheapest of an order that buys any', () => {
    expect(potsBought([{ shop: 'Quay', offer: 'Slate 60' }], market).get('Slate')?.priceMinor).toBe(900);
    // 60 ml of Slate for 9.00 make 2.55 for 17 ml, Oat has 4.00: of 6.55 they share 5.00.
    expect(potsBought([{ shop: 'Mill', offer: 'pair' }], market).get('Oat')).toEqual({
      priceMinor: 305,
      postageMinor: 500,
    });
  });
});

/** Slate lacks 1 to 100 ml, Oat 1 to 10 in the last ten draws of a hundred, Rust nothing ever, Moss is not on offer. */
const hundred = Array.from({ length: 100 }, (_, draw) => draw + 1);
const drawn = makeDrawn({
  Slate: hundred,
  Oat: hundred.map((draw) => draw - 90),
  Rust: hundred.map((draw) => -draw),
  Moss: hundred,
});
const asked = listAsked(drawn, market);

describe('buying in goes', () => {
  it('takes each paint at the quantile of the pot that the first order buys, and the next units always', async () => {
    const tried: ReadonlyMap<string, number>[] = [];
    const line: OrderLine = { ...makeLine(1, 900, { Slate: 57 }), offer: 'Slate 60' };
    const goes = await buyInGoes(
      { asked, market, againMinor: undefined, floors: new Map([['Oat', 3.5]]) },
      async (needs) => {
        tried.push(needs);
        return [line];
      },
    );
    // At 3.00 with twice 3.00 beside it a third is enough: the quantile of two thirds, rank 67 of 100.
    expect(tried).toEqual([
      new Map([
        ['Slate', 67],
        ['Oat', 3.5],
      ]),
    ]);
    // The order takes the large pot: 9.00 of 15.00, so the quantile of 0.4.
    expect(goes.thresholds.get('Slate')).toBeCloseTo(0.6, 12);
    expect([...goes.needs]).toEqual([
      ['Slate', 41],
      ['Oat', 3.5],
    ]);
    // Oat at 4.00 of 10.00 would be taken at the quantile of 0.6, where nothing is lacking.
    expect(goes.thresholds.get('Oat')).toBeCloseTo(0.4, 12);
  });
});

describe('what is bought and what is left', () => {
  const telling = {
    ...{ asked, draws: 100, market, againMinor: undefined },
    thresholds: new Map([
      ['Slate', 1 / 3],
      ['Oat', 0.4],
    ]),
  };

  it('the last pot of a line: how often the others are not enough', () => {
    const [slate] = tellNeeded([makeLine(3, 300, { Slate: 20 })], telling);
    // Two pots hold 40 ml: 60 draws of a hundred ask for more.
    expect(slate).toMatchObject({
      count: 3,
      chanceNeeded: { chance: 0.6 },
      threshold: expect.closeTo(1 / 3, 12),
    });
  });

  it('a set: how often any of its pots is needed beside the rest', () => {
    const lines = [makeLine(1, 500, { Slate: 16, Oat: 16 }), makeLine(1, 900, { Slate: 92 })];
    const [pair, large] = tellNeeded(lines, telling);
    // Without the pair Slate has 92 ml and Oat none: draws 91 to 100 ask for Oat, 93 to 100 for Slate.
    expect(pair?.chanceNeeded.chance).toBe(0.1);
    expect(large?.chanceNeeded.chance).toBe(0.84);
  });

  it('what only fills up is never needed', () => {
    expect(tellNeeded([makeLine(1, 100, { Chalk: 10 })], telling)[0]?.chanceNeeded.chance).toBe(0);
  });

  it('waits with its chance and its threshold', () => {
    expect(listWaiting([makeLine(1, 300, { Slate: 16 })], telling)).toEqual([
      { paint: 'Oat', chanceNeeded: { chance: 0.1, error: expect.closeTo(0.03, 12) }, threshold: 0.4 },
    ]);
    expect(listWaiting([], telling).map(({ paint }) => paint)).toEqual(['Slate', 'Oat']);
  });
});
