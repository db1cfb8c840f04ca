// Report view: what one figure and one sitting of each recipe cost. In: recipes, lines with prices. Out: the sheet.
import type { Recipe } from './list-recipes.js';
import { SheetTable } from './sheet-table.js';
import { type KeyOf, sheetWords } from './sheet-words.js';
import type { LineTable } from './view-line-sheet.js';

export type RecipeTable = SheetTable<KeyOf<'recipes'>>;

/** One row a recipe, in the order of their numbers. */
export function writeRecipes(recipes: readonly Recipe[], lines: LineTable): RecipeTable {
  const table: RecipeTable = new SheetTable(sheetWords.recipes);
  for (const { number, figure, scheme, lastStep } of recipes) {
    const { here, put } = table.add({ recipe: number, figure, scheme, lastStep });
    for (const key of ['costPerFigure', 'costPerSitting', 'unpriced'] as const)
      put({ [key]: lines.sumIf('recipe', here('recipe'), key) });
  }
  return table;
}
