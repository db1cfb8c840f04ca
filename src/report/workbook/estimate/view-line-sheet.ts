// Report view: the workbook's lines, whole and remaining. In: recipes with the steps of their schemes, cells of areas and
// assumptions. Out: the sheet; its costs are put in once paints have a price.

import type { Paint, Step } from '../../../model/sheets.js';
import type { Line } from '../../../model/work.js';
import type { Recipe } from './list-recipes.js';
import { type ColumnOf, SheetTable } from './sheet-table.js';
import type { AreaSheet } from './view-area-sheet.js';
import type { AssumptionSheet } from './view-assumption-sheet.js';
import type { UnitTable } from './view-unit-sheet.js';
import type { ZoneSheet } from './view-zone-sheet.js';
import {
  either,
  isBelow,
  least,
  minus,
  most,
  num,
  over,
  plus,
  root,
  roundUp,
  type Term,
  times,
} from './write-formula.js';

const columns = {
  recipe: ['recipe', 8],
  figure: ['figure', 22],
  scheme: ['scheme', 16],
  unit: ['only for (by the log)', 20],
  step: ['step', 6],
  zone: ['zone', 16],
  layer: ['layer', 14],
  method: ['method', 10],
  paintNumber: ['paint no.', 9],
  paint: ['paint', 22],
  areaCm2: ['zone cm2', 10, 3],
  areaShare: ['share of the zone', 10],
  coats: ['coats', 7],
  film: ['wet film µm', 12],
  thin: ['thin', 6],
  mixShare: ['share of the mix', 10],
  onFigureMl: ['ml on one figure', 12, 5],
  transfer: ['transfer', 9, 3],
  leftover: ['leftover ml', 11],
  palettes: ['zones that share it', 11],
  painter: ['painter', 8],
  perFigureMl: ['ml a figure', 11, 5],
  perSittingMl: ['ml a sitting', 12, 5],
  figures: ['figures, whole', 9],
  sittings: ['sittings, whole', 9],
  putOutMl: ['ml put out, whole', 12, 4],
  logged: ['figures done by the log', 12],
  figuresLeft: ['figures, remaining', 11],
  sittingsLeft: ['sittings, remaining', 11],
  leftMl: ['ml put out, remaining', 12, 4],
  price: ['price a ml', 11, 4],
  unpriced: ['share unpriced', 10, 3],
  unpricedLeft: ['ml unpriced, remaining', 12, 4],
  costPerFigure: ['cost a figure', 12, 4],
  costPerSitting: ['cost a sitting', 12, 4],
  cost: ['cost, whole', 12, 4],
  costLeft: ['cost, remaining', 12, 4],
} as const satisfies Record<string, ColumnOf>;

export type LineTable = SheetTable<keyof typeof columns>;

/** What lines are worked out from. */
export interface LineInputs {
  readonly recipes: readonly Recipe[];
  /** The step of the scheme that each line of a recipe comes from. */
  readonly stepsOf: (recipe: Recipe) => readonly Step[];
  readonly paints: ReadonlyMap<string, Paint>;
  readonly paintNumber: (paint: string) => number;
  readonly likely: AssumptionSheet['likely'];
  readonly areas: AreaSheet;
  readonly zones: ZoneSheet;
  readonly units: UnitTable;
  /** Rows of the units' sheet, by the number of a logged unit's recipe. */
  readonly rowOfLogged: ReadonlyMap<number, number>;
}

/** One row for each paint of each step of each recipe. */
export function writeLines(inputs: LineInputs): LineTable {
  const table: LineTable = new SheetTable('lines', columns, [
    'recipe',
    'step',
    'paintNumber',
    'palettes',
    'logged',
  ]);
  for (const recipe of inputs.recipes) {
    const steps = inputs.stepsOf(recipe);
    const palettes = countPalettes(recipe.lines);
    for (const [at, line] of recipe.lines.entries()) {
      const row = table.add({
        ...{ recipe: recipe.number, figure: recipe.figure, scheme: recipe.scheme },
        ...{ step: line.step, zone: line.zone, layer: line.layer, method: line.method },
        ...{ paintNumber: inputs.paintNumber(line.paint), paint: line.paint },
        ...{ mixShare: line.mixShare, palettes: palettes.get(paletteOf(line)) ?? 1 },
        ...{ unit: recipe.logged?.unit, logged: recipe.logged?.figures[at] },
      });
      layDown(table, row, { line, step: steps[at], recipe, ...inputs });
      putOut(table, row, { line, recipe, ...inputs });
      multiply(table, row, { recipe, ...inputs });
    }
  }
  return table;
}

/** What is laid in one way from one palette shares the leftover, as in the estimate. */
const paletteOf = ({ step, paint, method }: Line): string => `${step}\n${paint}\n${method}`;

function countPalettes(lines: readonly Line[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const line of lines) counts.set(paletteOf(line), (counts.get(paletteOf(line)) ?? 0) + 1);
  return counts;
}

interface OneLine extends LineInputs {
  readonly line: Line;
  readonly recipe: Recipe;
}

