import { describe, expect, it } from 'vitest';
import { comparePlans } from '../../src/compare/compare-plans.js';
import { makeDocument, makeJob, makeLine } from './make-document.js';

const known = (value: number, atLeast = false) => ({ value, atLeast });

describe('two plans', () => {
  // By hand. A: one base coat on 20 figures is 20 coats, 10.00 / 20 = 0.50 a figure.
  // B: 40 figures in two units alike; each unit 20 x 1 coat and 20 x 2 coats of a mix of 7 to 3, which is one coat together:
  // 20 + 40 = 60, twice 120. 25.00 / 40 = 0.625, half up 0.63. Short are earth wash and oat, of which there is none; slate is no
  // longer needed.
  const b = makeDocument({
    army: { figures: 40 },
    costs: { use: '25.000000', useAtLeast: true, cash: '9.00' },
    units: [
      { unit: 'first spears', job: 0 },
      { unit: 'second spears', job: 0 },
    ],
    jobs: [
      makeJob({
        units: 2,
        lines: [
          makeLine(),
          makeLine({ step: 2, layer: 'wash', paint: 'earth wash', coats: 2, mixShare: 0.7 }),
          makeLine({ step: 2, layer: 'wash', paint: 'oat', coats: 2, mixShare: 0.3 }),
        ],
      }),
    ],
    work: {
      paints: [
        { paint: 'oat', putOutRemainingMl: 1.5 },
        { paint: 'brick red', putOutRemainingMl: 8.06 },
        { paint: 'earth wash', putOutRemainingMl: 12.34 },
        { paint: 'slate', putOutRemainingMl: 0 },
      ],
    },
    paints: [
      { paint: 'brick red', haveMl: 15.98, state: 'enough', needMl: { likely: 8.06 }, pots: [{}] },
      { paint: 'earth wash', haveMl: 5, state: 'short', needMl: { likely: 12.34 }, pots: [{}] },
      { paint: 'oat', haveMl: 0, state: 'none owned', needMl: { likely: 1.5 }, pots: [] },
      { paint: 'slate', haveMl: 0, state: 'none owned', needMl: { likely: 0 }, pots: [] },
    ],
    choices: [{ policy: 'goes', sure: null, meanInAll: '18.25', atLeast: true }],
    time: { evenings: 7 },
  });
  const found = comparePlans(makeDocument(), b);

  it('stand side by side and as a difference, money in whole cents', () => {
    expect(found.sums).toEqual([
      { what: 'cash now', isMoney: true, a: known(1250), b: known(900), difference: -350 },
      { what: 'cash in all', isMoney: true, a: known(1500), b: known(1825, true), difference: 325 },
      { what: 'cost a figure', isMoney: true, a: known(50), b: known(63, true), difference: 13 },
      { what: 'pots short', isMoney: false, a: known(0), b: known(2), difference: 2 },
      { what: 'evenings', isMoney: false, a: known(3), b: known(7), difference: 4 },
      { what: 'coats', isMoney: false, a: known(20), b: known(120), difference: 100 },
    ]);
  });

  it('name each paint that either needs, the most different first', () => {
    expect(found.paints).toEqual([
      { paint: 'earth wash', aMl: 0, bMl: 12.3, differenceMl: 12.3 },
      { paint: 'brick red', aMl: 4, bMl: 8.1, differenceMl: 4.1 },
      { paint: 'oat', aMl: 0, bMl: 1.5, differenceMl: 1.5 },
    ]);
  });

  it('name what their sheets have otherwise', () => {
    expect(found.sheets).toEqual([
      {
        sheet: 'army',
        name: 'second spears',
        column: undefined,
        a: undefined,
        b: 'second spears',
        isMoney: false,
      },
      {
        sheet: 'schemes',
        name: 'red line, step 2',
        column: undefined,
        a: undefined,
        b: 'red line, step 2',
        isMoney: false,
      },
      { sheet: 'pots', name: 'earth wash', column: undefined, a: undefined, b: 'earth wash', isMoney: false },
    ]);
    expect([found.isOneCurrency, found.isSame]).toEqual([true, false]);
  });

  it('of two currencies have no difference in money, and each its own cents', () => {
    // The yen has no minor unit (ISO 4217): 1250 yen are 1250.
    const yen = makeDocument({
      currency: 'JPY',
      costs: { use: '1000.000000', useAtLeast: false, cash: '1250' },
    });
    const { sums, isOneCurrency, isSame } = comparePlans(makeDocument(), yen);
    expect([isOneCurrency, isSame]).toEqual([false, false]);
    expect(sums[0]).toMatchObject({ a: known(1250), b: known(1250), difference: undefined });
    expect(sums[2]).toMatchObject({ a: known(50), b: known(50), difference: undefined });
    expect(sums[4]).toMatchObject({ difference: 0 });
  });

  it('have no difference where one has no price at all', () => {
    const unpriced = makeDocument({ costs: { use: '0.000000', useAtLeast: true, cash: '0.00' } });
    const { sums } = comparePlans(unpriced, makeDocument());
    expect(sums[0]).toMatchObject({ a: known(0), difference: 1250 });
    expect(sums[2]).toMatchObject({ a: known(0, true), b: known(50), difference: undefined });
  });

  it('that are one differ in nothing', () => {
    const { isSame, sheets, sums, paints } = comparePlans(makeDocument(), makeDocument());
    expect([isSame, sheets]).toEqual([true, []]);
    expect(sums.map(({ difference }) => difference)).toEqual([0, 0, 0, 0, 0, 0]);
    expect(paints.map(({ differenceMl }) => differenceMl)).toEqual([0]);
  });

  it('without figures have no cost a figure, and without ways to buy no cash in all', () => {
    const none = makeDocument({ army: { figures: 0 }, choices: [] });
    const { sums } = comparePlans(none, makeDocument());
    for (const at of [1, 2])
      expect(sums[at]).toMatchObject({ a: { value: undefined }, difference: undefined });
  });
});

