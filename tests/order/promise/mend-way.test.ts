// Ways that miss a promise, mended: by hand.
import { expect, it } from 'vitest';
import { usableShare } from '../../../src/assumptions/look-up.js';
import { registry } from '../../../src/assumptions/registry.js';
import type { Offer } from '../../../src/model/sheets.js';
import { listWares } from '../../../src/order/list-wares.js';
import { prepareBuying } from '../../../src/order/prepare-buying.js';
import { mendWay } from '../../../src/order/promise/mend-way.js';
import { openPromise } from '../../../src/order/promise/open-promise.js';
import { wayOf } from '../../../src/order/promise/way.js';
import { makeOffer, makeShop, offerPot } from '../../make-sheets.js';
import { makeDrawn } from '../../ranges/make-drawn.js';

/** Pots of this label hold 10 ml to use. */
const tenMl = 10 / usableShare(registry, 'dropper');
const slate = makeOffer({ offer: 'Slate', priceMinor: 300, pots: [offerPot('Slate', tenMl)] });
const oat = makeOffer({ offer: 'Oat', priceMinor: 300, pots: [offerPot('Oat', tenMl)] });

/** Of ten draws four lack Slate, one of them two pots; and three lack Oat. */
const drawn = makeDrawn({ Slate: [5, 5, 5, 15, 0, 0, 0, 0, 0, 0], Oat: [0, 0, 0, 0, 0, 5, 5, 5, 0, 0] });

function mendNothing(offers: readonly Offer[], mayFail: number) {
  const market = {
    offers,
    shops: new Map([['Mill', makeShop({ shop: 'Mill', postageMinor: 400 })]]),
    assumptions: registry,
  };
  const sought = { ...openPromise(drawn, market), mayFail, buying: prepareBuying({}) };
  const needs = ['Slate', 'Oat'].map((paint) => ({ paint, ml: 20 }));
  const wares = listWares(needs, market);
  const nothing = wayOf(
    wares,
    wares.map(() => 0),
    sought,
  );
  expect(nothing.failing).toBe(7);
  const found = mendWay(nothing, sought);
  return (
    found && {
      bought: found.wares
        .flatMap(({ offer }, at) => Array<string>(found.counts[at] ?? 0).fill(`${offer.shop} ${offer.offer}`))
        .sort(),
      failing: found.failing,
      totalMinor: found.totalMinor,
    }
  );
}

it.each([
  // A pot of Slate does three draws and 10 of 15 ml of a fourth, one of Oat three.
  [4, ['Quay Slate'], 4, 300],
  [1, ['Quay Oat', 'Quay Slate'], 1, 600],
  [0, ['Quay Oat', 'Quay Slate', 'Quay Slate'], 0, 900],
])('where %i draws may fail', (mayFail, bought, failing, totalMinor) => {
  expect(mendNothing([slate, oat], mayFail)).toEqual({ bought, failing, totalMinor });
});

it('counts the postage of a shop that is not bought from yet', () => {
  const far = { ...slate, shop: 'Mill', offer: 'cheap Slate', priceMinor: 200 };
  expect(mendNothing([slate, far, oat], 4)?.bought).toEqual(['Quay Slate']);
  expect(mendNothing([{ ...slate, priceMinor: 700 }, far, oat], 0)?.bought).toEqual([
    'Mill cheap Slate',
    'Mill cheap Slate',
    'Quay Oat',
  ]);
});

it('is undone where the offers end', () => {
  expect(mendNothing([{ ...slate, available: 1 }, oat], 1)?.failing).toBe(1);
  expect(mendNothing([{ ...slate, available: 1 }, oat], 0)).toBeUndefined();
});

it.each([
  // Each draw lacks one pot more than 19, 20 or 39: one at a time up to 19, two from 20 on, since a tenth of them are.
  [19, 20],
  [20, 22],
  [39, 42],
])('adds tenths of what is bought: of %i pots it makes %i', (before, after) => {
  const lacking = makeDrawn({ Slate: [10 * before + 5] });
  const market = { offers: [slate], shops: new Map(), assumptions: registry };
  const sought = { ...openPromise(lacking, market), mayFail: 0, buying: prepareBuying({}) };
  const wares = listWares([{ paint: 'Slate', ml: 1000 }], market);
  expect(mendWay(wayOf(wares, [before], sought), sought)?.counts).toEqual([after]);
});
