// Tables to typed rows: what each sheet becomes, which defaults blanks take, and that one mistake makes one problem.
import { describe, expect, it } from 'vitest';
import { registry } from '../../../src/assumptions/registry.js';
import { checkTables } from '../../../src/sheets/check/check-tables.js';
import { columns } from '../../../src/sheets/columns/columns.js';
import type { Cell, Table } from '../../../src/sheets/table.js';
import { check, checkRight, makeTables, type SheetRows, shortRows } from './make-tables.js';

describe('the four short sheets', () => {
  it('become typed rows', () => {
    const { defaults, read, ...rest } = checkRight();
    expect(rest).toEqual({
      pots: [
        {
          row: 2,
          paint: 'brick red',
          sizeMl: 17,
          left: { how: 'by eye', share: 1 },
          leftGiven: false,
          container: 'pot',
          ordered: false,
        },
        {
          row: 3,
          paint: 'earth wash',
          sizeMl: 24,
          left: { how: 'by eye', share: 1 },
          leftGiven: false,
          container: 'pot',
          ordered: false,
        },
      ],
      paints: new Map([
        ['brick red', { paint: 'brick red', kind: 'colour', alsoCalled: [] }],
        ['earth wash', { paint: 'earth wash', kind: 'colour', alsoCalled: [] }],
      ]),
      offers: [],
      shops: new Map(),
      figures: new Map([
        [
          'spearman',
          {
            figure: 'spearman',
            eyeMm: 28,
            build: 'heroic',
            dress: 'clothed',
            kit: [],
            baseHighMm: 3,
            perBase: 1,
          },
        ],
      ]),
      zones: [],
      schemes: new Map([
        [
          'red line',
          {
            scheme: 'red line',
            steps: [
              {
                row: 2,
                step: 1,
                zone: 'whole',
                layer: 'base coat',
                paints: [{ paint: 'brick red', share: 1 }],
              },
              { row: 3, step: 2, zone: 'whole', layer: 'wash', paints: [{ paint: 'earth wash', share: 1 }] },
            ],
          },
        ],
      ]),
      army: [
        {
          row: 2,
          unit: 'first spears',
          figure: 'spearman',
          scheme: 'red line',
          count: 20,
          batch: 10,
          done: 0,
          priority: 1,
        },
      ],
      extras: [],
      log: [],
      swaps: [],
      settings: { currency: 'EUR', locale: 'en', restock: 'army', overrides: [] },
    });
    expect(defaults.length).toBeGreaterThan(0);
  });

  it('list every default that a blank or a missing column takes, in sheet order', () => {
    const listed = checkRight().defaults.map(({ sheet, column, rows, meaning }) => [
      `${sheet}.${column}`,
      rows,
      meaning,
    ]);
    expect(listed).toEqual([
      ['pots.left', 2, 'full'],
      ['pots.price', 2, 'unpriced'],
      ['pots.opened', 2, 'not opened yet'],
      ['pots.container', 2, 'a can for a primer or varnish of 150 ml or more, else a pot'],
      ['pots.ordered', 2, 'no, it stands on the shelf'],
      ['paints.kind', 2, 'colour'],
      ['paints.density g/ml', 2, 'as usual for its kind'],
      ['paints.thin', 2, 'as usual for the layer'],
      ['paints.keep ml', 2, 'a share of its largest pot, the assumption shelf level'],
      ['figures.base', 1, 'no base'],
      ['figures.area cm2', 1, 'estimated'],
      ['figures.price', 1, 'unpriced'],
      ['figures.build', 1, 'heroic for eyes at 25 to 35 mm, else true scale; of a box: closed'],
      ['figures.dress', 1, 'clothed'],
      ['figures.kit', 1, 'nothing'],
      ['schemes.coats', 2, 'as colours ask, else as usual for the layer'],
      ['schemes.method', 2, 'as usual for the layer'],
      ['schemes.thin', 2, 'as for the paint, else as usual for the layer'],
      ['schemes.area %', 2, 'as usual for the layer'],
      ['army.batch', 1, '10'],
      ['army.done', 1, 'none'],
      ['army.priority', 1, 'the order of the rows'],
      ['army.scheme', 1, 'the only scheme'],
      ['settings.currency', 1, 'EUR, which is assumed'],
      ['settings.date', 1, 'the day on which the plan is made'],
      ['settings.locale', 1, 'en, which is assumed'],
      ['settings.sure %', 1, 'no promise: as buy says'],
      ['settings.buy', 1, 'goes: what is likely enough to be needed to be worth its price'],
      ['settings.again', 1, 'one postage more'],
      ['settings.restock', 1, 'army: only what the plan needs; without an army shelf'],
    ]);
  });
});

