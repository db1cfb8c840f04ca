import exceljs from 'exceljs';
import { describe, expect, it } from 'vitest';
import { modelRows } from '../../../src/report/export/model-rows.js';
import type { SheetView } from '../../../src/report/view/estimate-workbook/workbook-view.js';

const columns = ['name', '', 'formula', 'number', 'text of one'].map((header) => ({ header, width: 9 }));
const notANumber: exceljs.CellErrorValue = { error: '#DIV/0!' };

/** The same cells, made by the library from values, and what it would hand to its writer. */
function libraryModel(rows: readonly exceljs.CellValue[][]): exceljs.WorksheetModel {
  const sheet = new exceljs.Workbook().addWorksheet('one');
  for (const cells of rows) sheet.addRow(cells);
  return sheet.model;
}

describe('the modelled rows', () => {
  it("are those of the library's own cells, blank ones and all", () => {
    const view: SheetView = {
      name: 'one',
      columns,
      rows: [
        ['a', undefined, { formula: 'D2*2', result: 2 }, 1, ''],
        [],
        [undefined, '', undefined, Number.NaN, undefined],
        [
          '',
          'b',
          { formula: '1/0', result: Number.POSITIVE_INFINITY },
          -0.5,
          { formula: 'A1', result: 'name' },
        ],
      ],
    };
    const theirs = libraryModel([
      ['name', undefined, 'formula', 'number', 'text of one'],
      ['a', undefined, { formula: 'D2*2', result: 2 }, 1],
      [],
      [undefined, undefined, undefined, notANumber],
      [undefined, 'b', { formula: '1/0', result: notANumber }, -0.5, { formula: 'A1', result: 'name' }],
    ]);
    const withoutStyles = (rows: readonly object[]) =>
      rows.map((row) => ({ ...row, style: {}, cells: cellsOf(row).map((cell) => ({ ...cell, style: {} })) }));
    const ours = modelRows(view);
    const plain = { hidden: false, outlineLevel: 0, collapsed: false, style: {} };
    const oneLine = ours.rows.map((row) => ({ ...plain, ...row, height: undefined }));
    expect(withoutStyles(oneLine)).toEqual(withoutStyles(rowsOf(theirs)));
    expect(ours.dimensions).toBe(String(Reflect.get(theirs, 'dimensions')));
    expect(ours.dimensions).toBe('A1:E5');
  });

  it('begin where the first cell is, and end with the last', () => {
    const blank = ['', '', 'c'].map((header) => ({ header, width: 9 }));
    expect(modelRows({ name: 'one', columns: blank, rows: [['', 7], [], []] }).dimensions).toBe('B1:C2');
  });

  it('share the look of a column by what a cell holds', () => {
    const cells = ['t', 't', 't', 3, 't'];
    const { rows } = modelRows({ name: 'one', columns, rows: [cells, cells] });
    const [, first, second] = rows.map((row) => cellsOf(row).map(({ style }) => style));
    expect(first?.map((style, at) => style === second?.[at])).toEqual([true, true, true, true, true]);
    expect(first?.[3]).not.toBe(first?.[0]);
  });
});

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
  const looksOf = (row: number): object[] =>
    cellsOf(modelRows(view).rows[row] ?? {}).map(({ style }) => Reflect.get(style, 'alignment') ?? {});

  it('put headers over what stands below them', () => {
    expect(looksOf(0)).toMatchObject([
      { horizontal: 'right', wrapText: true },
      { horizontal: 'right', wrapText: true },
      { horizontal: 'left', indent: 1 },
      { wrapText: true },
    ]);
  });

  it('keep a text off the number before it', () => {
    expect(looksOf(1)).toEqual([{}, {}, { horizontal: 'left', indent: 1 }, {}]);
    expect(looksOf(2)).toEqual([{}, { horizontal: 'left', indent: 1 }, {}]);
  });

  it('give headers as many lines as the longest takes', () => {
    // In bold, some eleven letters to a line: "price of an", "unpainted" and "figure".
    expect(modelRows(view).rows[0]).toMatchObject({ height: 3 * 15 });
    const short = view.columns.map((column) => ({ ...column, header: 'one' }));
    expect(modelRows({ ...view, columns: short }).rows[0]).toMatchObject({ height: 15 });
  });
});

const rowsOf = (model: exceljs.WorksheetModel): readonly object[] => Reflect.get(model, 'rows');
const cellsOf = (row: object): readonly { readonly style: object }[] => Reflect.get(row, 'cells');
