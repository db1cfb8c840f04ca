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
  const sum = /^SUM\(J(\d+):J(\d+)\)$/.exec(formula);
  if (sum !== null) {
    const [first, last] = [Number(sum[1]), Number(sum[2])];
    return Array.from({ length: last - first + 1 }, (_, at) => calculate(sheet, `J${first + at}`)).reduce(
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
      'Note',
    ]);
    expect(sheet.getRow(2).values).toEqual([
      undefined,
      'army',
      'The Eel Trap',
      'Oat 17 ml',
      'Oat',
      17,
      'dropper',
      2,
      2,
      3.35,
      { formula: 'H2*I2', result: 6.7 },
      '0230471200207',
      20.1,
      12.54,
    ]);
    expect(sheet.getCell('K2').type).toBe(exceljs.ValueType.String);
    expect(sheet.getCell('K2').numFmt).toBe('@');
    expect(sheet.getCell('I4').value).toBeNull();
    expect(sheet.getCell('D13').value).toBe('Moss');
    expect(sheet.getCell('N13').value).toBe('No offer: 3.15 ml missing');
  });

  it('stores with each formula the result that it gives, and the totals of the list', async () => {
    const sheet = await readBack(reorderExample);
    const formulas: string[] = [];
    sheet.getColumn('J').eachCell((cell) => {
      if (cell.formula === undefined || typeof cell.result !== 'number') return;
      formulas.push(cell.formula);
      expect(calculate(sheet, cell.address)).toBeCloseTo(cell.result, 9);
    });
    expect(formulas).toEqual([
      'H2*I2',
      'H3*I3',
      'SUM(J2:J4)',
      'J5+J6',
      'H8*I8',
      'SUM(J8:J8)',
      'J9+J10',
      'J7+J11',
      'H14*I14',
      'SUM(J14:J14)',
      'J15+J16',
      'J17',
      'J12+J18',
    ]);
    expect(sheet.getCell('J16').value).toBe(-4.9);
    expect(sheet.getCell('J19').result).toBe(25.59);
  });

  // Digits of the minor unit by ISO 4217.
  it.each([
    ['EUR', 2, '[$EUR] #,##0.00'],
    ['JPY', 0, '[$JPY] #,##0'],
    ['IQD', 3, '[$IQD] #,##0.000'],
  ])('formats amounts of %s with %d digits', async (currency, minorDigits, format) => {
    const sheet = await readBack({ ...reorderExample, currency, minorDigits });
    expect(sheet.getCell('I2').numFmt).toBe(format);
    expect(sheet.getCell('J19').numFmt).toBe(format);
    expect(sheet.getCell('I2').value).toBe(335 / 10 ** minorDigits);
  });

  it('freezes the header, widens columns to their text and repeats the header in print', async () => {
    const sheet = await readBack(withText('A paint with a rather long name'));
    expect(sheet.views[0]).toMatchObject({ state: 'frozen', ySplit: 1 });
    expect(sheet.getColumn('D').width).toBeGreaterThan(31);
    expect(sheet.pageSetup).toMatchObject({ orientation: 'landscape', fitToWidth: 1, printTitlesRow: '1:1' });
  });

  it('puts headers over their numbers, and keeps texts off the numbers beside them', async () => {
    const sheet = await readBack(withText('A paint'));
    for (const row of [1, 2]) {
      expect(sheet.getCell(`E${row}`).alignment).toEqual({ horizontal: 'right' });
      expect(sheet.getCell(`F${row}`).alignment).toEqual({ horizontal: 'left', indent: 1 });
      expect(sheet.getCell(`J${row}`).alignment).toEqual({ horizontal: 'right' });
      expect(sheet.getCell(`K${row}`).alignment).toEqual({ horizontal: 'left', indent: 1 });
    }
  });

  it.each(dangerous)('keeps %j as text that is not calculated', async (text) => {
    const sheet = await readBack(withText(text));
    for (const address of ['B2', 'C2', 'D2', 'N5']) {
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
    const group = { for: 'army' as const, shops: [], totalMinor: 0, note: '', unmet: [] };
    const sheet = await readBack({ ...reorderExample, groups: [group], totalMinor: 0 });
    expect(sheet.rowCount).toBe(2);
    expect(sheet.getCell('J2').value).toBe(0);
  });

  it('takes a set of a thousand pots as one sum', async () => {
    const pots = Array.from({ length: 1000 }, () => pot({ count: 1 }));
    const set = line({ count: 1, costMinor: 335, pots });
    const shop = { shop: 'S', lines: [set], goodsMinor: 335, postageMinor: 0, totalMinor: 335, note: '' };
    const sheet = await readBack({
      ...reorderExample,
      groups: [{ for: 'army', shops: [shop], totalMinor: 335, note: '', unmet: [] }],
    });
    expect(sheet.getCell('J1002').value).toEqual({ formula: 'SUM(J2:J1001)', result: 3.35 });
  });
});
