// Report view: the workbook's units. In: rows of units. Out: the sheet; counts and batches stand here to be changed.

import { columnWords } from './column-words.js';
import type { UnitRow } from './list-recipes.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import { cellWords, sheetWords } from './words.js';
import { over, roundUp } from './write-formula.js';

const names = columnWords.units;
const columns = {
  unit: [names.unit, 26],
  figure: [names.figure, 22],
  scheme: [names.scheme, 16],
  recipe: [names.recipe, 8],
  count: [names.count, 8],
  batch: [names.batch, 7],
  done: [names.done, 14],
  sittings: [names.sittings, 17],
} as const satisfies Record<string, ColumnOf>;

export type UnitTable = SheetTable<keyof typeof columns>;

/** One row a unit, in the same places as in the costs; units put together bring their sittings as a plain number. */
export function writeUnits(units: readonly UnitRow[]): UnitTable {
  const table: UnitTable = new SheetTable(sheetWords.units.name, columns, ['recipe', 'sittings']);
  for (const { recipe, unit, units: several, count, batch, done, sittings } of units) {
    const { figure, scheme, number } = recipe;
    const name = unit === '' ? cellWords.moreUnits(several) : unit;
    const row = table.add({ unit: name, figure, scheme, recipe: number, count, batch, done });
    const worked = roundUp(over(table.here('count', row), table.here('batch', row)));
    table.put(row, { sittings: batch === undefined ? sittings : worked });
  }
  return table;
}