describe('pots', () => {
  const headers = [
    'Paint',
    'SIZE_ML',
    'Left',
    'empty-g',
    'price',
    'opened',
    'counted',
    'container',
    'ordered',
    'code',
    'place',
    'kind',
    'my notes',
  ];

  it('take every column, whatever the case of its header', () => {
    const { pots, paints, defaults } = checkRight({
      pots: [
        headers,
        [
          'brick red',
          17,
          '20 g',
          '12,5',
          '3,50 €',
          { kind: 'date', iso: '2026-01-02' },
          '2026-02-03',
          'Dropper',
          'no',
          '2000310000217',
          'rack',
          '',
          'x',
        ],
        ['earth wash', '24', 'full', '', '', '', '', '', 'yes', '', '', 'wash', ''],
        ['prime', '400', '', '', '', '', '', '', '', '', '', 'primer', ''],
        ['prime', '149', '', '', '', '', '', '', '', '', '', '', ''],
      ],
    });
    expect(pots).toEqual([
      {
        row: 2,
        paint: 'brick red',
        sizeMl: 17,
        left: { how: 'weighed', grams: 20, emptyGrams: 12.5 },
        leftGiven: true,
        container: 'dropper',
        priceMinor: 350,
        openedOn: '2026-01-02',
        countedOn: '2026-02-03',
        ordered: false,
        code: '2000310000217',
        place: 'rack',
      },
      {
        row: 3,
        paint: 'earth wash',
        sizeMl: 24,
        left: { how: 'by eye', share: 1 },
        leftGiven: true,
        container: 'pot',
        ordered: true,
      },
      {
        row: 4,
        paint: 'prime',
        sizeMl: 400,
        left: { how: 'by eye', share: 1 },
        leftGiven: false,
        container: 'can',
        ordered: false,
      },
      {
        row: 5,
        paint: 'prime',
        sizeMl: 149,
        left: { how: 'by eye', share: 1 },
        leftGiven: false,
        container: 'pot',
        ordered: false,
      },
    ]);
    expect([...paints.values()].map(({ paint, kind }) => [paint, kind])).toEqual([
      ['brick red', 'colour'],
      ['earth wash', 'wash'],
      ['prime', 'primer'],
    ]);
    expect(defaults).toContainEqual({ sheet: 'paints', column: 'kind', rows: 1, meaning: 'colour' });
    expect(defaults).toContainEqual({ sheet: 'pots', column: 'left', rows: 2, meaning: 'full' });
  });

  it('are said to be lowered by every row of the log where nobody wrote the day of the reading', () => {
    const log: SheetRows['log'] = [
      ['date', 'paint', 'unit', 'step', 'figures', 'before g', 'after g', 'used ml'],
      ['2026-03-01', 'BRICK RED', 'First  spears', '1', '10', '31.2', '30.1', ''],
    ];
    const { defaults, log: rows } = checkRight({ log });
    expect(defaults).toContainEqual({
      sheet: 'pots',
      column: 'counted',
      rows: 1,
      meaning: 'every row of the log lowers it',
    });
    expect(checkRight().defaults.map(({ column }) => column)).not.toContain('counted');
    expect(rows).toEqual([
      {
        row: 2,
        file: 'log.csv',
        date: '2026-03-01',
        paint: 'brick red',
        unit: 'first spears',
        step: 1,
        figures: 10,
        beforeG: 31.2,
        afterG: 30.1,
      },
    ]);
  });
});

