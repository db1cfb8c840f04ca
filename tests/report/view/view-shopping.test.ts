// The reorder list in words: shops, lines, sums, what nobody offers, and what is said where nothing is bought.
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../src/model/plan.js';
import { viewPlan } from '../../../src/report/view/view-plan.js';
import { smallPlan } from '../a-small-plan.js';

const shoppingOf = (changes: Partial<Plan>) => viewPlan({ ...smallPlan, ...changes }, []).shopping;

describe('the small order', () => {
  const { groups, bothTotal } = shoppingOf({});

  it('parts army and shelf', () => {
    expect(groups.map(({ title, total }) => [title, total])).toEqual([
      ['For this army', '€7.40'],
      ['For the shelf', '€6.40'],
    ]);
    expect(bothTotal).toBe('€13.80');
  });

  it('lists a shop with goods, postage and sum', () => {
    expect(groups[0]?.shops[0]).toMatchObject({
      shop: 'Ferry Lane Colours',
      goods: '€3.50',
      postage: '€3.90',
      total: '€7.40',
    });
    expect(groups[0]?.shops[0]?.lines[0]).toMatchObject({
      offer: 'Nettle coat, dropper',
      count: '1',
      price: '€3.50',
      cost: '€3.50',
      pots: [
        { paint: 'Nettle coat', hex: '#5d7a3a', what: '1 dropper of 17\u00a0ml', code: '6291041500213' },
      ],
    });
    expect(groups[1]?.shops[0]?.postage).toBe('free');
  });

  it('counts pots in the plural', () => {
    expect(groups[1]?.shops[0]?.lines[0]?.pots[0]?.what).toBe('2 droppers of 17\u00a0ml');
  });

  it('lists what no offer covers', () => {
    expect(groups[0]?.unmet).toEqual([{ paint: 'Rust hush', hex: '#8a4b2e', missing: '4.1\u00a0ml' }]);
  });
});

describe('other orders', () => {
  it('tell how low pots come onto the list', () => {
    expect(shoppingOf({ restock: undefined }).lead).toContain('restock = shelf');
    expect(shoppingOf({}).lead).not.toContain('restock = shelf');
  });

  it('have no common sum where one group is empty', () => {
    expect(shoppingOf({ restock: undefined }).bothTotal).toBe('');
  });

  it('say nothing of files where there is nothing to buy', () => {
    const order = {
      status: 'nothing to buy',
      aboveBestMinor: 0,
      passedOver: [],
      fromOneShop: [],
      totalMinor: 0,
      postageMinor: 0,
      lines: [],
      bills: [],
      unmet: [],
    } as const;
    expect(shoppingOf({ order, restock: undefined, stock: [] }).lead).toBe('');
  });
});
