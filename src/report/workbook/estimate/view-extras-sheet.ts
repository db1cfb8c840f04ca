// Report view: the workbook's extras. In: extras of the sheets. Out: the sheet, and the cell with their cost a figure.
import type { Extra } from '../../../model/sheets.js';
import { columnWords } from './column-words.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import { cellWords, sheetWords } from './words.js';
import type { SheetView } from './workbook-view.js';
import { over, type Term } from './write-formula.js';

const names = columnWords.extras;
const columns = {
  item: [names.item, 26],
  price: [names.price, 10, 2],
  serves: [names.serves, 9],
  each: [names.each, 12, 5],
} as const satisfies Record<string, ColumnOf>;

/** One row an item, the sum below; without extras only the sum, which is 0. */
export function writeExtras(
  extras: readonly Extra[],
  major: (minor: number) => number,
): { readonly each: Term; readonly view: SheetView } {
  const table = new SheetTable(sheetWords.extras.name, columns);
  const rows = extras.map(({ item, priceMinor, serves }) => {
    const row = table.add({ item, price: major(priceMinor), serves });
    table.put(row, { each: over(table.here('price', row), table.here('serves', row)) });
    return row;
  });
  const sum = table.add({ item: cellWords.allExtras });
  table.put(sum, { each: table.sumRows('each', rows) });
  return { each: table.from('each', sum), view: table.view() };
}
