// Report view: the workbook's extras. In: extras of the sheets. Out: the sheet, and the cell with their cost a figure.
import type { Extra } from '../../../model/sheets.js';
import { SheetTable } from './sheet-table.js';
import { sheetWords } from './sheet-words.js';
import { cellWords } from './words.js';
import { over } from './write-formula.js';

/** One row an item, the sum below; without extras only the sum, which is 0. */
export function writeExtras(extras: readonly Extra[], major: (minor: number) => number) {
  const table = new SheetTable(sheetWords.extras);
  const rows = extras.map(({ item, priceMinor, serves }) => {
    const row = table.add({ item, price: major(priceMinor), serves });
    row.put({ each: over(row.here('price'), row.here('serves')) });
    return row;
  });
  const sum = table.add({ item: cellWords.allExtras, each: table.sumRows('each', rows) });
  return { each: sum.from('each'), table };
}
