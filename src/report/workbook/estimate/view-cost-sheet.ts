// Report view: the workbook's costs by unit. In: rows of units, lines with prices, extras. Out: the sheet.

import type { Amount } from '../../../model/money.js';
import type { UnitCost } from '../../../model/plan.js';
import type { UnitRow } from './list-recipes.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import type { LineTable } from './view-line-sheet.js';
import type { RecipeTable } from './view-recipe-sheet.js';
import type { UnitTable } from './view-unit-sheet.js';
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

const columns = {
  unit: ['unit', 26],
  figures: ['figures', 8],
  paint: ['paint, whole', 12, 4],
  extras: ['extras, whole', 12, 4],
  whole: ['cost of use, whole', 12, 4],
  each: ['of it a figure', 12, 4],
  atLeast: ['whole, or more', 15],
  paintLeft: ['paint, remaining', 12, 4],
  extrasLeft: ['extras, remaining', 12, 4],
  left: ['cost of use, remaining', 12, 4],
  leftAtLeast: ['remaining, or more', 18],
  cash: ['cash for the order, as planned', 12, 2],
  figurePrice: ['price of an unpainted figure', 12, 2],
  figuresPrice: ['price of the unpainted figures', 12, 2],
} as const satisfies Record<string, ColumnOf>;

export type CostTable = SheetTable<keyof typeof columns>;

export interface CostInputs {
  readonly rows: readonly UnitRow[];
  readonly units: UnitTable;
  readonly lines: LineTable;
  readonly recipes: RecipeTable;
  readonly extrasEach: Term;
  readonly leftOut: readonly UnitCost[];
  readonly major: (minor: number) => number;
  readonly figurePriceMinor: (figure: string) => number | undefined;
}

/** One row a unit, in the same places as in the units' sheet; units left out come last, in plain numbers. */
export function writeCosts(inputs: CostInputs): CostTable {
  const table: CostTable = new SheetTable('costs', columns, ['cash']);
  for (const [at, one] of inputs.rows.entries()) writeRow(table, at + 2, { one, ...inputs });
  if (inputs.leftOut.length > 0) addLeftOut(table, inputs);
  return table;
}

interface OneRow extends CostInputs {
  readonly one: UnitRow;
}

function writeRow(table: CostTable, unitRow: number, of: OneRow): void {
  const { one, units, extrasEach, major, figurePriceMinor } = of;
  const row = table.add({ unit: units.text('unit', unitRow), figures: units.from('count', unitRow) });
  const here = (key: keyof typeof columns): Term => table.here(key, row);
  const priceMinor = figurePriceMinor(one.recipe.figure);
  table.put(row, {
    ...usePaint(unitRow, of),
    extras: times(here('figures'), extrasEach),
    cash: major(one.cashMinor),
    figurePrice: priceMinor === undefined ? 'unpriced' : major(priceMinor),
  });
  table.put(row, { extrasLeft: either(isUnfinished(unitRow, of), here('extras'), num(0)) });
  table.put(row, {
    whole: plus(here('paint'), here('extras')),
    left: plus(here('paintLeft'), here('extrasLeft')),
    figuresPrice: priceMinor === undefined ? undefined : times(here('figures'), here('figurePrice')),
  });
  table.put(row, { each: either(isZero(here('figures')), num(0), over(here('whole'), here('figures'))) });
}

/** Paint by figures and sittings of the unit's recipe; of a unit that the log knows, by what its lines have left. */
function usePaint(unitRow: number, { one, units, lines, recipes }: OneRow) {
  const recipeRow = one.recipe.number + 1;
  const recipe = units.from('recipe', unitRow);
  const [count, sittings] = [units.from('count', unitRow), units.from('sittings', unitRow)];
  const limit = units.from('done', unitRow);
  const stillToDo = { by: 'recipe', wanted: recipe, than: 'step', sign: '>', limit } as const;
  const priced = (sum: (key: 'costPerFigure' | 'costPerSitting') => Term): Term =>
    plus(times(count, sum('costPerFigure')), times(sittings, sum('costPerSitting')));
  const isLogged = one.recipe.logged !== undefined;
  const unpricedLeft = lines.sumIfs(stillToDo, 'unpriced');
  return {
    paint: priced((key) => recipes.from(key, recipeRow)),
    atLeast: wordsIf(isBelow(num(0), recipes.from('unpriced', recipeRow)), 'at least'),
    paintLeft: isLogged
      ? lines.sumIf('recipe', recipe, 'costLeft')
      : priced((key) => lines.sumIfs(stillToDo, key)),
    leftAtLeast: wordsIf(
      isBelow(num(0), isLogged ? lines.sumIf('recipe', recipe, 'unpricedLeft') : unpricedLeft),
      'at least',
    ),
  };
}

/** Extras count while a step remains; the log may have finished the last one. */
function isUnfinished(unitRow: number, { one, units, lines, recipes }: OneRow) {
  const lastStep = recipes.from('lastStep', one.recipe.number + 1);
  const isBefore = isBelow(units.from('done', unitRow), lastStep);
  if (one.recipe.logged === undefined) return isBefore;
  const figuresLeft = lines.sumIf('recipe', units.from('recipe', unitRow), 'figuresLeft');
  return both(isBefore, isBelow(num(0), figuresLeft));
}

function addLeftOut(table: CostTable, { leftOut, major }: CostInputs): void {
  const sum = (amountOf: (one: UnitCost) => Amount): number =>
    leftOut.reduce((total, one) => total + major(amountOf(one).exactMinor.toNumber()), 0);
  const figures = leftOut.reduce((total, { job }) => total + job.count, 0);
  const [whole, left] = [sum(({ use }) => use.whole), sum(({ use }) => use.remaining)];
  const extras = leftOut.reduce(
    (total, { use, job }) => total + major(use.extrasPerFigure.exactMinor.toNumber()) * job.count,
    0,
  );
  const isAtLeast = (of: 'whole' | 'remaining') =>
    leftOut.some(({ use }) => use[of].atLeast) ? 'at least' : '';
  table.add({
    ...{
      unit: leftOut.length === 1 ? 'the unit left out' : `the ${leftOut.length} units left out`,
      figures,
      paint: whole - extras,
      extras,
      whole,
      left,
    },
    ...{ atLeast: isAtLeast('whole'), leftAtLeast: isAtLeast('remaining') },
    cash: major(leftOut.reduce((total, { cashMinor }) => total + cashMinor, 0)),
    figuresPrice: major(leftOut.reduce((total, one) => total + (one.figuresPriceMinor ?? 0), 0)),
  });
}