describe('paints', () => {
  it('are what pots and paints say of them together', () => {
    const { paints } = checkRight({
      pots: [
        ['paint', 'size ml', 'opacity', 'hex'],
        ['brick red', 17, 'weak', ''],
        ['earth wash', 24, '', ''],
      ],
      paints: [
        ['paint', 'kind', 'hex', 'density g/ml', 'thin', 'keep ml', 'also called'],
        ['Brick Red', 'metallic', '8A2B2B', 1.3, '0,5', '4', 'old red; mud, Brick red'],
        ['bone', '', '', '', '', '', ''],
      ],
    });
    expect([...paints.values()]).toEqual([
      {
        paint: 'brick red',
        kind: 'metallic',
        hex: '#8a2b2b',
        opacity: 'weak',
        densityGPerMl: 1.3,
        thin: 0.5,
        keepMl: 4,
        alsoCalled: ['old red', 'mud'],
      },
      { paint: 'earth wash', kind: 'colour', alsoCalled: [] },
      { paint: 'bone', kind: 'colour', alsoCalled: [] },
    ]);
  });

  it('answer to their other names in pots, offers, schemes and log', () => {
    const { pots, offers, paints, schemes, log } = checkRight({
      pots: [
        ['paint', 'size ml', 'also called'],
        ['old red', 12, ''],
        ['brick red', 17, 'Old Red'],
        ['earth wash', 24, ''],
      ],
      offers: [
        ['shop', 'offer', 'price', 'paint', 'size ml'],
        ['Quay', 'red', 3, 'OLD  RED', 17],
      ],
      schemes: [shortRows.schemes[0], ['red line', 1, 'whole', 'base coat', 'old red']],
      log: [
        ['date', 'paint', 'used ml'],
        ['2026-03-01', 'Old red', 1],
      ],
    });
    expect(pots.map(({ paint }) => paint)).toEqual(['brick red', 'brick red', 'earth wash']);
    expect(offers[0]?.pots[0]?.paint).toBe('brick red');
    expect(schemes.get('red line')?.steps[0]?.paints).toEqual([{ paint: 'brick red', share: 1 }]);
    expect(log[0]?.paint).toBe('brick red');
    expect([...paints.keys()]).toEqual(['brick red', 'earth wash']);
  });

  it('keep a name apart that has its own row in the paints sheet', () => {
    const { sheets, problems } = check({
      paints: [
        ['paint', 'also called'],
        ['brick red', 'old red'],
        ['old red', ''],
      ],
      pots: [
        ['paint', 'size ml'],
        ['old red', 12],
        ['brick red', 17],
        ['earth wash', 24],
      ],
    });
    expect(problems.map(({ code }) => code)).toEqual(['also-called-own']);
    expect([...(sheets?.paints.keys() ?? [])]).toEqual(['old red', 'brick red', 'earth wash']);
  });

  it('may claim each other without going round in circles', () => {
    const { paints } = checkRight({
      pots: [
        ['paint', 'size ml', 'also called'],
        ['brick red', 17, 'old red'],
        ['old red', 17, 'brick red'],
        ['earth wash', 24, ''],
      ],
    });
    expect([...paints.keys()]).toEqual(['brick red', 'earth wash']);
  });
});