describe('what differs in the sheets', () => {
  it('is named by row and column, with both values', () => {
    const b = makeDocument({
      date: '2026-12-01',
      order: { policy: 'sure', sure: 0.8 },
      units: [
        { unit: 'first spears', job: 0 },
        { unit: 'first spears', job: 0 },
      ],
      jobs: [makeJob({ count: 24, lines: [makeLine({ paint: 'slate', coats: 2, areaShare: 0.25 })] })],
      figures: [{ figure: 'spearman', withBaseCm2: 40 }],
      paints: [{ paint: 'brick red', haveMl: 20, state: 'enough', needMl: { likely: 4.04 }, pots: [{}, {}] }],
      assumptions: [{ name: 'brush transfer', mark: 'yours', low: 0.3, likely: 0.6, high: 0.7 }],
    });
    const rows = comparePlans(makeDocument(), b).sheets.map(({ sheet, name, column, a, b: ofB }) => [
      ...[sheet, name, column, a, ofB],
    ]);
    expect(rows).toEqual([
      ['settings', 'date', 'value', '2026-11-01', '2026-12-01'],
      ['settings', 'buy', 'value', 'goes', 'sure'],
      ['settings', 'sure', 'value', 0, 80],
      ['settings', 'brush transfer', 'likely', 0.5, 0.6],
      ['army', 'first spears', 'count', 20, 24],
      ['army', 'first spears (2)', undefined, undefined, 'first spears (2)'],
      ['schemes', 'red line, step 1', 'paint', 'brick red', 'slate'],
      ['schemes', 'red line, step 1', 'coats', 1, 2],
      ['schemes', 'red line, step 1', 'area %', 100, 25],
      ['figures', 'spearman', 'area cm2', 33.5, 40],
      ['pots', 'brick red', 'pots', 1, 2],
      ['pots', 'brick red', 'left', 15.98, 20],
    ]);
  });

  it('is a row for all that a log teaches, not one for each value that it moves', () => {
    const b = makeDocument({
      learned: { weighings: [{}, {}] },
      assumptions: [{ name: 'brush transfer', mark: 'weighed', low: 0.3, likely: 0.41, high: 0.6 }],
    });
    const { sheets } = comparePlans(makeDocument(), b);
    expect(sheets).toEqual([
      { sheet: 'log', name: 'rows that teach', column: 'value', a: 0, b: 2, isMoney: false },
    ]);
  });

  // Relief 1.1 to 1.122 and the spearman's sculpt 1 to 1.03: 33.5 cm2 become at most 33.5 x 1.02 x 1.03 = 35.1951.
  it.each([
    [35.195, 33.5, []],
    [35.196, 33.5, ['spearman']],
    [33.5, 35.195, []],
    [33.5, 35.196, ['spearman']],
  ])('names areas where more than the log moved them, %d cm2 from %d: %j', (ofB, ofA, names) => {
    const factor = (name: string, likely: number) => ({
      ...{ name, mark: 'from memory', low: 0.5, likely, high: 2 },
    });
    const [sculpt, film] = [factor('sculpt', 1), factor('brush wet film', 50)];
    const of = (withBaseCm2: number, ...assumptions: object[]) =>
      makeDocument({ figures: [{ figure: 'spearman', withBaseCm2 }], assumptions });
    const a = of(ofA, factor('relief', 1.1), sculpt, film);
    const learned = [factor('sculpt (spearman)', 1.03), factor('sculpt (archer)', 2)];
    const b = of(ofB, factor('relief', 1.122), sculpt, factor('brush wet film', 60), ...learned);
    expect(comparePlans(a, b).sheets.map(({ name }) => name)).toEqual(names);
  });

  it('leaves steps alone that only one army is painted in: its units say so', () => {
    const b = makeDocument({ jobs: [makeJob({ scheme: 'blue line' })] });
    expect(comparePlans(makeDocument(), b).sheets).toEqual([
      {
        sheet: 'army',
        name: 'first spears',
        column: 'scheme',
        a: 'red line',
        b: 'blue line',
        isMoney: false,
      },
    ]);
  });
});

