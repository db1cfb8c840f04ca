// Report view: the workbook's costs by unit. In: rows of units, lines with prices, extras. Out: the sheet.
import { at } from '../../../model/at.js';
import type { Amount } from '../../../model/money.js';
import type { UnitCost } from '../../../model/plan.js';
import type { FigureArea } from '../../../model/work.js';
import type { UnitRow } from './list-recipes.js';
import { type Row, SheetTable } from './sheet-table.js';
import { type KeyOf, sheetWords } from './sheet-words.js';
import type { LineTable } from './view-line-sheet.js';
import type { RecipeTable } from './view-recipe-sheet.js';
import { nameUnits, type UnitTable } from './view-unit-sheet.js';
import { cellWords } from './words.js';
import {
  both,
  either,
  isBelow,
  isZero,
  num,
  over,
  plus,
  type Term,
  times,
  wordsIf,
} from './write-formula.js';

export type CostTable = SheetTable<KeyOf<'costs'>>;

interface CostInputs {
  readonly rows: readonly UnitRow[];
  readonly units: UnitTable;
  readonly lines: LineTable;
  readonly perRecipe: RecipeTable;
  readonly extrasEach: Term;
  readonly leftOut: readonly UnitCost[];
  readonly major: (minor: number) => number;
  readonly figures: ReadonlyMap<string, FigureArea>;
}

/** One row a unit, in the same places as in the units' sheet; units left out come last, in plain numbers. */
export function writeCosts(inputs: CostInputs): CostTable {
  const table: CostTable = new SheetTable(sheetWords.costs);
  const { rows, units, perRecipe } = inputs;
  for (const [index, one] of rows.entries()) {
    const recipe = at(perRecipe.rows, one.recipe.number - 1);
    writeRow(table, { one, unit: at(units.rows, index), recipe, ...inputs });
  }
  if (inputs.leftOut.length > 0) addLeftOut(table, inputs);
  return table;
}

interface OneRow extends CostInputs {
  readonly one: UnitRow;
  readonly unit: Row<KeyOf<'units'>>;
  readonly recipe: Row<KeyOf<'recipes'>>;
}

function writeRow(table: CostTable, of: OneRow): void {
  const { one, unit, extrasEach, major, figures } = of;
  const priceMinor = figures.get(one.recipe.figure)?.figure.priceMinor;
  const { here, put } = table.add({ unit: nameUnits(one), figures: unit.from('count'), ...usePaint(of) });
  put({
    extras: times(here('figures'), extrasEach),
    cash: major(one.cashMinor),
    figurePrice: priceMinor === undefined ? cellWords.unpriced : major(priceMinor),
    figuresPrice: () => (priceMinor === undefined ? undefined : times(here('figures'), here('figurePrice'))),
    extrasLeft: () => either(isUnfinished(of), here('extras'), num(0)),
    whole: () => plus(here('paint'), here('extras')),
    left: () => plus(here('paintLeft'), here('extrasLeft')),
    each: () => either(isZero(here('figures')), num(0), over(here('whole'), here('figures'))),
  });
}

/** Paint by figures and sittings of the unit's recipe; of a unit that the log knows, by what its lines have left. */
function usePaint({ one, unit, recipe, lines }: OneRow) {
  const wanted = unit.from('recipe');
  const stillToDo = { by: 'recipe', wanted, than: 'step', sign: '>', limit: unit.from('done') } as const;
  const priced = (sum: (key: 'costPerFigure' | 'costPerSitting') => Term): Term =>
    plus(
      times(unit.from('count'), sum('costPerFigure')),
      times(unit.from('sittings'), sum('costPerSitting')),
    );
  const ifUnpriced = (unpriced: Term) => wordsIf(isBelow(num(0), unpriced), cellWords.atLeast);
  const whole = { paint: priced(recipe.from), atLeast: ifUnpriced(recipe.from('unpriced')) };
  if (one.recipe.logged === undefined) {
    const paintLeft = priced((key) => lines.sumIfs(stillToDo, key));
    return { ...whole, paintLeft, leftAtLeast: ifUnpriced(lines.sumIfs(stillToDo, 'unpriced')) };
  }
  const paintLeft = lines.sumIf('recipe', wanted, 'costLeft');
  return { ...whole, paintLeft, leftAtLeast: ifUnpriced(lines.sumIf('recipe', wanted, 'unpricedLeft')) };
}

/** Extras count while a step remains; the log may have finished the last one. */
function isUnfinished({ one, unit, recipe, lines }: OneRow) {
  const isBefore = isBelow(unit.from('done'), recipe.from('lastStep'));
  if (one.recipe.logged === undefined) return isBefore;
  return both(isBefore, isBelow(num(0), lines.sumIf('recipe', unit.from('recipe'), 'figuresLeft')));
}

/** One row for all of them together. */
function addLeftOut(table: CostTable, { leftOut, major }: CostInputs): void {
  const sum = (of: (one: UnitCost) => number): number => leftOut.reduce((total, one) => total + of(one), 0);
  const exact = ({ exactMinor }: Amount): number => major(exactMinor.toNumber());
  const whole = sum(({ use }) => exact(use.whole));
  const extras = sum(({ use, job }) => exact(use.extrasPerFigure) * job.count);
  const isAtLeast = (of: 'whole' | 'remaining') =>
    leftOut.some(({ use }) => use[of].atLeast) ? cellWords.atLeast : '';
  table.add({
    unit: cellWords.leftOut(leftOut.length),
    figures: sum(({ job }) => job.count),
    ...{ paint: whole - extras, extras, whole, left: sum(({ use }) => exact(use.remaining)) },
    ...{ atLeast: isAtLeast('whole'), leftAtLeast: isAtLeast('remaining') },
    cash: major(sum(({ cashMinor }) => cashMinor)),
    figuresPrice: major(sum(({ figuresPriceMinor }) => figuresPriceMinor ?? 0)),
  });
}