/** What ends on one figure. A blank of the scheme follows the assumption that fills it; what is given is a number. */
function layDown(table: LineTable, row: number, of: OneLine & { readonly step: Step | undefined }): void {
  const { line, step, recipe, paints, likely, zones } = of;
  const isUsual = {
    area: step?.areaShare === undefined,
    coats: step?.coats === undefined && line.coatsBecause === undefined,
    thin: (step?.thin ?? paints.get(line.paint)?.thin) === undefined,
  };
  table.put(row, {
    areaCm2: zones.areaOf(recipe.figure, line.zone),
    areaShare: isUsual.area ? over(likely(`${line.layer} area`), num(100)) : line.areaShare,
    coats: isUsual.coats ? likely(`${line.layer} coats`) : line.coats,
    film: likely(`${line.method} wet film`),
    thin: isUsual.thin ? likely(`${line.layer} thin`) : line.thin,
  });
  const here = (key: keyof typeof columns): Term => table.here(key, row);
  const film = times(here('areaCm2'), here('areaShare'), here('coats'), here('film'), num(0.0001));
  table.put(row, {
    onFigureMl: times(over(film, plus(num(1), here('thin'))), here('mixShare')),
  });
}

/** What leaves the pot for one figure, and for one sitting. */
function putOut(table: LineTable, row: number, { line, recipe, likely, areas }: OneLine): void {
  const transfer = likely(`${line.method} transfer`);
  const target = areas.table.from('withBase', areas.rowOf(recipe.figure));
  const isSpray = line.method === 'spray can' || line.method === 'airbrush';
  const caught = isSpray ? times(transfer, caughtOf(target, likely)) : transfer;
  const limit = line.method === 'airbrush' ? most(likely('most transfer of an airbrush'), transfer) : num(1);
  table.put(row, {
    transfer: least(limit, caught),
    leftover: likely(`${line.method} leftover`),
    painter: likely('painter'),
  });
  const here = (key: keyof typeof columns): Term => table.here(key, row);
  table.put(row, {
    perFigureMl: times(over(here('onFigureMl'), here('transfer')), here('painter')),
    perSittingMl: times(over(here('leftover'), here('palettes')), here('painter')),
  });
}

/** A small target catches less of a spray. */
function caughtOf(target: Term, likely: AssumptionSheet['likely']): Term {
  const caught = root(over(target, likely('full target of a spray')));
  return least(likely('most catch of a spray'), most(likely('least catch of a spray'), caught));
}

/** All figures and sittings of the recipe, and those that are left. */
function multiply(
  table: LineTable,
  row: number,
  { recipe, units, rowOfLogged }: Omit<OneLine, 'line'>,
): void {
  const here = (key: keyof typeof columns): Term => table.here(key, row);
  const wanted = here('recipe');
  const stillToDo = { by: 'recipe', wanted, than: 'done', sign: '<', limit: here('step') } as const;
  const loggedRow = rowOfLogged.get(recipe.number);
  table.put(row, {
    figures: units.sumIf('recipe', wanted, 'count'),
    sittings: units.sumIf('recipe', wanted, 'sittings'),
    figuresLeft: loggedRow === undefined ? units.sumIfs(stillToDo, 'count') : leftOf(units, loggedRow, here),
  });
  const batches = (unitRow: number): Term => roundUp(over(here('figuresLeft'), units.from('batch', unitRow)));
  table.put(row, {
    sittingsLeft: loggedRow === undefined ? units.sumIfs(stillToDo, 'sittings') : batches(loggedRow),
  });
  const ml = (figures: Term, sittings: Term): Term =>
    plus(times(figures, here('perFigureMl')), times(sittings, here('perSittingMl')));
  table.put(row, {
    putOutMl: ml(here('figures'), here('sittings')),
    leftMl: ml(here('figuresLeft'), here('sittingsLeft')),
  });
}

function leftOf(units: UnitTable, unitRow: number, here: (key: 'step' | 'logged') => Term): Term {
  const notLogged = most(num(0), minus(units.from('count', unitRow), here('logged')));
  return either(isBelow(units.from('done', unitRow), here('step')), notLogged, num(0));
}

/** Prices the lines: each pays the average of its paint; what has no price counts nothing. */
export function priceLines(
  table: LineTable,
  priceOf: (paintNumber: number) => { readonly price: Term; readonly pricedShare: Term },
): void {
  for (let row = 2; row < table.nextRow; row++) {
    const { price, pricedShare } = priceOf(table.number('paintNumber', row));
    table.put(row, { price: times(price, pricedShare), unpriced: minus(num(1), pricedShare) });
    const here = (key: keyof typeof columns): Term => table.here(key, row);
    table.put(row, {
      costPerFigure: times(here('perFigureMl'), here('price')),
      costPerSitting: times(here('perSittingMl'), here('price')),
      cost: times(here('putOutMl'), here('price')),
      costLeft: times(here('leftMl'), here('price')),
      unpricedLeft: times(here('leftMl'), here('unpriced')),
    });
  }
}
