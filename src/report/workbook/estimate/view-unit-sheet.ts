// Report view: the workbook's units. In: rows of units. Out: the sheet; counts and batches stand here to be changed.
import type { UnitRow } from './list-recipes.js';
import { SheetTable } from './sheet-table.js';
import { type KeyOf, sheetWords } from './sheet-words.js';
import { cellWords } from './words.js';
import { over, roundUp } from './write-formula.js';

export type UnitTable = SheetTable<KeyOf<'units'>>;

/** One row a unit, in the same places as in the costs; units put together bring their sittings as a plain number. */
export function writeUnits(units: readonly UnitRow[]): UnitTable {
  const table: UnitTable = new SheetTable(sheetWords.units);
  for (const one of units) {
    const { recipe, count, batch, done, sittings } = one;
    const { figure, scheme, number } = recipe;
    const { here, put } = table.add({
      unit: nameUnits(one),
      figure,
      scheme,
      recipe: number,
      count,
      batch,
      done,
    });
    put({ sittings: batch === undefined ? sittings : roundUp(over(here('count'), here('batch'))) });
  }
  return table;
}

export const nameUnits = ({ unit, units }: UnitRow): string =>
  unit === '' ? cellWords.moreUnits(units) : unit;
