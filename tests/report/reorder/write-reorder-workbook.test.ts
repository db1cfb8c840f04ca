// reorder.xlsx: sums first, then a sheet for each shop. Formulas are worked out again by a general-purpose library.
import exceljs from 'exceljs';
import { describe, expect, it, vi } from 'vitest';
import { nameSheets } from '../../../src/report/reorder/name-sheets.js';
import type { ReorderView } from '../../../src/report/reorder/view-reorder.js';
import { writeReorderWorkbook } from '../../../src/report/reorder/write-reorder-workbook.js';
import { dangerous } from '../workbook/formula-starts.js';
import { readWorkbook, recalculate } from '../workbook/recalculate-workbook.js';
import { line, pot, reorderExample, withText } from './reorder-example.js';

async function readSheet(view: ReorderView, name: string): Promise<exceljs.Worksheet> {
  const sheet = (await readWorkbook(await writeReorderWorkbook(view))).getWorksheet(name);
  if (sheet === undefined) throw new Error(`no sheet named ${name}`);
  return sheet;
}

/** A sheet's rows without what is blank at their ends; of a formula its result. */
function gridOf(sheet: exceljs.Worksheet): unknown[][] {
  const grid: unknown[][] = [];
  sheet.eachRow((row) => {
    const cells: unknown[] = [];
    row.eachCell({ includeEmpty: true }, ({ value, result }) => cells.push(result ?? value));
    while (cells.length > 0 && cells.at(-1) === null) cells.pop();
    grid.push(cells);
  });
  return grid;
}

