// The reorder list in words: shops, lines, sums, what covers what, proof, other ways, and what nobody
// offers.
import { describe, expect, it } from 'vitest';
import type { Order, OrderLine } from '../../../../src/model/order.js';
import type { Plan } from '../../../../src/model/plan.js';
import { viewPlan } from '../../../../src/report/page/view.js';
import { changedPlan } from '../../a-small-plan.js';
import { smallOrder, smallRestock, smallStock } from '../../a-small-shelf.js';

const shoppingOf = (changes: Partial<Plan>) => viewPlan(changedPlan({ ...changes }), []).shopping;

describe('the small order', () => {
  const { groups, bothTotal, lead } = shoppingOf({});

  it('brings the shelf to its level after what the chosen way to buy takes', () => {
    expect(groups.at(-1)?.says).toContain('back to its keep level after what 80% sure takes.');
  });

  it('parts army and shelf', () => {
    expect(groups.map(({ title }) => title)).toEqual(['', 'For the shelf: €6.40']);
    expect(lead).toBe(
      'Buy this pot, and in 80 of 100 armies like yours nothing runs out. Some will likely be left over.',
    );
    expect(bothTotal).toBe('€13.80');
  });

  it('lists a shop with goods, postage and sum', () => {
    expect(groups[0]?.shops[0]).toMatchObject({
      shop: 'The Ferry Steps',
      sums: 'Goods €3.50, postage €3.90',
      total: '€7.40',
    });
    expect(groups[0]?.shops[0]?.lines[0]).toMatchObject({
      offer: 'Nettle coat, dropper',
      count: '1',
      price: '€3.50',
      cost: '€3.50',
      pots: [
        {
          paint: 'Nettle coat',
          hex: '#5d7a3a',
          what: '1 dropper of 17\u00a0ml',
          covers: 'you lack 8.0\u00a0ml, 8.3\u00a0ml to spare',
          code: '2000310000217',
        },
      ],
    });
    expect(groups[1]?.shops[0]?.sums).toBe('Goods €6.40, postage free');
  });

  it('counts pots in the plural', () => {
    expect(groups[1]?.shops[0]?.lines[0]?.pots[0]?.what).toBe('2 droppers of 17\u00a0ml');
  });

  it('lists what no offer covers', () => {
    expect(groups[0]?.unmet).toEqual([
      { paint: 'Rust hush', hex: '#8a4b2e', missing: '1 pot of 17\u00a0ml, unpriced; you lack 4.1\u00a0ml' },
    ]);
  });

  it('offers another like the newest priced pot, without a shop', () => {
    // A need of 36 ml beyond the pots of 17 ml x 0.94 = 15.98 usable takes three; 3 x 2.95 = 8.85.
    const order = orderOf({ unmet: [{ paint: 'Nettle coat', ml: 36 }] });
    const [kettle, nettle, ...others] = smallStock;
    if (kettle === undefined || nettle === undefined) throw new Error('the small shelf has no nettle coat');
    const pots = nettle.pots.map((one) => ({ ...one, priceMinor: 295 }));
    const plan = { order, stock: [kettle, { ...nettle, pots }, ...others] };
    expect(shoppingOf(plan).groups[0]?.unmet[0]?.missing).toBe(
      '3 droppers of 17\u00a0ml like yours, €8.85; you lack 36\u00a0ml',
    );
  });

  it('says in goes what is taken as likely for want of any offer', () => {
    const missingOf = (aim: Plan['aim']) => shoppingOf({ aim }).groups[0]?.unmet[0]?.missing;
    expect(missingOf({ policy: 'goes' })).toMatch(/unpriced; you likely lack 4\.1\u00a0ml$/);
    expect(missingOf({ policy: 'likely' })).toMatch(/you lack 4\.1\u00a0ml$/);
  });
});

const firstLine = smallOrder.lines[0];
const firstPot = firstLine?.pots[0];
if (firstLine === undefined || firstPot === undefined) throw new Error('the small order has no line');
const orderOf = (changes: Partial<Order>): Order => ({ ...smallOrder, ...changes });
const groupOf = (order: Order) => shoppingOf({ order }).groups[0];
const foundOf = (order: Order) => shoppingOf({ order, restock: undefined }).found;

describe('how sure an order is', () => {
  it.each([
    [{ status: 'proved', unmet: [] }, /^Proved: no order that covers these amounts costs less\./],
    [
      { status: "can't be met" },
      /^The offers do not cover everything: .* the rest is ordered\. .* that is proved\.$/,
    ],
    [
      { status: 'proved', unmet: [], tiesOpen: true },
      /^Proved: .* Time ran out before all orders at this cost were compared: another may take fewer shops or pots\. .*--seconds 60\.$/,
    ],
    [
      { status: 'not proved', aboveBestMinor: 140, unmet: [] },
      /^Not proved to be the cheapest: it costs at most €1\.40 above the best possible\. .*--seconds 60\.$/,
    ],
    [
      { status: "can't be met", aboveBestMinor: 140 },
      /^The offers do not cover everything.* at most €1\.40 above the best possible\./,
    ],
  ] as const)('%j', (changes, says) => expect(foundOf(orderOf(changes))[0]?.says).toMatch(says));

  it('is not said where nothing is bought', () =>
    expect(foundOf(orderOf({ status: "can't be met", lines: [], bills: [] }))).toEqual([]));

  it('is said of the shelf beside the army', () => {
    expect(shoppingOf({}).found[1]?.says).toBe(
      'Proved: beside the order for the army, nothing that fills these pots up costs less.',
    );
  });
});

