import { describe, expect, it } from 'vitest';
import { type ReorderView, viewReorder } from '../../../src/report/reorder/view-reorder.js';
import { writeReorderCsv } from '../../../src/report/reorder/write-reorder-csv.js';
import { guardText } from '../../../src/report/workbook/guard-text.js';
import { splitRecords } from '../../../src/sheets/read/split-records.js';
import { examplePlan } from '../plan-json/plan-example.js';
import { dangerous } from '../workbook/formula-starts.js';
import { line, pot, reorderExample, withText } from './reorder-example.js';

/** Reads a CSV back with our own splitting, which shares no code with the library that writes it; line ends are made alike first. */
function readBack(view: ReorderView): Record<string, string>[] {
  const lines = writeReorderCsv(view).slice(1).replaceAll('\r\n', '\n');
  const { records, troubles } = splitRecords(lines, view.csv.delimiter);
  expect(troubles).toEqual([]);
  const [headers = [], ...rows] = records;
  expect(rows.pop()).toEqual(['']);
  return rows.map((cells) => {
    expect(cells).toHaveLength(headers.length);
    return Object.fromEntries(headers.map((header, at) => [header, cells[at] ?? '']));
  });
}

describe('writeReorderCsv', () => {
  it('gives exactly these bytes', () => {
    const head =
      'for,entry,shop,offer,paint,size ml,container,pots in all,how many,price,cost,currency,code,covers ml,left over ml,missing ml,needed,plan of,note';
    expect(writeReorderCsv(reorderExample).split('\r\n')).toEqual([
      `\ufeff${head}`,
      'army,pot,The Eel Trap,Oat 17 ml,Oat,17,dropper,2,2,3.35,6.70,EUR,"0230471200207",20.1,12.54,,0.93,,',
      'army,pot,The Eel Trap,Earth set,Slate,17,dropper,1,1,12.99,12.99,EUR,,0.01,16.32,,,,',
      'army,pot,The Eel Trap,Earth set,"Rust, dark",12.5,dropper,1,,,,,,0,12,,,,',
      'army,goods,The Eel Trap,,,,,,,,19.69,EUR,,,,,,,',
      'army,postage,The Eel Trap,,,,,,,,4.90,EUR,,,,,,,',
      'army,shop total,The Eel Trap,,,,,,,,24.59,EUR,,,,,,,',
      'army,pot,"Quay ""Paints""",Bone 24 ml,Bone,17,dropper,2,3,0.10,0.30,EUR,"0230471200207",20.1,12.54,,,,',
      'army,goods,"Quay ""Paints""",,,,,,,,0.30,EUR,,,,,,,',
      'army,postage,"Quay ""Paints""",,,,,,,,0.00,EUR,,,,,,,',
      'army,shop total,"Quay ""Paints""",,,,,,,,0.30,EUR,,,,,,,below this shop\'s least order of 5.00 EUR',
      'army,total,,,,,,,,,24.89,EUR,,,,,,2026-03-14,not proved to be the cheapest: at most 1.40 EUR above the best possible',
      'army,without a shop,,,Moss,12,pot,2,2,3.10,6.20,EUR,,,,13.15,,,"another like yours, at the price last paid; in no total"',
      'army,waits,,,Peat,,,,,,,,,,,,0.12,,',
      'shelf,pot,The Eel Trap,Moss twins,Moss,17,dropper,2,1,5.60,5.60,EUR,,1.5,31.14,,,,',
      'shelf,goods,The Eel Trap,,,,,,,,5.60,EUR,,,,,,,',
      'shelf,postage,The Eel Trap,,,,,,,,-4.90,EUR,,,,,,,',
      "shelf,shop total,The Eel Trap,,,,,,,,0.70,EUR,,,,,,,together with the army's order the goods travel free",
      'shelf,total,,,,,,,,,0.70,EUR,,,,,,2026-03-14,',
      'both,total,,,,,,,,,25.59,EUR,,,,,,2026-03-14,',
      '',
    ]);
  });

  it('has a decimal comma and semicolons where the locale has a decimal comma', () => {
    const settings = { ...examplePlan.settings, locale: 'de' };
    const view = viewReorder({ ...examplePlan, settings });
    expect(view.csv).toEqual({ decimal: ',', delimiter: ';' });
    expect(
      writeReorderCsv({ ...reorderExample, csv: view.csv })
        .split('\r\n')
        .slice(0, 8),
    ).toEqual([
      '\ufefffor;entry;shop;offer;paint;size ml;container;pots in all;how many;price;cost;currency;code;covers ml;left over ml;missing ml;needed;plan of;note',
      'army;pot;The Eel Trap;Oat 17 ml;Oat;17;dropper;2;2;3,35;6,70;EUR;"0230471200207";20,1;12,54;;0,93;;',
      'army;pot;The Eel Trap;Earth set;Slate;17;dropper;1;1;12,99;12,99;EUR;;0,01;16,32;;;;',
      'army;pot;The Eel Trap;Earth set;"Rust, dark";12,5;dropper;1;;;;;;0;12;;;;',
      'army;goods;The Eel Trap;;;;;;;;19,69;EUR;;;;;;;',
      'army;postage;The Eel Trap;;;;;;;;4,90;EUR;;;;;;;',
      'army;shop total;The Eel Trap;;;;;;;;24,59;EUR;;;;;;;',
      'army;pot;"Quay ""Paints""";Bone 24 ml;Bone;17;dropper;2;3;0,10;0,30;EUR;"0230471200207";20,1;12,54;;;;',
    ]);
    for (const row of readBack({ ...reorderExample, csv: view.csv }))
      for (const column of ['size ml', 'price', 'cost', 'covers ml', 'left over ml', 'missing ml'])
        expect(row[column]).toMatch(/^(-?\d+(,\d+)?)?$/);
  });

  it.each([
    ['en-GB', '.', ','],
    ['fr', ',', ';'],
    // A point, by the Unicode Common Locale Data Repository; digits of its own are for the page alone.
    ['de-CH', '.', ','],
    ['ar-EG', '.', ','],
  ])('in %s: %s and %s', (locale, decimal, delimiter) => {
    const view = viewReorder({ ...examplePlan, settings: { ...examplePlan.settings, locale } });
    expect(view.csv).toEqual({ decimal, delimiter });
  });

  // RFC 4180, section 2: records end in CRLF (1, 2), have the same number of fields (4), fields with line breaks, quotes
  // or commas stand in quotes (6), quotes are doubled (7).
  it.each([
    'a,b',
    'say "oat"',
    'two\r\nlines',
    'two\nlines',
    '"',
    '",',
    ' blanks outside ',
    'a;b',
    'Ünïcode 色 🎨',
  ])('reads back as written: %j', (text) => {
    const [first] = readBack(withText(text));
    const read = text.replaceAll('\r\n', '\n');
    expect(first).toMatchObject({ shop: read, offer: read, paint: read });
  });

  it.each(dangerous)('writes %j so that nothing can run', (text) => {
    for (const row of readBack(withText(text)))
      for (const cell of Object.values(row)) expect(guardText(cell)).toBe(cell);
  });

  it('adds up to the cent: offers to goods, goods and postage to shops, shops to totals', () => {
    const many = Array.from({ length: 40 }, (_, at) =>
      line({
        offer: `offer ${at}`,
        count: at + 1,
        priceMinor: 3 * at + 1,
        costMinor: (at + 1) * (3 * at + 1),
        pots: [pot(), pot()],
      }),
    );
    const goodsMinor = many.reduce((sum, one) => sum + one.costMinor, 0);
    const shop = {
      shop: 'The Eel Trap',
      lines: many,
      goodsMinor,
      postageMinor: 99,
      totalMinor: goodsMinor + 99,
      note: '',
    };
    const group = {
      for: 'army' as const,
      shops: [shop],
      totalMinor: shop.totalMinor,
      note: '',
      unmet: [],
      waits: [],
    };
    const rows = readBack({ ...reorderExample, groups: [group], totalMinor: group.totalMinor });
    const cents = (entry: string) =>
      rows
        .filter((row) => row.entry === entry)
        .reduce((sum, row) => sum + Math.round(Number(row.cost) * 100), 0);
    expect(cents('pot')).toBe(cents('goods'));
    expect(cents('goods') + cents('postage')).toBe(cents('shop total'));
    expect(cents('shop total')).toBe(cents('total'));
    expect(rows.filter((row) => row.entry === 'pot' && row.price !== '')).toHaveLength(40);
  });

  it.each([
    ['a list by hand', reorderExample],
    ['a plan by the real stages', viewReorder(examplePlan)],
  ])('adds up with sets and postage that comes back: %s', (_, view) => {
    const rows = readBack(view);
    const cents = (entry: string, whom = '') =>
      rows
        .filter((row) => row.entry === entry && (whom === '' ? row.for !== 'both' : row.for === whom))
        .reduce((sum, row) => sum + Math.round(Number(row.cost) * 100), 0);
    expect(rows.some((row) => row.entry === 'postage' && Number(row.cost) < 0)).toBe(true);
    for (const whom of ['army', 'shelf']) {
      expect(cents('pot', whom) + cents('postage', whom)).toBe(cents('total', whom));
      expect(cents('pot', whom)).toBe(cents('goods', whom));
      expect(cents('shop total', whom)).toBe(cents('total', whom));
    }
    expect(cents('total')).toBe(cents('total', 'both'));
    for (const row of rows.filter(({ entry }) => entry === 'pot'))
      expect(row).toMatchObject({
        'covers ml': expect.stringMatching(/./),
        'left over ml': expect.stringMatching(/./),
      });
  });

  it('says so when there is nothing to buy', () => {
    const group = { for: 'army' as const, shops: [], totalMinor: 0, note: '', unmet: [], waits: [] };
    const rows = readBack({ ...reorderExample, groups: [group], totalMinor: 0 });
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({ for: 'army', entry: 'total', cost: '0.00' });
  });
});
