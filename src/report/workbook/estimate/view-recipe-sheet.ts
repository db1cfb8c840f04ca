// Report view: what one figure and one sitting of each recipe cost. In: recipes, lines with prices. Out: the sheet.

import { columnWords } from './column-words.js';
import type { Recipe } from './list-recipes.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import type { LineTable } from './view-line-sheet.js';
import { sheetWords } from './words.js';

const names = columnWords.recipes;
const columns = {
  recipe: [names.recipe, 8],
  figure: [names.figure, 22],
  scheme: [names.scheme, 16],
  lastStep: [names.lastStep, 9],
  costPerFigure: [names.costPerFigure, 12, 4],
  costPerSitting: [names.costPerSitting, 12, 4],
  unpriced: [names.unpriced, 10, 3],
} as const satisfies Record<string, ColumnOf>;

export type RecipeTable = SheetTable<keyof typeof columns>;

/** One row a recipe: the row of a recipe is its number and one. */
export function writeRecipes(recipes: readonly Recipe[], lines: LineTable): RecipeTable {
  const table: RecipeTable = new SheetTable(sheetWords.recipes.name, columns, ['recipe', 'lastStep']);
  for (const { number, figure, scheme, lastStep } of recipes) {
    const row = table.add({ recipe: number, figure, scheme, lastStep });
    const wanted = table.here('recipe', row);
    table.put(row, {
      costPerFigure: lines.sumIf('recipe', wanted, 'costPerFigure'),
      costPerSitting: lines.sumIf('recipe', wanted, 'costPerSitting'),
      unpriced: lines.sumIf('recipe', wanted, 'unpriced'),
    });
  }
  return table;
}