describe('why a line is there', () => {
  const whyOf = (line: Partial<OrderLine>, changes: Partial<Order> = {}, postageMinor = 0) => {
    const bills = [
      { shop: 'The Ferry Steps', goodsMinor: 350, postageMinor, totalMinor: 350 + postageMinor },
    ];
    return groupOf(orderOf({ bills, lines: [{ ...firstLine, ...line }], ...changes }))?.shops[0]?.lines[0];
  };
  const idle = { ...firstPot, coversMl: 0, overMl: 16.32 };

  it('needs no word where every pot is needed', () => expect(whyOf({})?.why).toBe(''));

  it('is free postage or the least order where it covers nothing', () => {
    expect(whyOf({ pots: [idle] })).toMatchObject({
      why: 'This only fills the order up to free postage or the least order.',
      pots: [{ covers: 'you lack none' }],
    });
    expect(whyOf({ pots: [idle] }, {}, 390)?.why).toBe('This only fills the order up to the least order.');
  });

  it('counts what is bought beyond the need', () => {
    // Three pots of 16.32 are 48.96; 8.02 of it is needed, for which one does.
    const pots = [{ ...firstPot, count: 3, overMl: 40.94 }];
    expect(whyOf({ count: 3, pots })?.why).toBe(
      '2 of 3 only fill the order up to free postage or the least order.',
    );
  });

  it('may be the set', () => {
    const line = whyOf({ pots: [firstPot, { ...idle, paint: 'Chalk light' }] });
    expect(line?.why).toBe('What you do not lack comes with the set.');
    expect(line?.pots.map(({ covers }) => covers)).toEqual([
      'you lack 8.0\u00a0ml, 8.3\u00a0ml to spare',
      'you lack none',
    ]);
  });

  it('is not claimed to be known where the order is not proved', () => {
    expect(whyOf({ pots: [idle] }, { aboveBestMinor: 1 })?.why).toBe(
      'This may not be needed: the order is not proved.',
    );
  });

  it('says that nothing is left over of a pot used up', () => {
    const pots = [{ ...firstPot, coversMl: 16.32, overMl: 0 }];
    expect(whyOf({ pots })?.pots[0]?.covers).toBe('you lack 16\u00a0ml, none to spare');
  });
});

describe('other ways', () => {
  it('stand beside the order, the cheapest first', () => {
    const order = orderOf({
      fromOneShop: [
        { shop: 'The Ferry Steps', totalMinor: 740 },
        { shop: 'The Mill Gate', totalMinor: 905 },
      ],
      passedOver: [
        { shop: 'The Mill Gate', offer: 'Box of greens', extraMinor: 60 },
        { shop: 'The Mill Gate', offer: 'Box of browns', extraMinor: 0 },
      ],
    });
    expect(foundOf(order)[0]?.ways).toEqual([
      { way: 'This order, from The Ferry Steps', total: '€7.40', more: '' },
      { way: 'With Box of browns from The Mill Gate', total: '€7.40', more: 'the same' },
      { way: 'With Box of greens from The Mill Gate', total: '€8.00', more: '€0.60 more' },
      { way: 'All from The Mill Gate', total: '€9.05', more: '€1.65 more' },
    ]);
  });

  it('may turn out cheaper than an order that is not proved', () => {
    const fromOneShop = [{ shop: 'The Mill Gate', totalMinor: 700 }];
    const order = orderOf({ status: 'not proved', aboveBestMinor: 140, fromOneShop });
    expect(foundOf(order)[0]?.ways[1]).toMatchObject({ way: 'All from The Mill Gate', more: '€0.40 less' });
  });

  it('are none where the order comes from the only shop', () =>
    expect(foundOf(smallOrder)[0]?.ways).toEqual([]));
});

describe('postage of the shelf', () => {
  const shelfOf = (shop: string, postageMinor: number) =>
    shoppingOf({
      restock: {
        ...smallRestock,
        postageMinor,
        bills: [{ shop, goodsMinor: 640, postageMinor, totalMinor: 640 + postageMinor }],
      },
    }).groups[1];

  it.each([
    ['The Mill Gate', 0, 'Goods €6.40, postage free', false],
    ['The Ferry Steps', 0, 'Goods €6.40, no more postage', true],
    ['The Ferry Steps', -390, 'Goods €6.40, postage back €3.90', true],
    ['The Mill Gate', 280, 'Goods €6.40, postage €2.80', false],
  ])('from %s, %d minor units', (shop, minor, sums, together) => {
    const group = shelfOf(shop, minor);
    expect(group?.shops[0]?.sums).toBe(sums);
    expect(group?.says.includes('Send both orders to a shop as one')).toBe(together);
  });
});

describe('other orders', () => {
  it('tell how low pots come onto the list', () => {
    expect(shoppingOf({ restock: undefined }).lowLeftOut).toContain('restock = shelf');
    expect(shoppingOf({}).lowLeftOut).toBe('');
  });

  it('have no common sum where one group is empty', () => {
    expect(shoppingOf({ restock: undefined }).bothTotal).toBe('');
  });

  it('say nothing of what to do with them where there is nothing to buy', () => {
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
