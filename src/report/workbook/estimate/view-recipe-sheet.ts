// Report view: what one figure and one sitting of each recipe cost. In: recipes, lines with prices. Out: the sheet.
import type { Recipe } from './list-recipes.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import type { LineTable } from './view-line-sheet.js';

const columns = {
  recipe: ['recipe', 8],
  figure: ['figure', 22],
  scheme: ['scheme', 16],
  lastStep: ['last step', 9],
  costPerFigure: ['cost a figure', 12, 4],
  costPerSitting: ['cost of a sitting of each step', 12, 4],
  unpriced: ['lines unpriced', 10, 3],
} as const satisfies Record<string, ColumnOf>;

export type RecipeTable = SheetTable<keyof typeof columns>;

/** One row a recipe: the row of a recipe is its number and one. */
export function writeRecipes(recipes: readonly Recipe[], lines: LineTable): RecipeTable {
  const table: RecipeTable = new SheetTable('recipes', columns, ['recipe', 'lastStep']);
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
