// Which wares a cheaper order than one known may hold, and what none costs less than.
import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import type { Offer, Shop } from '../../src/model/sheets.js';
import { boundWares, leaveFarWares } from '../../src/order/bound-wares.js';
import { cheapestCounts } from '../../src/order/choose-counts.js';
import { listWares } from '../../src/order/list-wares.js';
import { prepareBuying } from '../../src/order/prepare-buying.js';
import { makeOffer, makeShop, offerPot } from '../make-sheets.js';

const pot = (offer: string, priceMinor: number, shop = 'Quay', paint = 'Slate'): Offer =>
  makeOffer({ offer, shop, priceMinor, pots: [offerPot(paint)] });

/** Two pots of 17 ml on the label, 15.98 ml of each to use. */
const needs = [{ paint: 'Slate', ml: 31.96 }];
const quay = [pot('quay', 300), pot('dear', 301, 'Heath')];

function boundBy(knownMinor: number, offers: readonly Offer[], mill: Partial<Shop> = {}, asked = needs) {
  const shops = new Map([
    ['Quay', makeShop()],
    ['Mill', makeShop({ shop: 'Mill', ...mill })],
  ]);
  const wares = listWares(asked, { offers, shops, assumptions: registry });
  const bounded = boundWares(wares, { needs: asked, shops, knownMinor, isKept: () => false });
  return {
    names: bounded.wares.map(({ offer }) => offer.offer),
    least: Math.ceil(bounded.leastMinor - 1e-4),
    areAll: bounded.areAll,
  };
}

describe('wares of which every order costs more than the one known', () => {
  it('are left out: two pots cost 6.00, and with one of 3.01 they cost 6.01', () => {
    expect(boundBy(600, quay)).toEqual({ names: ['quay'], least: 600, areAll: true });
    expect(boundBy(601, quay).names).toEqual(['dear', 'quay']);
  });

  it('count the postage of their shop, unless the order may be large enough to travel free', () => {
    const offers = [...quay.slice(0, 1), pot('mill', 250, 'Mill')];
    const isLeft = (mill: Partial<Shop>) => boundBy(600, offers, mill).names.includes('mill');
    // At 2.50 for 15.98 ml no order costs less than 5.00.
    expect(boundBy(600, offers, { postageMinor: 100 }).least).toBe(500);
    expect([100, 101].map((postageMinor) => isLeft({ postageMinor }))).toEqual([true, false]);
    expect([600, 601].map((freeFromMinor) => isLeft({ postageMinor: 101, freeFromMinor }))).toEqual([
      true,
      false,
    ]);
    expect([600, 601].map((leastOrderMinor) => isLeft({ leastOrderMinor }))).toEqual([true, false]);
    // Without the Mill nothing costs less than 6.00.
    expect(boundBy(600, offers, { postageMinor: 101 }).least).toBe(600);
  });

  it('are measured by what a set makes of its paints', () => {
    const both = [...needs, { paint: 'Oat', ml: 31.96 }];
    const set = makeOffer({ offer: 'set', priceMinor: 500, pots: [offerPot('Slate'), offerPot('Oat')] });
    const offers = [...quay, pot('oat', 300, 'Quay', 'Oat'), set];
    // Two sets cover both; beside them a single pot costs 0.50 over its worth.
    expect(boundBy(1000, offers, {}, both)).toMatchObject({ names: ['set'], least: 1000 });
    expect(boundBy(1050, offers, {}, both)).toMatchObject({ names: ['oat', 'quay', 'set'], least: 1000 });
  });
});

describe('more wares than one program holds', () => {
  // A least order makes a dearer pot worth something, so that none of them is needless.
  const market = {
    offers: Array.from({ length: 6001 }, (_, at) => pot(`pot ${at}`, 300 + at)),
    shops: new Map([['Quay', makeShop({ leastOrderMinor: 100 })]]),
    assumptions: registry,
  };
  const wares = listWares(needs, market);

  it('are cut to those of the least cost, those of an order for all needs among them; that is said', () => {
    expect(wares).toHaveLength(6001);
    const { areAll, ...few } = leaveFarWares(wares, needs, market);
    expect(areAll).toBe(false);
    expect(few.wares).toHaveLength(6000);
    expect(few.wares.some(({ offer }) => offer.offer === 'pot 6000')).toBe(false);
    expect(leaveFarWares(wares.slice(0, 6000), needs, market).areAll).toBe(true);
  });

  it('are bounded away where an order is known: it is proved all the same', async () => {
    const { counts, totalMinor, aboveBestMinor } = await cheapestCounts(needs, market, prepareBuying({}));
    expect({ totalMinor, aboveBestMinor }).toEqual({ totalMinor: 600, aboveBestMinor: 0 });
    expect(counts.length).toBeLessThan(10);
  });
});