describe('what differs in offers and shops', () => {
  const dropper = { paint: 'brick red', sizeMl: 17, count: 1, container: 'dropper' } as const;
  const pair = { row: 3, shop: 'Weir', offer: 'pair', priceMinor: 900 };
  const market = {
    offers: [
      { row: 2, shop: 'Weir', offer: 'brick red', priceMinor: 295, pots: [dropper] },
      { ...pair, pots: [dropper, { ...dropper, paint: 'slate', container: 'pot' as const }] },
      { row: 5, shop: 'Lock', offer: 'slate', priceMinor: 310, pots: [{ ...dropper, paint: 'slate' }] },
    ],
    shops: new Map([
      ['Weir', { shop: 'Weir', postageMinor: 390, freeFromMinor: 2500 }],
      ['Lock', { shop: 'Lock', postageMinor: 0 }],
    ]),
  };
  const [first, second] = market.offers;
  if (first === undefined || second === undefined) throw new Error('no offers');
  const dearer = {
    offers: [
      { ...first, priceMinor: 325, available: 2 },
      { ...second, pots: [{ ...dropper, count: 2 }] },
    ],
    shops: new Map([['Weir', { shop: 'Weir', postageMinor: 420 }]]),
  };
  const rowsOf = (a: object, b: object) =>
    comparePlans(makeDocument(a), makeDocument(b)).sheets.map(
      ({ sheet, name, column, a: ofA, b: ofB, isMoney }) => [...[sheet, name, column, ofA, ofB, isMoney]],
    );

  it('is named by shop and offer, in minor units where it is money', () => {
    expect(rowsOf({ market }, { market: dearer })).toEqual([
      ['offers', 'Weir, brick red', 'price', 295, 325, true],
      ['offers', 'Weir, brick red', 'available', '', 2, false],
      [
        ...['offers', 'Weir, pair', 'pots'],
        ...['1 x 17 ml brick red (dropper), 1 x 17 ml slate (pot)', '2 x 17 ml brick red (dropper)', false],
      ],
      ['offers', 'Lock, slate', undefined, 'Lock, slate', undefined, false],
      ['shops', 'Weir', 'postage', 390, 420, true],
      ['shops', 'Weir', 'free from', 2500, '', true],
      ['shops', 'Lock', undefined, 'Lock', undefined, false],
    ]);
  });

  it('is no price where there are two currencies', () => {
    const francs = rowsOf({ market }, { market: dearer, currency: 'CHF' });
    expect(francs.map(([sheet, name, column]) => [sheet, name, column])).toEqual([
      ['settings', 'currency', 'value'],
      ['offers', 'Weir, brick red', 'available'],
      ['offers', 'Weir, pair', 'pots'],
      ['offers', 'Lock, slate', undefined],
      ['shops', 'Lock', undefined],
    ]);
  });

  it('is not known where one has plan.json alone', () => {
    const [a, b] = [makeDocument({ market }), makeDocument()];
    expect(comparePlans(a, b)).toMatchObject({ hasMarkets: false, sheets: [], isSame: true });
    expect(comparePlans(a, a)).toMatchObject({ hasMarkets: true, sheets: [], isSame: true });
  });
});
