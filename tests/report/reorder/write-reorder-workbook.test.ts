import exceljs from 'exceljs';
import { describe, expect, it, vi } from 'vitest';
import type { ReorderView } from '../../../src/report/reorder/view-reorder.js';
import { writeReorderWorkbook } from '../../../src/report/reorder/write-reorder-workbook.js';
import { dangerous } from '../workbook/formula-starts.js';
import { line, pot, reorderExample, withText } from './reorder-example.js';

async function readBack(view: ReorderView): Promise<exceljs.Worksheet> {
  const workbook = new exceljs.Workbook();
  const bytes = await writeReorderWorkbook(view);
  await workbook.xlsx.load(bytes.buffer as ArrayBuffer);
  const sheet = workbook.getWorksheet('reorder');
  if (sheet === undefined) throw new Error('no sheet named reorder');
  return sheet;
}

/** Works out `A*B`, `SUM(A:B)` and sums over the sheet's own cells, to hold against the stored results. */
function calculate(sheet: exceljs.Worksheet, address: string): number {
  const { value } = sheet.getCell(address);
  if (typeof value === 'number') return value;
  if (value === null || typeof value !== 'object' || !('formula' in value)) return 0;
  const formula = value.formula;
  const sum = /^SUM\(K(\d+):K(\d+)\)$/.exec(formula);
  if (sum !== null) {
    const [first, last] = [Number(sum[1]), Number(sum[2])];
    return Array.from({ length: last - first + 1 }, (_, at) => calculate(sheet, `K${first + at}`)).reduce(
      (a, b) => a + b,
      0,
    );
  }
  const terms = formula.split('+').map((term) =>
    term
      .split('*')
      .map((cell) => calculate(sheet, cell))
      .reduce((a, b) => a * b, 1),
  );
  return terms.reduce((a, b) => a + b, 0);
}

describe('writeReorderWorkbook', () => {
  it('lists by shop, with numbers as numbers and codes as text', async () => {
    const sheet = await readBack(reorderExample);
    expect(sheet.getRow(1).values).toEqual([
      undefined,
      'For',
      'Entry',
      'Shop',
      'Offer',
      'Paint',
      'Size ml',
      'Container',
      'Pots',
      'Offers',
      'Price',
      'Cost',
      'Code',
      'Covers ml',
      'Left over ml',
      'Missing ml',
      'Needed',
      'Plan of',
      'Note',
    ]);
    expect(sheet.getRow(2).values).toEqual([
      undefined,
      'army',
      'pot',
      'The Eel Trap',
      'Oat 17 ml',
      'Oat',
      17,
      'dropper',
      2,
      2,
      3.35,
      { formula: 'I2*J2', result: 6.7 },
      '0230471200207',
      20.1,
      12.54,
      undefined,
      0.93,
    ]);
    expect(sheet.getCell('L2').type).toBe(exceljs.ValueType.String);
    expect(sheet.getCell('L2').numFmt).toBe('@');
    expect(sheet.getCell('J4').value).toBeNull();
    expect(sheet.getCell('E13').value).toBe('Moss');
    expect(['B13', 'F13', 'H13', 'O13'].map((address) => sheet.getCell(address).value)).toEqual([
      'without a shop',
      12,
      2,
      13.15,
    ]);
    expect(['B14', 'E14', 'P14'].map((address) => sheet.getCell(address).value)).toEqual([
      'waits',
      'Peat',
      0.12,
    ]);
    expect(['B12', 'Q12'].map((address) => sheet.getCell(address).value)).toEqual(['total', '2026-03-14']);
  });

  it('stores with each formula the result that it gives, and the totals of the list', async () => {
    const sheet = await readBack(reorderExample);
    const formulas: string[] = [];
    sheet.getColumn('K').eachCell((cell) => {
      if (cell.formula === undefined || typeof cell.result !== 'number') return;
      formulas.push(cell.formula);
      expect(calculate(sheet, cell.address)).toBeCloseTo(cell.result, 9);
    });
    expect(formulas).toEqual([
      'I2*J2',
      'I3*J3',
      'SUM(K2:K4)',
      'K5+K6',
      'I8*J8',
      'SUM(K8:K8)',
      'K9+K10',
      'K7+K11',
      'I13*J13',
      'I15*J15',
      'SUM(K15:K15)',
      'K16+K17',
      'K18',
      'K12+K19',
    ]);
    expect(sheet.getCell('K17').value).toBe(-4.9);
    expect(sheet.getCell('K20').result).toBe(25.59);
  });

  // Digits of the minor unit by ISO 4217.
  it.each([
    ['EUR', 2, '[$EUR] #,##0.00'],
    ['JPY', 0, '[$JPY] #,##0'],
    ['IQD', 3, '[$IQD] #,##0.000'],
  ])('formats amounts of %s with %d digits', async (currency, minorDigits, format) => {
    const sheet = await readBack({ ...reorderExample, currency, minorDigits });
    expect(sheet.getCell('J2').numFmt).toBe(format);
    expect(sheet.getCell('K20').numFmt).toBe(format);
    expect(sheet.getCell('J2').value).toBe(335 / 10 ** minorDigits);
  });

  it('freezes the header, widens columns to their text and repeats the header in print', async () => {
    const sheet = await readBack(withText('A paint with a rather long name'));
    expect(sheet.views[0]).toMatchObject({ state: 'frozen', ySplit: 1 });
    expect(sheet.getColumn('E').width).toBeGreaterThan(31);
    expect(sheet.pageSetup).toMatchObject({ orientation: 'landscape', fitToWidth: 1, printTitlesRow: '1:1' });
  });

  it('puts headers over their numbers, and keeps texts off the numbers beside them', async () => {
    const sheet = await readBack(withText('A paint'));
    for (const row of [1, 2]) {
      expect(sheet.getCell(`F${row}`).alignment).toEqual({ horizontal: 'right' });
      expect(sheet.getCell(`G${row}`).alignment).toEqual({ horizontal: 'left', indent: 1 });
      expect(sheet.getCell(`K${row}`).alignment).toEqual({ horizontal: 'right' });
      expect(sheet.getCell(`L${row}`).alignment).toEqual({ horizontal: 'left', indent: 1 });
    }
  });

  it.each(dangerous)('keeps %j as text that is not calculated', async (text) => {
    const sheet = await readBack(withText(text));
    for (const address of ['C2', 'D2', 'E2', 'R5']) {
      expect(sheet.getCell(address).type).toBe(exceljs.ValueType.String);
      expect(sheet.getCell(address).formula).toBeUndefined();
      expect(sheet.getCell(address).value).toBe(text.replaceAll('\r\n', '\n').replaceAll('\r', '\n'));
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
    const sheet = await readBack({ ...reorderExample, groups: [group], totalMinor: 0 });
    expect(sheet.rowCount).toBe(2);
    expect(sheet.getCell('K2').value).toBe(0);
  });

  it('takes a set of a thousand pots as one sum', async () => {
    const pots = Array.from({ length: 1000 }, () => pot({ count: 1 }));
    const set = line({ count: 1, costMinor: 335, pots });
    const shop = { shop: 'S', lines: [set], goodsMinor: 335, postageMinor: 0, totalMinor: 335, note: '' };
    const sheet = await readBack({
      ...reorderExample,
      groups: [{ for: 'army', shops: [shop], totalMinor: 335, note: '', unmet: [], waits: [] }],
    });
    expect(sheet.getCell('K1002').value).toEqual({ formula: 'SUM(K2:K1001)', result: 3.35 });
  });
});
