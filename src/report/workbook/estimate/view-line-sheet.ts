// Report view: the workbook's lines, whole and remaining. In: recipes, their schemes, cells of areas and assumptions. Out: the
// sheet; its costs are put in once paints have a price.
import { at } from '../../../model/at.js';
import type { Paint, Sheets, Step } from '../../../model/sheets.js';
import type { Line } from '../../../model/work.js';
import type { Recipe, UnitRow } from './list-recipes.js';
import { pairSteps } from './pair-steps.js';
import { type Row, SheetTable } from './sheet-table.js';
import { type KeyOf, sheetWords } from './sheet-words.js';
import type { AreaSheet } from './view-area-sheet.js';
import type { Likely } from './view-assumption-sheet.js';
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

type LineKey = KeyOf<'lines'>;
type LineRow = Row<LineKey>;
export type LineTable = SheetTable<LineKey>;

/** What lines are worked out from. */
interface LineInputs {
  readonly recipes: readonly Recipe[];
  readonly rows: readonly UnitRow[];
  readonly schemes: Sheets['schemes'];
  readonly paints: ReadonlyMap<string, Paint>;
  /** From 1, in the order of the paints' sheet. */
  readonly paintNumbers: ReadonlyMap<string, number>;
  readonly likely: Likely;
  readonly areas: AreaSheet;
  readonly zones: ZoneSheet;
  readonly units: UnitTable;
}

/** One row for each paint of each step of each recipe. */
export function writeLines(inputs: LineInputs): LineTable {
  const table: LineTable = new SheetTable(sheetWords.lines);
  const { recipes, rows, schemes, paintNumbers, units } = inputs;
  for (const recipe of recipes) {
    const { number, figure, scheme, logged, lines } = recipe;
    const steps = pairSteps(lines, schemes.get(scheme)?.steps ?? []);
    const palettes = countPalettes(lines);
    const own =
      logged &&
      at(
        units.rows,
        rows.findIndex((one) => one.recipe === recipe),
      );
    for (const [index, line] of lines.entries()) {
      const { step, zone, layer, method, paint, mixShare } = line;
      const row = table.add({
        ...{ recipe: number, figure, scheme, unit: logged?.unit, step, zone, layer, method },
        ...{ paintNumber: paintNumbers.get(paint) ?? 0, paint, mixShare },
        ...{ palettes: palettes.get(paletteOf(line)) ?? 1, logged: logged?.figures[index] },
      });
      layDown(row, { line, step: steps[index], recipe, ...inputs });
      putOut(row, { line, recipe, ...inputs });
      multiply(row, units, own);
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
function layDown({ here, put }: LineRow, of: OneLine & { readonly step: Step | undefined }): void {
  const { line, step, recipe, paints, likely, zones } = of;
  const isUsual = {
    area: step?.areaShare === undefined,
    coats: step?.coats === undefined && line.coatsBecause === undefined,
    thin: (step?.thin ?? paints.get(line.paint)?.thin) === undefined,
  };
  put({
    areaCm2: zones.areaOf(recipe.figure, line.zone),
    areaShare: isUsual.area ? over(likely(`${line.layer} area`), num(100)) : line.areaShare,
    coats: isUsual.coats ? likely(`${line.layer} coats`) : line.coats,
    film: likely(`${line.method} wet film`),
    thin: isUsual.thin ? likely(`${line.layer} thin`) : line.thin,
  });
  const film = times(here('areaCm2'), here('areaShare'), here('coats'), here('film'), num(0.0001));
  put({ onFigureMl: times(over(film, plus(num(1), here('thin'))), here('mixShare')) });
}

/** What leaves the pot for one figure, and for one sitting. */
function putOut({ here, put }: LineRow, { line, recipe, likely, areas }: OneLine): void {
  const transfer = likely(`${line.method} transfer`);
  const target = areas.rowOf(recipe.figure).from('withBase');
  const isSpray = line.method === 'spray can' || line.method === 'airbrush';
  const caught = isSpray ? times(transfer, caughtOf(target, likely)) : transfer;
  const limit = line.method === 'airbrush' ? most(likely('most transfer of an airbrush'), transfer) : num(1);
  put({
    transfer: least(limit, caught),
    leftover: likely(`${line.method} leftover`),
    painter: likely('painter'),
    perFigureMl: () => times(over(here('onFigureMl'), here('transfer')), here('painter')),
    perSittingMl: () => times(over(here('leftover'), here('palettes')), here('painter')),
  });
}

/** A small target catches less of a spray. */
function caughtOf(target: Term, likely: Likely): Term {
  const caught = root(over(target, likely('full target of a spray')));
  return least(likely('most catch of a spray'), most(likely('least catch of a spray'), caught));
}

/** All figures and sittings of the recipe, and those that are left; of a unit that the log knows, by its own row. */
function multiply({ here, put }: LineRow, units: UnitTable, own: Row<KeyOf<'units'>> | undefined): void {
  const wanted = here('recipe');
  const stillToDo = { by: 'recipe', wanted, than: 'done', sign: '<', limit: here('step') } as const;
  const notLogged = (count: Term): Term => most(num(0), minus(count, here('logged')));
  const ml = (figures: Term, sittings: Term): Term =>
    plus(times(figures, here('perFigureMl')), times(sittings, here('perSittingMl')));
  put({
    figures: units.sumIf('recipe', wanted, 'count'),
    sittings: units.sumIf('recipe', wanted, 'sittings'),
    figuresLeft: own
      ? either(isBelow(own.from('done'), here('step')), notLogged(own.from('count')), num(0))
      : units.sumIfs(stillToDo, 'count'),
    sittingsLeft: () =>
      own ? roundUp(over(here('figuresLeft'), own.from('batch'))) : units.sumIfs(stillToDo, 'sittings'),
    putOutMl: () => ml(here('figures'), here('sittings')),
    leftMl: () => ml(here('figuresLeft'), here('sittingsLeft')),
  });
}