describe('offers and shops', () => {
  it('are one set where shop and offer are the same', () => {
    const { offers, shops } = checkRight({
      offers: [
        ['shop', 'offer', 'price', 'paint', 'size ml', 'pots', 'available', 'container', 'code'],
        ['Quay', 'pair', '', 'brick red', 17, 2, '', 'tube', ''],
        ['Mill', 'wash', '4,95', 'Earth wash', 24, '', '', '', '20047115'],
        ['quay', ' Pair', '9.00', 'earth wash', 24, '', 3, '', ''],
      ],
      shops: [
        ['shop', 'P&P', 'free from', 'least order'],
        ['QUAY', '3.95', '45', ''],
        ['Mill', '', '', '10'],
        ['Far', '1', '', ''],
      ],
    });
    expect(offers).toEqual([
      {
        row: 2,
        shop: 'QUAY',
        offer: 'pair',
        priceMinor: 900,
        available: 3,
        pots: [
          { paint: 'brick red', sizeMl: 17, count: 2, container: 'tube' },
          { paint: 'earth wash', sizeMl: 24, count: 1, container: 'pot' },
        ],
      },
      {
        row: 3,
        shop: 'Mill',
        offer: 'wash',
        priceMinor: 495,
        pots: [{ paint: 'earth wash', sizeMl: 24, count: 1, container: 'pot', code: '20047115' }],
      },
    ]);
    expect([...shops.values()]).toEqual([
      { shop: 'QUAY', postageMinor: 395, freeFromMinor: 4500 },
      { shop: 'Mill', postageMinor: 0, leastOrderMinor: 1000 },
      { shop: 'Far', postageMinor: 100 },
    ]);
  });

  it('send for nothing where there is no shops sheet, which is said', () => {
    const { shops, defaults } = checkRight({
      offers: [
        ['shop', 'offer', 'price', 'paint', 'size ml'],
        ['Quay', 'red', 3, 'brick red', 17],
        ['quay', 'wash', 3, 'earth wash', 24],
      ],
    });
    expect([...shops.values()]).toEqual([{ shop: 'Quay', postageMinor: 0 }]);
    expect(defaults).toContainEqual({
      sheet: 'shops',
      column: 'postage',
      rows: 1,
      meaning: '0',
    });
  });
});

describe('figures', () => {
  it('take body, kit, base and box', () => {
    const { figures, defaults } = checkRight({
      figures: [
        [
          'figure',
          'eye mm',
          'build',
          'dress',
          'kit',
          'base',
          'base high mm',
          'per base',
          'box mm',
          'area cm2',
          'price',
        ],
        ['spearman', '28', '', '', 'Spear, round-shield; sword', 'round 25', '', '2', '', '', '1.80'],
        ['giant', '36', '', 'none', 'weapon', 'none', '', '', '', '9,5', ''],
        ['engine', '', '', '', '', 'oval 105x70', '4', '', '85x40x35', '', ''],
        ['crane', '', 'Open-Frame', '', '', '', '', '', '60x40x90', '', ''],
      ],
    });
    const builds = defaults.filter(({ sheet, column }) => sheet === 'figures' && column === 'build');
    expect(builds.map(({ rows, meaning }) => [rows, meaning])).toEqual([
      [3, 'heroic for eyes at 25 to 35 mm, else true scale; of a box: closed'],
    ]);
    expect([...figures.values()]).toEqual([
      {
        figure: 'spearman',
        eyeMm: 28,
        build: 'heroic',
        dress: 'clothed',
        kit: [
          { item: 'weapon', count: 2 },
          { item: 'round shield', count: 1 },
        ],
        base: { shape: 'round', acrossMm: 25 },
        baseHighMm: 3,
        perBase: 2,
        priceMinor: 180,
      },
      {
        figure: 'giant',
        eyeMm: 36,
        build: 'true scale',
        dress: 'none',
        kit: [{ item: 'weapon', count: 1 }],
        baseHighMm: 3,
        perBase: 1,
        areaCm2: 9.5,
      },
      {
        figure: 'engine',
        build: 'closed',
        dress: 'none',
        kit: [],
        base: { shape: 'oval', longMm: 105, wideMm: 70 },
        baseHighMm: 4,
        perBase: 1,
        boxMm: { longMm: 85, wideMm: 40, highMm: 35 },
      },
      {
        figure: 'crane',
        build: 'open frame',
        dress: 'none',
        kit: [],
        baseHighMm: 3,
        perBase: 1,
        boxMm: { longMm: 60, wideMm: 40, highMm: 90 },
      },
    ]);
  });

  it.each([
    [24.9, 'true scale'],
    [25, 'heroic'],
    [35, 'heroic'],
    [35.1, 'true scale'],
  ])('with eyes at %d mm are %s', (eyeMm, build) => {
    const { figures } = checkRight({
      figures: [
        ['figure', 'eye mm'],
        ['spearman', eyeMm],
      ],
    });
    expect(figures.get('spearman')?.build).toBe(build);
  });
});

