import { describe, expect, it } from 'vitest';
import type { SheetView } from '../../../src/report/workbook/estimate/workbook-view.js';
import { findLooks, heightOfHeaders } from '../../../src/report/workbook/look-cells.js';

describe('the looks', () => {
  const view: SheetView = {
    name: 'one',
    columns: [
      { header: 'pots', width: 12 },
      { header: 'price of an unpainted figure', width: 13 },
      { header: 'in', width: 12 },
      { header: 'where', width: 12 },
    ],
    rows: [
      [1, { formula: 'A2*2', result: 2 }, 'EUR', 'shelf'],
      ['', 4, 'EUR', 'order'],
    ],
  };
  const { headers, cells } = findLooks(view);

  it('put headers over what stands below them', () => {
    expect(headers.map(({ text }) => text.alignment)).toMatchObject([
      { horizontal: 'right', wrapText: true },
      { horizontal: 'right', wrapText: true },
      { horizontal: 'left', indent: 1 },
      { wrapText: true },
    ]);
  });

  it('keep a text off the number before it', () => {
    const indented = { horizontal: 'left', indent: 1 };
    expect(cells.map(({ text }) => text.alignment)).toEqual([undefined, undefined, indented, undefined]);
  });

  it('give headers as many lines as the longest takes', () => {
    // In bold, some eleven letters to a line: "price of an", "unpainted" and "figure".
    expect(heightOfHeaders(view.columns)).toBe(3 * 15);
    const short = view.columns.map((column) => ({ ...column, header: 'one' }));
    expect(heightOfHeaders(short)).toBe(15);
  });
});
