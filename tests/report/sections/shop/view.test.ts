// The list to take along: one line an offer, sums as text and as whole minor units.
import { describe, expect, it } from 'vitest';
import type { PlanResults } from '../../../../src/model/plan.js';
import { viewReorder } from '../../../../src/report/reorder/view-reorder.js';
import { viewShop } from '../../../../src/report/sections/shop/view.js';
import { viewInputs } from '../../../../src/report/words/view-inputs.js';
import { changedPlan } from '../../a-small-plan.js';
import { smallOrder, smallRestock } from '../../a-small-shelf.js';

const shopOf = (changes: Partial<PlanResults>) => {
  const plan = changedPlan(changes);
  return viewShop(viewInputs(plan), viewReorder(plan));
};
const [firstLine] = smallOrder.lines;
const [firstPot] = firstLine?.pots ?? [];
if (firstLine === undefined || firstPot === undefined) throw new Error('the small order has no line');

describe('the list to take along', () => {
  const view = shopOf({});

  it('has both orders, what they cost and their pots: 7.40 and 6.40, one dropper and two', () => {
    expect(view).toMatchObject({ toPay: '€13.80', pots: '3 pots', date: '5 October 2026' });
    expect(view.groups.map(({ title }) => title)).toEqual(['', 'For the shelf']);
  });

  it('tells each shop and line', () => {
    expect(view.groups[0]?.shops).toEqual([
      {
        shop: 'The Ferry Steps',
        postageMinor: 390,
        note: "below this shop's least order of 1.50 EUR",
        sums: 'Goods €3.50, postage €3.90',
        lines: [
          {
            offer: 'Nettle coat, dropper',
            code: '',
            isSet: false,
            tick: 'Bought: Nettle coat, dropper',
            minor: 350,
            cost: '€3.50',
            apiece: '',
            pots: [
              {
                paint: 'Nettle coat',
                hex: '#5d7a3a',
                what: '1 dropper of 17\u00a0ml',
                code: '2000310000217',
                count: 1,
              },
            ],
          },
        ],
      },
    ]);
  });

  it('lists what no shop has', () => {
    expect(view.groups[0]?.unmet).toEqual([
      { paint: 'Rust hush', hex: '#8a4b2e', says: '1 pot of 17\u00a0ml, unpriced' },
    ]);
  });

  it('lists for the shelf only the pots that the army’s do not hold as well', () => {
    const unmetOf = (ml: number) => {
      const restock = { ...smallRestock, unmet: [{ paint: 'Rust hush', ml }] };
      return shopOf({ restock }).groups.map(({ unmet }) => unmet.map(({ says }) => says));
    };
    // A pot of 17 x 0.94 = 15.98; the army takes 4.05 of it.
    expect(unmetOf(11.9)).toEqual([['1 pot of 17\u00a0ml, unpriced'], []]);
    expect(unmetOf(12)).toEqual([['1 pot of 17\u00a0ml, unpriced'], ['1 pot of 17\u00a0ml, unpriced']]);
  });

  it('says a set by its name, and a code that its pots share once', () => {
    const pots = [firstPot, { ...firstPot, paint: 'Pond wash' }];
    const { groups } = shopOf({ order: { ...smallOrder, lines: [{ ...firstLine, pots }] } });
    const set = groups[0]?.shops[0]?.lines[0];
    expect(set).toMatchObject({ isSet: true, offer: 'Nettle coat, dropper', code: '2000310000217' });
    expect(set).toMatchObject({ pots: [{ code: '' }, { paint: 'Pond wash', code: '' }] });
  });

  it('says what one of several costs, and no name twice', () => {
    const line = { ...firstLine, offer: 'Nettle coat', count: 2, costMinor: 700 };
    expect(shopOf({ order: { ...smallOrder, lines: [line] } }).groups[0]?.shops[0]?.lines[0]).toMatchObject({
      offer: '',
      cost: '€7.00',
      apiece: '2 at €3.50',
    });
  });

  it('says so where there is nothing to buy', () => {
    const order = { ...smallOrder, totalMinor: 0, lines: [], bills: [], unmet: [] };
    expect(shopOf({ order, restock: undefined })).toMatchObject({
      toPay: '',
      groups: [{ shops: [], nothing: 'Nothing to buy.' }],
    });
  });
});