describe('zones and schemes', () => {
  it('hold parts with their shares', () => {
    const { zones } = checkRight({
      zones: [
        ['zone', 'parts', 'figure'],
        ['coat', 'Front Trunk, back trunk; upper arms 12,5 %, head 25%, head 25', ''],
        ['coat', 'hands', 'SPEARMAN'],
      ],
    });
    expect(zones).toEqual([
      {
        zone: 'coat',
        parts: [
          { part: 'front trunk', share: 1 },
          { part: 'back trunk', share: 1 },
          { part: 'upper arms', share: 0.125 },
          { part: 'head', share: 0.5 },
        ],
      },
      { zone: 'coat', figure: 'spearman', parts: [{ part: 'hands', share: 1 }] },
    ]);
  });

  it('sort steps, and make one of the rows of a mix', () => {
    const { schemes } = checkRight({
      schemes: [
        ['scheme', 'step', 'zone', 'layer', 'paint', 'coats', 'method', 'area %', 'thin', 'share'],
        ['red line', 1, 'Whole', 'Base Coat', 'brick red', 2, 'airbrush', '60%', '0,5', ''],
        ['red line', 2, 'face', 'glaze', 'brick red', 1, '', '', '', 2],
        ['red line', 2, 'hands', 'glaze', 'brick red', '', '', '', '', ''],
        ['red line', 2, 'Face', 'glaze', 'earth wash', 1, '', '', '', 1],
        ['red line', 2, 'hands', 'glaze', 'earth wash', '', '', '', '', ''],
      ],
    });
    const steps = schemes.get('red line')?.steps;
    expect(steps).toEqual([
      {
        row: 2,
        step: 1,
        zone: 'whole',
        layer: 'base coat',
        method: 'airbrush',
        coats: 2,
        areaShare: 0.6,
        thin: 0.5,
        paints: [{ paint: 'brick red', share: 1 }],
      },
      {
        row: 3,
        step: 2,
        zone: 'face',
        layer: 'glaze',
        coats: 1,
        paints: [
          { paint: 'brick red', share: 2 / 3 },
          { paint: 'earth wash', share: 1 / 3 },
        ],
      },
      { row: 4, step: 2, zone: 'hands', layer: 'glaze', paints: [{ paint: 'brick red', share: 1 }] },
      { row: 6, step: 2, zone: 'hands', layer: 'glaze', paints: [{ paint: 'earth wash', share: 1 }] },
    ]);
  });

  it('count thirds in percent as a whole', () => {
    const { schemes } = checkRight({
      paints: [['paint'], ['bone']],
      pots: [
        ['paint', 'size ml'],
        ['brick red', 17],
        ['earth wash', 24],
        ['bone', 17],
      ],
      schemes: [
        ['scheme', 'step', 'zone', 'layer', 'paint', 'share'],
        ...['brick red', 'earth wash', 'bone'].map((paint) => ['red line', 1, 'face', 'glaze', paint, '33%']),
      ],
    });
    const shares = schemes.get('red line')?.steps[0]?.paints.map(({ share }) => share);
    expect(shares).toEqual([1 / 3, 1 / 3, 1 / 3]);
  });
});

