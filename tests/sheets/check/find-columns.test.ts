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
    expect(told({ pots: pots('price all') })).toEqual(['near-column price all']);
  });
});

describe('headers of the painter’s own', () => {
  const leftAlone = (sheets: SheetRows) =>
    check(sheets).read.flatMap(({ file, columns }) => {
      const alone = columns.flatMap(({ header, column }) => (column === undefined ? [header] : []));
      return alone.length === 0 ? [] : [`${file} ${alone.join(' | ')}`];
    });
  const army = (...headers: readonly string[]) => [
    ['unit', 'figure', 'count', ...headers],
    ['first spears', 'spearman', '20'],
  ];

  it('are listed by sheet', () => {
    const pots = [
      ['paint', 'size ml', 'Shade', 'notes', '', ' my Notes'],
      ['brick red', '17', 'dark'],
      ['earth wash', '24', 'light'],
    ];
    expect(leftAlone({ army: army('done step', 'prior', 'Comments'), pots })).toEqual([
      'pots.csv Shade | notes |  my Notes',
      'army.csv done step | prior | Comments',
    ]);
    expect(leftAlone({})).toEqual([]);
    expect(leftAlone({ pots: pots.map((cells) => [...cells.slice(0, 2), 'price', 'price USD']) })).toEqual([
      'pots.csv price USD',
    ]);
  });

  it.each<[string, string]>([
    ['prior', 'priority'],
    ['done step', 'done'],
    ['doneStep', 'done'],
    ['Priority_of_mine', 'priority'],
    ['batch (figures)', 'batch'],
    ['sche', 'scheme'],
  ])('are questioned where a column is part of their name or they of its: %s', (header, column) => {
    const { problems } = check({ army: army(header) });
    expect(problems.map(({ code, found, expected }) => [code, found, expected])).toEqual([
      ['near-column', header, column],
    ]);
  });

  it.each([['pri'], ['donestep'], ['my batch'], ['done notes'], ['schedule']])(
    '%s is not questioned',
    (header) => {
      expect(told({ army: army(header) })).toEqual([]);
    },
  );

  it('are questioned only for a column that is not there', () => {
    expect(told({ army: army('done', 'done step') })).toEqual([]);
    expect(told({ army: army('done step', 'dune') })).toEqual(['near-column dune']);
  });
});

describe('a column called model', () => {
  const figures = (header: string, ...models: readonly string[]) => ({
    figures: [
      [header, 'Model', 'eye mm'].filter(Boolean),
      ...models.map((model) => (header ? ['x', model, '28'] : [model, '28'])),
    ],
  });

  it('holds the figures where none is called so', () => {
    expect(told(figures('', 'spearman', 'archer no. 2'))).toEqual([]);
  });

  it('holds files where it names one, or figures have their column', () => {
    expect(told(figures('', 'spearman', 'archer.stl'))).toContain('missing-column figure');
    expect(told(figures('figure', 'spearman'))).toEqual(['unknown-figure figure']);
  });
});

describe('how a sheet was read', () => {
  it('is told of each header: own name, another word, left alone, asked about', () => {
    const { read } = check({
      pots: [
        ['Farbe', 'Size (ml)', 'shade', 'How full', ''],
        ['brick red', 17, 'x', '60%', ''],
        ['earth wash', 24, '', '40%', ''],
      ],
      army: [
        ['unit', 'figure', 'count', 'prior'],
        ['first spears', 'spearman', '20', '1'],
      ],
    });
    expect(read.map(({ sheet }) => sheet)).toEqual(['pots', 'figures', 'schemes', 'army']);
    expect(read[0]).toEqual({
      sheet: 'pots',
      file: 'pots.csv',
      headerRow: 1,
      columns: [
        { header: 'Farbe', column: 'paint', isOwn: false },
        { header: 'Size (ml)', column: 'size ml', isOwn: true },
        { header: 'shade', isOwn: false },
        { header: 'How full', column: 'left', isOwn: false },
      ],
    });
    expect(read[3]?.columns[3]).toEqual({ header: 'prior', maybe: 'priority', isOwn: false });
  });
});
