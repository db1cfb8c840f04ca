// Report view: the workbook's units. In: rows of units. Out: the sheet; counts and batches stand here to be changed.
import type { UnitRow } from './list-recipes.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import { over, roundUp } from './write-formula.js';

const columns = {
  unit: ['unit', 26],
  figure: ['figure', 22],
  scheme: ['scheme', 16],
  recipe: ['recipe', 8],
  count: ['figures', 8],
  batch: ['batch', 7],
  done: ['last step done', 14],
  sittings: ['sittings of a step', 17],
} as const satisfies Record<string, ColumnOf>;

export type UnitTable = SheetTable<keyof typeof columns>;

/** One row a unit, in the same places as in the costs; units put together bring their sittings as a plain number. */
export function writeUnits(units: readonly UnitRow[]): UnitTable {
  const table: UnitTable = new SheetTable('units', columns, ['recipe', 'sittings']);
  for (const { recipe, unit, units: several, count, batch, done, sittings } of units) {
    const { figure, scheme, number } = recipe;
    const name = unit === '' ? `${several} more units` : unit;
    const row = table.add({ unit: name, figure, scheme, recipe: number, count, batch, done });
    const worked = roundUp(over(table.here('count', row), table.here('batch', row)));
    table.put(row, { sittings: batch === undefined ? sittings : worked });
  }
  return table;
}