describe('settings and extras', () => {
  it('take every setting and the painter’s own values', () => {
    const { settings, extras, defaults } = checkRight({
      settings: [
        ['name', 'value'],
        ['Currency', 'gbp'],
        ['date', { kind: 'date', iso: '2026-05-01' }],
        ['LOCALE', 'en_GB'],
        ['Sure%', '90 %'],
        ['restock', 'Shelf'],
        ['Brush wet-film', '0,3 / 50 / 80'],
        ['painter', 1.1],
        ['usable share of a can', '70%'],
        ['shelf level', '20%'],
        ['glaze thin', 0],
      ],
      extras: [
        ['item', 'price', 'serves'],
        ['grass', '£6.50', 200],
      ],
    });
    expect(settings).toEqual({
      currency: 'GBP',
      date: '2026-05-01',
      locale: 'en-GB',
      surePercent: 90,
      restock: 'shelf',
      overrides: [
        { name: 'brush wet film', low: 0.3, likely: 50, high: 80 },
        { name: 'painter', likely: 1.1 },
        { name: 'usable share of a can', likely: 0.7 },
        { name: 'shelf level', likely: 20 },
        { name: 'glaze thin', likely: 0 },
      ],
    });
    expect(extras).toEqual([{ item: 'grass', priceMinor: 650, serves: 200 }]);
    // A promise leaves nothing to `buy`; what another order is worth beside it still counts.
    expect(defaults.flatMap(({ sheet, column }) => (sheet === 'settings' ? [column] : []))).toEqual([
      'again',
    ]);
    expect(defaults).toContainEqual({
      sheet: 'paints',
      column: 'keep ml',
      rows: 2,
      meaning: 'a share of its largest pot, the assumption shelf level',
    });
  });

  it('read how to buy, and what another order is worth once the currency is known', () => {
    const { sheets } = check({
      settings: [
        ['name', 'value'],
        ['again', '4.50 GBP'],
        ['Buy', 'Likely'],
        ['currency', 'GBP'],
      ],
    });
    expect(sheets?.settings).toMatchObject({ buy: 'likely', againMinor: 450, currency: 'GBP' });
    expect(sheets?.settings.surePercent).toBeUndefined();
  });

  it.each([
    ['brush wet film', '0', 'zero'],
    ['brush wet film', '-5', 'negative'],
    ['brush transfer', '1.2', 'too-much'],
    ['brush transfer', '120%', 'too-much'],
    ['wash area', '101', 'too-much'],
    ['brush wet film', '1,234', 'ambiguous-number'],
    ['brush wet film', '1/2/3/4', 'not-a-range'],
    ['brush wet film', '', 'blank-cell'],
    ['sure %', '40', 'too-little'],
    ['buy', 'twice', 'not-a-choice'],
    ['again', '-1', 'negative'],
    ['again', '$4', 'other-currency'],
    ['restock', 'both', 'not-a-choice'],
    ['date', '3/4/2026', 'day-or-month-first'],
  ])('question %s = %j: %s', (name, value, code) => {
    const { problems } = check({
      settings: [
        ['name', 'value'],
        [name, value],
      ],
    });
    expect(problems.map((one) => one.code)).toEqual([code]);
  });
});

describe('the day of the plan', () => {
  const dated: SheetRows = {
    pots: [
      ['paint', 'size ml', 'opened', 'counted'],
      ['brick red', '17', '2026-03-01', '2026-03-02'],
      ['earth wash', '24', '', ''],
    ],
    log: [
      ['date', 'paint', 'used ml'],
      ['2026-03-03', 'brick red', '0.4'],
    ],
    settings: [
      ['name', 'value'],
      ['date', '2026-01-31'],
    ],
  };

  it.each([
    [undefined, ['2026-01-31', '2026-01-31', '2026-01-31']],
    ['2026-03-03', []],
    ['2026-03-02', ['2026-03-02']],
    ['2026-02-28', ['2026-02-28', '2026-02-28', '2026-02-28']],
  ])('chosen as %s is what pots and log are held against, whatever the settings say', (chosen, held) => {
    const { problems, sheets } = check(dated, chosen);
    expect(problems.map(({ code }) => code)).toEqual(held.map(() => 'date-ahead'));
    expect(problems.map(({ expected }) => expected)).toEqual(held);
    expect(sheets?.settings.date).toBe(chosen ?? '2026-01-31');
  });
});

describe('every column', () => {
  const broken: Cell = { kind: 'broken', why: 'error value', shown: '#REF!' };
  // What the columns sheet says is known before any table is made.
  const { columns: _, ...checked } = columns;
  const everyColumn = Object.entries(checked).flatMap(([sheet, list]) =>
    list.map(({ header }) => [sheet, header] as const),
  );

  it.each(everyColumn)('%s, "%s" is read', (sheet, header) => {
    const table: Table = {
      sheet: sheet as Table['sheet'],
      file: 'x.csv',
      headerRow: 1,
      headers: [header],
      rows: [{ row: 2, cells: [broken] }],
    };
    const others = makeTables(shortRows).filter((one) => one.sheet !== sheet);
    const { problems } = checkTables(
      { tables: [...others, table], problems: [] },
      { assumptions: registry, today: '2026-11-02' },
    );
    expect(
      problems.filter(
        ({ code, column, cell }) => code === 'error-value' && column === header && cell === 'A2',
      ),
    ).toHaveLength(1);
  });
});