describe('writeReorderWorkbook', () => {
  it('has the sums, a sheet for each shop, and what is in no order', async () => {
    const { worksheets } = await readWorkbook(await writeReorderWorkbook(reorderExample));
    expect(worksheets.map(({ name }) => name)).toEqual([
      'sums',
      'The Eel Trap',
      'Quay "Paints"',
      'in no order',
    ]);
  });

  it('sums up each group, as reorder.csv has it', async () => {
    expect(gridOf(await readSheet(reorderExample, 'sums'))).toEqual([
      ['For', 'Shop', 'Goods', 'Postage', 'Total', 'Plan of', 'Note'],
      ['army', 'The Eel Trap', 19.69, 4.9, 24.59],
      ['army', 'Quay "Paints"', 0.3, 0, 0.3, null, "below this shop's least order of 5.00 EUR"],
      [
        ...['army', 'total', null, null, 24.89, '2026-03-14'],
        'not proved to be the cheapest: at most 1.40 EUR above the best possible',
      ],
      ['shelf', 'The Eel Trap', 5.6, -4.9, 0.7, null, "together with the army's order the goods travel free"],
      ['shelf', 'total', null, null, 0.7, '2026-03-14'],
      ['both', 'total', null, null, 25.59, '2026-03-14'],
    ]);
  });

  it('has one line an offer, a set with what is in it, both groups of a shop in one order', async () => {
    const sheet = await readSheet(reorderExample, 'The Eel Trap');
    expect(gridOf(sheet)).toEqual([
      ['Bought', 'Offer', 'What is in it', 'Code', 'How many', 'Price', 'Cost'],
      ['☐', 'Oat 17 ml', 'Oat, 2 droppers of 17 ml', '0230471200207', 2, 3.35, 6.7],
      [
        ...['☐', 'Earth set', 'Slate, 1 dropper of 17 ml; Rust, dark, 1 dropper of 12.5 ml', null],
        ...[1, 12.99, 12.99],
      ],
      ['☐', 'Moss twins', 'Moss, 2 droppers of 17 ml', null, 1, 5.6, 5.6],
      [null, 'goods', null, null, null, null, 25.29],
      [null, 'postage', null, null, null, null, 0],
      [null, 'total', null, null, null, null, 25.29],
      [null, "together with the army's order the goods travel free"],
    ]);
    expect(sheet.getCell('D2').type).toBe(exceljs.ValueType.String);
    expect(sheet.getCell('D2').numFmt).toBe('@');
  });

  it('lists what no shop has, and what waits', async () => {
    expect(gridOf(await readSheet(reorderExample, 'in no order'))).toEqual([
      [
        ...['For', 'Entry', 'Paint', 'Size ml', 'Container', 'Pots in all', 'Price', 'Cost'],
        ...['Missing ml', 'Needed', 'Note'],
      ],
      [
        ...['army', 'without a shop', 'Moss', 12, 'pot', 2, 3.1, 6.2, 13.15, null],
        'another like yours, at the price last paid; in no total',
      ],
      ['army', 'waits', 'Peat', null, null, null, null, null, null, 0.12],
    ]);
  });

  it('stores with each formula the result that it gives', async () => {
    const { value, formulas } = await recalculate(await writeReorderWorkbook(reorderExample));
    expect(formulas.map(({ sheet, address, formula }) => `${sheet} ${address} ${formula}`)).toEqual([
      "sums C2 SUM('The Eel Trap'!G2:G3)",
      'sums E2 C2+D2',
      'sums C3 SUM(\'Quay "Paints"\'!G2:G2)',
      'sums E3 C3+D3',
      'sums E4 SUM(E2:E3)',
      "sums C5 SUM('The Eel Trap'!G4:G4)",
      'sums E5 C5+D5',
      'sums E6 SUM(E5:E5)',
      'sums E7 E4+E6',
      'The Eel Trap G2 E2*F2',
      'The Eel Trap G3 E3*F3',
      'The Eel Trap G4 E4*F4',
      'The Eel Trap G5 SUM(G2:G4)',
      'The Eel Trap G7 G5+G6',
      'Quay "Paints" G2 E2*F2',
      'Quay "Paints" G3 SUM(G2:G2)',
      'Quay "Paints" G5 G3+G4',
    ]);
    for (const { sheet, address, stored } of formulas)
      expect(value(sheet, address)).toBeCloseTo(Number(stored), 9);
  });

  it('every sum follows where a count is changed: three of 3.35 instead of two', async () => {
    const { value, change } = await recalculate(await writeReorderWorkbook(reorderExample));
    change('The Eel Trap', 'E2', 3);
    expect(value('The Eel Trap', 'G7')).toBeCloseTo(25.29 + 3.35, 9);
    expect(value('sums', 'E7')).toBeCloseTo(25.59 + 3.35, 9);
  });

  // Digits of the minor unit by ISO 4217.
  it.each([
    ['EUR', 2, '[$EUR] #,##0.00'],
    ['JPY', 0, '[$JPY] #,##0'],
    ['IQD', 3, '[$IQD] #,##0.000'],
  ])('formats amounts of %s with %d digits', async (currency, minorDigits, format) => {
    const sheet = await readSheet({ ...reorderExample, currency, minorDigits }, 'The Eel Trap');
    for (const address of ['F2', 'G7']) expect(sheet.getCell(address).numFmt).toBe(format);
    expect(sheet.getCell('F2').value).toBe(335 / 10 ** minorDigits);
  });

  it('freezes the header, widens columns to their text and repeats the header in print', async () => {
    const name = 'A paint with a rather long name';
    const sheet = await readSheet(withText(name), name);
    expect(sheet.views[0]).toMatchObject({ state: 'frozen', ySplit: 1 });
    expect(sheet.getColumn('B').width).toBeGreaterThan(31);
    expect(sheet.pageSetup).toMatchObject({ orientation: 'landscape', fitToWidth: 1, printTitlesRow: '1:1' });
  });

  it.each(dangerous)('keeps %j as text that is not calculated', async (text) => {
    const book = await readWorkbook(await writeReorderWorkbook(withText(text)));
    const [sums, shop, leftOut] = book.worksheets;
    const written = text.replaceAll('\r\n', '\n').replaceAll('\r', '\n');
    for (const cell of [sums?.getCell('B2'), shop?.getCell('B2'), leftOut?.getCell('C2')]) {
      expect(cell?.type).toBe(exceljs.ValueType.String);
      expect(cell?.formula).toBeUndefined();
      expect(cell?.value).toBe(written);
    }
  });

  it('gives the same bytes at any time', async () => {
    const once = await writeReorderWorkbook(reorderExample);
    vi.useFakeTimers({ now: new Date('2031-07-08T09:10:11Z'), toFake: ['Date'] });
    try {
      expect(Buffer.from(await writeReorderWorkbook(reorderExample)).equals(Buffer.from(once))).toBe(true);
    } finally {
      vi.useRealTimers();
    }
  });

  it('says so when there is nothing to buy', async () => {
    const group = { for: 'army' as const, shops: [], totalMinor: 0, note: '', unmet: [], waits: [] };
    const view = { ...reorderExample, groups: [group], totalMinor: 0 };
    const { worksheets } = await readWorkbook(await writeReorderWorkbook(view));
    expect(worksheets.map(({ name, rowCount }) => [name, rowCount])).toEqual([['sums', 2]]);
    expect(worksheets[0]?.getCell('E2').value).toBe(0);
  });

  it('takes a set of a thousand pots as one line', async () => {
    const set = line({
      count: 1,
      costMinor: 335,
      pots: Array.from({ length: 1000 }, () => pot({ count: 1 })),
    });
    const shop = { shop: 'S', lines: [set], goodsMinor: 335, postageMinor: 0, totalMinor: 335, note: '' };
    const groups = [{ for: 'army' as const, shops: [shop], totalMinor: 335, note: '', unmet: [], waits: [] }];
    const sheet = await readSheet({ ...reorderExample, groups }, 'S');
    expect(sheet.getCell('G3').value).toEqual({ formula: 'SUM(G2:G2)', result: 3.35 });
    expect(sheet.getCell('D2').value).toBe('0230471200207');
  });
});

// Published limits of XLSX spreadsheets: 31 characters, none of [ ] : * ? / \, no apostrophe at an end, no two names alike but
// for capitals, none called History.
describe('names of sheets', () => {
  it.each([
    [
      ['Quay', 'quay', 'QUAY'],
      ['Quay', 'quay 2', 'QUAY 3'],
    ],
    [["'The [Eel]: Trap*?/\\'"], ['The  Eel   Trap']],
    [
      ['', '  ', '???'],
      ['shop', 'shop 2', 'shop 3'],
    ],
    [
      ['history', 'Sums'],
      ['history 2', 'Sums 2'],
    ],
    [
      ['a'.repeat(31), 'a'.repeat(40)],
      ['a'.repeat(31), `${'a'.repeat(29)} 2`],
    ],
    [[`${'a'.repeat(30)}🎨`], ['a'.repeat(30)]],
  ])('%j are %j', (shops, names) => expect(nameSheets(shops, ['sums'])).toEqual(names));
});
