// Offers by range: a row prices every paint of its range, as rows written out do.
import { describe, expect, it } from 'vitest';
import { planArmy } from '../../../src/plan-army.js';
import { check, checkRight, type SheetRows, shortRows } from './make-tables.js';

const pots = [
  ['paint', 'size ml', 'left', 'range'],
  ['brick red', '17', '10%', 'Depot'],
  ['earth wash', '24', '10%', 'Mud '],
  ['slate', '17', 'empty', 'depot'],
  ['gull', '17', 'empty', ''],
];
const paints = [
  ['paint', 'kind', 'range'],
  ['Slate', '', 'DEPOT'],
  ['pale ground', 'primer', 'Depot'],
];
const offers = (...rows: readonly (readonly string[])[]) => [
  ['shop', 'offer', 'price', 'paint', 'range', 'size ml', 'pots', 'available', 'container'],
  ...rows,
];

describe('an offer of a range', () => {
  it('is one for each of its paints, in the order of their first rows, with the row that it comes from', () => {
    const { offers: read } = checkRight({
      pots,
      paints,
      offers: offers(
        ['Quay', 'gull 17', '3.10', 'gull', '', '17', '', '', ''],
        ['', 'dropper', '2.95', '', 'depot', '17', '2', '4', 'dropper'],
        ['', 'tin', '12', '', 'Depot', '400', '', '', ''],
      ),
    });
    const dropper = { row: 3, shop: 'Quay', priceMinor: 295, available: 4 };
    const held = { sizeMl: 17, count: 2, container: 'dropper' };
    const tin = { row: 4, shop: 'Quay', priceMinor: 1200 };
    expect(read).toEqual([
      {
        row: 2,
        shop: 'Quay',
        offer: 'gull 17',
        priceMinor: 310,
        pots: [{ paint: 'gull', sizeMl: 17, count: 1, container: 'pot' }],
      },
      { ...dropper, offer: 'dropper, brick red', pots: [{ paint: 'brick red', ...held }] },
      { ...dropper, offer: 'dropper, slate', pots: [{ paint: 'slate', ...held }] },
      { ...dropper, offer: 'dropper, pale ground', pots: [{ paint: 'pale ground', ...held }] },
      ...(
        [
          ['brick red', 'pot'],
          ['slate', 'pot'],
          ['pale ground', 'can'],
        ] as const
      ).map(([paint, container]) => ({
        ...tin,
        offer: `tin, ${paint}`,
        pots: [{ paint, sizeMl: 400, count: 1, container }],
      })),
    ]);
  });

  it('needs no column of paints', () => {
    const { offers: read } = checkRight({
      pots,
      paints,
      offers: [
        ['shop', 'offer', 'price', 'range', 'size ml'],
        ['Quay', 'pot', '4', 'mud', '24'],
      ],
    });
    expect(read).toMatchObject([{ offer: 'pot, earth wash', pots: [{ paint: 'earth wash', sizeMl: 24 }] }]);
  });

  it('is told once what is wrong with it, however many paints it has', () => {
    const wrong = (...cells: readonly string[]) =>
      check({ pots, paints, offers: offers(cells) }).problems.map(({ code }) => code);
    expect(wrong('Quay', 'dropper', '', '', 'depot', '17', '', '', '')).toEqual(['offer-without-price']);
    expect(wrong('Quay', 'dropper', '0', '', 'depot', '17', '', '', '')).toEqual(['offer-for-nothing']);
    expect(wrong('Quay', 'dropper', '2', '', '', '17', '', '', '')).toEqual(['blank-cell']);
  });
});

it('60 offers as 10 rows give the identical plan', async () => {
  const ranges = ['Depot', 'Mud', 'Sky', 'Yard', 'Moor'];
  const named = ranges.flatMap((range) =>
    [1, 2, 3, 4, 5, 6].map((at) => ({ range, paint: `${range} ${at}` })),
  );
  const shops = [
    ['Quay', '17', 2],
    ['Lane', '12', 1.7],
  ] as const;
  const priceOf = (range: string, base: number): string => (base + ranges.indexOf(range) / 10).toFixed(2);
  const written = shops.flatMap(([shop, size, base]) =>
    named.map(({ range, paint }) => [shop, `${range} row, ${paint}`, priceOf(range, base), paint, size]),
  );
  const short = shops.flatMap(([shop, size, base]) =>
    ranges.map((range) => [shop, `${range} row`, priceOf(range, base), range, size]),
  );
  expect([written.length, short.length]).toEqual([60, 10]);
  const used = named.filter((_, at) => at % 4 === 0).map(({ paint }) => paint);
  const shared: SheetRows = {
    ...shortRows,
    pots: [
      ['paint', 'size ml', 'left', 'range'],
      ...named.map(({ range, paint }) => [paint, '17', '2%', range]),
    ],
    schemes: [
      ['scheme', 'step', 'zone', 'layer', 'paint', 'coats'],
      ...used.map((paint, at) => ['red line', String(at + 1), 'whole', 'base coat', paint, '3']),
    ],
    shops: [
      ['shop', 'postage', 'free from'],
      ['Quay', '3.90', '20'],
      ['Lane', '2', ''],
    ],
  };
  const planOf = async (offerRows: SheetRows['offers']) => {
    const sheets = checkRight({ ...shared, ...(offerRows === undefined ? {} : { offers: offerRows }) });
    const bare = {
      ...sheets,
      defaults: [],
      read: [],
      offers: sheets.offers.map((offer) => ({ ...offer, row: 2 })),
    };
    return planArmy(bare, '2026-11-02');
  };
  const long = await planOf([['shop', 'offer', 'price', 'paint', 'size ml'], ...written]);
  expect(long.order.totalMinor).toBeGreaterThan(0);
  expect(await planOf([['shop', 'offer', 'price', 'range', 'size ml'], ...short])).toEqual(long);
});
