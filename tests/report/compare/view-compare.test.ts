import { describe, expect, it } from 'vitest';
import { comparePlans } from '../../../src/compare/compare-plans.js';
import { viewCompare } from '../../../src/report/compare/view-compare.js';
import { writeCompareJson } from '../../../src/report/compare/write-compare-json.js';
import { makeDocument, makeJob } from '../../compare/make-document.js';

const named = (a: ReturnType<typeof makeDocument>, b: typeof a) => ({
  a: { ...a, name: 'one' },
  b: { ...b, name: 'other' },
});
const viewOf = (a: ReturnType<typeof makeDocument>, b: typeof a) =>
  viewCompare(comparePlans(a, b), named(a, b));
const cells = ({ what, a, b, difference }: ReturnType<typeof viewOf>['sums'][number]) => [
  what,
  a,
  b,
  difference,
];

describe('two plans in words', () => {
  const cheaper = makeDocument({
    costs: { use: '25.000000', useAtLeast: true, cash: '9.00' },
    jobs: [makeJob({ count: 1200 })],
    work: { paints: [] },
    time: { evenings: 1234 },
  });

  it('are rows with a sign on what differs', () => {
    const { sums, paints, sheets, notes, isSame } = viewOf(makeDocument(), cheaper);
    expect(sums.map(cells)).toEqual([
      ['Cash now', '€12.50', '€9.00', '−€3.50'],
      ['Cash in all, on average', '€15.00', '€15.00', '€0.00'],
      ['Cost a figure', '€0.50', 'at least €1.25', '+€0.75'],
      ['Paints that run out', '0', '0', '0'],
      ['Evenings', '3', '1,234', '+1,231'],
      ['Coats to paint', '20', '20', '0'],
    ]);
    expect(paints.map(cells)).toEqual([['brick red', '4.0', '0.0', '−4.0']]);
    expect(sheets.map(cells)).toEqual([['army, first spears: count', '20', '1,200', '']]);
    expect([notes, isSame]).toEqual([['Sums of “at least” are compared without what has no price.'], false]);
  });

  it('list paints that differ, and count the others', () => {
    const paints = (...ml: number[]) => ({
      work: { paints: ml.map((putOutRemainingMl, at) => ({ paint: `paint ${at}`, putOutRemainingMl })) },
    });
    const { paints: rows, alike } = viewOf(makeDocument(paints(1, 2, 3)), makeDocument(paints(1, 2, 4)));
    expect([rows.map(cells), alike]).toEqual([[['paint 2', '3.0', '4.0', '+1.0']], '2 paints are alike.']);
    expect(viewOf(makeDocument(paints(1)), makeDocument(paints(1))).alike).toBe('1 paint is alike.');
    expect(viewOf(makeDocument(paints(1)), makeDocument(paints(2))).alike).toBe('');
  });

  it('say what is missing, what is blank, and a setting by its name alone', () => {
    const later = makeDocument({ date: '2026-12-01', jobs: [makeJob({ scheme: '' })], figures: [] });
    expect(viewOf(makeDocument(), later).sheets.map(cells)).toEqual([
      ['settings, date', '2026-11-01', '2026-12-01', ''],
      ['army, first spears: scheme', 'red line', 'none', ''],
      ['figures, spearman', 'spearman', 'not there', ''],
    ]);
  });

  it('name what is compared, and what is not', () => {
    const [without, market] = [makeDocument(), { offers: [], shops: new Map() }];
    expect(viewOf(without, without).sheetNotes).toEqual([
      'Nothing in settings, log, army, schemes, figures, pots.',
      'Offers and shops are not compared: plan.json does not list them. Name the sheets for that.',
    ]);
    const known = makeDocument({ market });
    expect(viewOf(known, known).sheetNotes).toEqual([
      'Nothing in settings, log, army, schemes, figures, pots, offers, shops.',
    ]);
  });

  it('word prices as money', () => {
    const shopOf = (postageMinor: number, more = {}) => ({
      market: { offers: [], shops: new Map([['Weir', { shop: 'Weir', postageMinor, ...more }]]) },
    });
    const [a, b] = [makeDocument(shopOf(390)), makeDocument(shopOf(420, { freeFromMinor: 2500 }))];
    expect(viewOf(a, b).sheets.map(cells)).toEqual([
      ['shops, Weir: postage', '€3.90', '€4.20', ''],
      ['shops, Weir: free from', 'none', '€25.00', ''],
    ]);
    const pair = named(a, b);
    expect(JSON.parse(writeCompareJson(comparePlans(a, b), pair))).toMatchObject({
      hasMarkets: true,
      sheets: [
        { sheet: 'shops', name: 'Weir', column: 'postage', a: '3.90', b: '4.20' },
        { sheet: 'shops', name: 'Weir', column: 'free from', a: '', b: '25.00' },
      ],
    });
  });

  it('tell of two currencies and make no difference', () => {
    const francs = makeDocument({ currency: 'CHF' });
    const { sums, notes } = viewOf(makeDocument(), francs);
    expect(notes).toEqual(['A is in EUR, B in CHF: no difference in money is made.']);
    expect(sums.slice(0, 3).map(cells)).toEqual([
      ['Cash now', '€12.50', 'CHF\u00a012.50', ''],
      ['Cash in all, on average', '€15.00', 'CHF\u00a015.00', ''],
      ['Cost a figure', '€0.50', 'CHF\u00a00.50', ''],
    ]);
  });

  it('are the same numbers in compare.json, money as decimal strings', () => {
    const pair = named(makeDocument(), cheaper);
    const text = writeCompareJson(comparePlans(pair.a, pair.b), pair);
    expect(text.endsWith('}\n')).toBe(true);
    const { version, a, isSame, sums, paints, sheets } = JSON.parse(text);
    expect([version, a, isSame]).toEqual([1, { name: 'one', currency: 'EUR' }, false]);
    expect(sums[0]).toEqual({
      what: 'cash now',
      a: { value: '12.50', atLeast: false },
      b: { value: '9.00', atLeast: false },
      difference: '-3.50',
    });
    expect(sums[4]).toMatchObject({ what: 'evenings', a: { value: 3 }, difference: 1231 });
    expect(paints).toEqual([{ paint: 'brick red', aMl: 4, bMl: 0, differenceMl: -4 }]);
    expect(sheets).toEqual([{ sheet: 'army', name: 'first spears', column: 'count', a: 20, b: 1200 }]);
  });
});
