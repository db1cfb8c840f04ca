// Which header is taken for which column, where several could be meant or none is quite right.
import { describe, expect, it } from 'vitest';
import { check, checkRight, type SheetRows } from './make-tables.js';

const told = (sheets: SheetRows): readonly string[] =>
  check(sheets).problems.map(({ code, column }) => `${code} ${column}`);

describe('units and currencies in headers', () => {
  it('are read like the plain header', () => {
    const { pots, schemes, figures } = checkRight({
      pots: [
        ['Paint', 'Size (ml)', 'Price (€)', 'Keep (ml)'],
        ['brick red', '17', '3.50', '5'],
        ['earth wash', '24', '€4.10', ''],
      ],
      figures: [
        ['figure', 'Eye (mm)', 'Base [mm]', 'price EUR'],
        ['spearman', '28', 'round 25', '1.80'],
      ],
      schemes: [
        ['scheme', 'step', 'zone', 'layer', 'paint', 'Area (%)'],
        ['red line', '1', 'whole', 'base coat', 'brick red', '60'],
        ['red line', '2', 'whole', 'wash', 'earth wash', ''],
      ],
    });
    expect(pots.map(({ sizeMl, priceMinor }) => [sizeMl, priceMinor])).toEqual([
      [17, 350],
      [24, 410],
    ]);
    expect(schemes.get('red line')?.steps[0]?.areaShare).toBe(0.6);
    expect(figures.get('spearman')).toMatchObject({ eyeMm: 28, priceMinor: 180 });
  });

  const pots = (...headers: readonly string[]) => [
    ['paint', 'size ml', ...headers],
    ['brick red', '17', '1', '2'],
    ['earth wash', '24', '1', '2'],
  ];

  it.each<[readonly string[], number]>([
    [['price', 'price USD'], 100],
    [['price GBP', 'price'], 200],
    [['price (£)', 'price €'], 200],
    [['price_eur', 'price_gbp'], 100],
  ])('of %j the one in euros counts', (headers, priceMinor) => {
    expect(checkRight({ pots: pots(...headers) }).pots[0]).toMatchObject({ priceMinor });
  });

  it('go with the currency of the settings', () => {
    const settings = [
      ['name', 'value'],
      ['currency', 'GBP'],
    ];
    expect(told({ settings, pots: pots('Price (£)') })).toEqual([]);
    expect(told({ settings, pots: pots('Price (€)') })).toEqual(['other-currency Price (€)']);
    expect(
      told({
        settings: [
          ['name', 'value'],
          ['currency', 'pounds'],
        ],
        pots: pots('Price (€)'),
      }),
    ).toEqual(['not-a-currency value']);
  });

  it('do not make small letters a foreign currency', () => {
    expect(told({ pots: pots('price all') })).toEqual([]);
  });
});
