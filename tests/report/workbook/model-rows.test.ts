import exceljs from 'exceljs';
import { describe, expect, it } from 'vitest';
import type { SheetView } from '../../../src/report/workbook/estimate/workbook-view.js';
import { modelRows } from '../../../src/report/workbook/model-rows.js';

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

const rowsOf = (model: exceljs.WorksheetModel): readonly object[] => Reflect.get(model, 'rows');
const cellsOf = (row: object): readonly { readonly style: object }[] => Reflect.get(row, 'cells');
