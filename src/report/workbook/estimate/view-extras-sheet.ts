// Report view: the workbook's extras. In: extras of the sheets. Out: the sheet, and the cell with their cost a figure.
import type { Extra } from '../../../model/sheets.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import type { SheetView } from './workbook-view.js';
import { over, type Term } from './write-formula.js';

const columns = {
  item: ['item', 26],
  price: ['price', 10, 2],
  serves: ['serves figures', 9],
  each: ['cost a figure', 12, 5],
} as const satisfies Record<string, ColumnOf>;

/** One row an item, the sum below; without extras only the sum, which is 0. */
export function writeExtras(
  extras: readonly Extra[],
  major: (minor: number) => number,
): { readonly each: Term; readonly view: SheetView } {
  const table = new SheetTable('extras', columns);
  const rows = extras.map(({ item, priceMinor, serves }) => {
    const row = table.add({ item, price: major(priceMinor), serves });
    table.put(row, { each: over(table.here('price', row), table.here('serves', row)) });
    return row;
  });
  const sum = table.add({ item: 'all of them' });
  table.put(sum, { each: table.sumRows('each', rows) });
  return { each: table.from('each', sum), view: table.view() };
}