describe('one mistake', () => {
  it('makes one problem: a missing or unreadable sheet is not searched for names', () => {
    const tables = makeTables(shortRows).filter(({ sheet }) => sheet !== 'figures');
    const { sheets, problems } = checkTables(
      { tables, problems: [] },
      { assumptions: registry, today: '2026-11-02' },
    );
    expect(problems).toEqual([]);
    expect(sheets).toBeUndefined();
  });

  it('makes one problem: an unreadable optional sheet is not searched either', () => {
    const tables = makeTables({
      ...shortRows,
      schemes: [shortRows.schemes[0], ['red line', 1, 'coat', 'wash', 'bone']],
    });
    const unreadable = ['paints', 'zones'].map(
      (sheet) =>
        ({
          code: 'unclosed-quote',
          severity: 'error',
          file: `${sheet}.csv`,
          sheet,
          found: '',
          expected: '',
          hint: '',
        }) as const,
    );
    const read = { tables, problems: unreadable as unknown as Parameters<typeof checkTables>[0]['problems'] };
    const { problems } = checkTables(read, { assumptions: registry, today: '2026-11-02' });
    expect(problems.map(({ code }) => code)).toEqual(['unclosed-quote', 'unclosed-quote']);
  });

  it.each<[string, SheetRows, string]>([
    [
      'a bad size',
      {
        pots: [
          ['paint', 'size ml'],
          ['brick red', 'big'],
          ['earth wash', 24],
        ],
      },
      'not-a-volume',
    ],
    [
      'a bad eye height',
      {
        figures: [
          ['figure', 'eye mm'],
          ['spearman', 'tall'],
        ],
      },
      'not-a-length',
    ],
    [
      'a bad step',
      {
        schemes: [shortRows.schemes[0], ['red line', 'one', 'whole', 'base coat', 'brick red']],
        army: [
          ['unit', 'figure', 'count', 'done'],
          ['first spears', 'spearman', 20, 1],
        ],
      },
      'not-a-count',
    ],
    [
      'a missing column',
      {
        figures: [
          ['figura x', 'eye mm'],
          ['spearman', 28],
        ],
      },
      'missing-column',
    ],
    [
      'a bad count of a unit in the log',
      {
        army: [
          ['unit', 'figure', 'count'],
          ['first spears', 'spearman', 'many'],
        ],
        log: [
          ['date', 'paint', 'unit', 'used ml'],
          ['2026-03-01', 'brick red', 'first spears', 1],
        ],
      },
      'not-a-count',
    ],
    [
      'bad parts of a zone',
      {
        zones: [
          ['zone', 'parts'],
          ['coat', 'sleeve'],
        ],
        schemes: [shortRows.schemes[0], ['red line', 1, 'coat', 'base coat', 'brick red']],
      },
      'unknown-part',
    ],
    [
      'a bad price of a set',
      {
        offers: [
          ['shop', 'offer', 'price', 'paint', 'size ml'],
          ['Quay', 'red', 'dear', 'brick red', 17],
          ['Quay', 'red', '', 'earth wash', 24],
        ],
      },
      'not-a-price',
    ],
    [
      'a bad share in a mix',
      {
        schemes: [
          [...shortRows.schemes[0], 'share'],
          ['red line', 1, 'face', 'wash', 'brick red', 'some'],
          ['red line', 1, 'face', 'wash', 'earth wash', '50%'],
        ],
      },
      'not-a-share',
    ],
  ])('makes one problem: %s', (_, sheets, code) => {
    const codes = check(sheets).problems.map((one) => one.code);
    expect(codes).toEqual([code]);
  });

  it('does not hide another in the same row', () => {
    const { problems } = check({
      army: [
        ['unit', 'figure', 'scheme', 'count', 'batch', 'done', 'priority'],
        ['', 'nobody', 'no scheme', '2.5', 'x', '-1', 'first'],
      ],
    });
    expect(problems.map(({ code, cell }) => `${cell} ${code}`).sort()).toEqual([
      'A2 blank-cell',
      'B2 unknown-figure',
      'C2 unknown-scheme',
      'D2 not-whole',
      'E2 not-a-count',
      'F2 negative',
      'G2 not-a-number',
    ]);
  });
});
