import { describe, expect, it } from 'vitest';
import { viewReorder } from '../../../src/report/reorder/view-reorder.js';
import { changedPlan, smallPlan } from '../a-small-plan.js';
import { smallOrder } from '../a-small-shelf.js';
import { examplePlan } from '../plan-json/plan-example.js';

describe('viewReorder', () => {
  it('lists the order by shop, and restocking in a group of its own', () => {
    expect(viewReorder(smallPlan)).toEqual({
      date: '2026-10-05',
      currency: 'EUR',
      minorDigits: 2,
      csv: { decimal: '.', delimiter: ',' },
      totalMinor: 1380,
      groups: [
        {
          for: 'army',
          totalMinor: 740,
          note: '',
          unmet: [
            {
              paint: 'Rust hush',
              ml: 4.05,
              sizeMl: 17,
              container: 'pot',
              count: 1,
              priceMinor: undefined,
              isOwned: false,
              isAsLikely: false,
            },
          ],
          waits: [{ paint: 'Pond wash', chanceNeeded: { chance: 0.213, error: 0.004 }, threshold: 0.2779 }],
          shops: [
            {
              shop: 'The Ferry Steps',
              goodsMinor: 350,
              postageMinor: 390,
              totalMinor: 740,
              note: "below this shop's least order of 1.50 EUR",
              lines: [
                {
                  offer: 'Nettle coat, dropper',
                  count: 1,
                  priceMinor: 350,
                  costMinor: 350,
                  spare: 0,
                  needed: expect.objectContaining({ chanceNeeded: { chance: 0.974, error: 0.002 } }),
                  pots: [
                    {
                      paint: 'Nettle coat',
                      sizeMl: 17,
                      container: 'dropper',
                      count: 1,
                      coversMl: 8.02,
                      overMl: 8.3,
                      code: '2000310000217',
                    },
                  ],
                },
              ],
            },
          ],
        },
        {
          for: 'shelf',
          totalMinor: 640,
          note: '',
          unmet: [],
          waits: [],
          shops: [
            {
              shop: 'The Mill Gate',
              goodsMinor: 640,
              postageMinor: 0,
              totalMinor: 640,
              note: '',
              lines: [
                {
                  offer: 'Lamp white twin box',
                  count: 1,
                  priceMinor: 640,
                  costMinor: 640,
                  spare: 0,
                  needed: undefined,
                  pots: [
                    {
                      paint: 'Lamp white',
                      sizeMl: 17,
                      container: 'dropper',
                      count: 2,
                      coversMl: 1.734,
                      overMl: 30.906,
                      code: '',
                    },
                  ],
                },
              ],
            },
          ],
        },
      ],
    });
  });

  it('says why postage falls', () => {
    const bills = [{ shop: 'The Ferry Steps', goodsMinor: 350, postageMinor: -390, totalMinor: -40 }];
    const [group] = viewReorder(changedPlan({ order: { ...smallOrder, bills } })).groups;
    expect(group?.shops[0]?.note).toBe("together with the army's order the goods travel free");
  });

  it('says how far above the best an order may lie', () => {
    const order = { ...smallOrder, status: 'not proved' as const, aboveBestMinor: 140 };
    expect(viewReorder(changedPlan({ order })).groups.map(({ note }) => note)).toEqual([
      'not proved to be the cheapest: at most 1.40 EUR above the best possible',
      '',
    ]);
  });

  it('has the decimal mark of the locale in notes too', () => {
    const order = { ...smallOrder, status: 'not proved' as const, aboveBestMinor: 140 };
    const settings = { ...smallPlan.settings, locale: 'de' };
    expect(viewReorder({ ...smallPlan, order, settings }).groups[0]?.note).toMatch(
      / at most 1,40 EUR above /,
    );
  });

  it('has one empty group where there is nothing to buy', () => {
    const order = {
      ...smallOrder,
      status: 'nothing to buy' as const,
      totalMinor: 0,
      lines: [],
      bills: [],
      unmet: [],
    };
    const view = viewReorder(changedPlan({ order, choices: [], restock: undefined }));
    expect(view.groups).toEqual([{ for: 'army', shops: [], totalMinor: 0, note: '', unmet: [], waits: [] }]);
  });

  it('adds up for a plan by the real stages: lines to goods, goods and postage to totals', () => {
    const { groups, totalMinor } = viewReorder(examplePlan);
    expect(groups.map((group) => group.shops.length)).toEqual([1, 1]);
    for (const { shops, totalMinor: total } of groups) {
      for (const { lines, goodsMinor } of shops)
        expect(lines.reduce((sum, { costMinor }) => sum + costMinor, 0)).toBe(goodsMinor);
      expect(shops.reduce((sum, shop) => sum + shop.totalMinor, 0)).toBe(total);
    }
    expect(groups.reduce((sum, group) => sum + group.totalMinor, 0)).toBe(totalMinor);
  });
});
