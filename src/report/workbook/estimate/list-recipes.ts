// Report view: which work the workbook shows. In: the plan's units. Out: recipes, each written down once, rows of units,
// and what is too much for one workbook.
import type { UnitCost } from '../../../model/plan.js';
import type { Job, Line } from '../../../model/work.js';

/** A figure in a scheme, with the lines that all its units share; a unit that the log knows has one of its own. */
export interface Recipe {
  readonly number: number;
  readonly figure: string;
  readonly scheme: string;
  readonly lastStep: number;
  readonly lines: readonly Line[];
  readonly logged?: LoggedUnit;
}

/** A unit of which the log says how many figures have had what. */
interface LoggedUnit {
  readonly unit: string;
  /** Figures that have had each line's paint, in the order of the lines. */
  readonly figures: readonly number[];
}

/** One unit, or several put together past the bound. */
export interface UnitRow {
  readonly recipe: Recipe;
  /** Blank for several. */
  readonly unit: string;
  readonly units: number;
  readonly count: number;
  /** Undefined for several: their sittings are counted already. */
  readonly batch: number | undefined;
  readonly sittings: number;
  readonly done: number;
  readonly cashMinor: number;
}

export interface Recipes {
  readonly recipes: readonly Recipe[];
  readonly rows: readonly UnitRow[];
  /** Units whose recipe is past the bound: they count in the totals as the plan has them. */
  readonly leftOut: readonly UnitCost[];
}

/** So many lines of recipes and rows of units stand in the workbook. */
export interface Bounds {
  readonly lines: number;
  readonly units: number;
}

/** What opens at once in any spreadsheet program. */
const usualBounds: Bounds = { lines: 4000, units: 500 };

/** Recipes in the order in which the army meets them, and rows of units in the army's. An empty army gives neither. */
export function listRecipes(
  units: readonly UnitCost[],
  lastStepOf: (scheme: string) => number,
  bounds: Bounds = usualBounds,
): Recipes {
  const recipeOf = writeRecipes(lastStepOf, bounds.lines);
  const leftOut: UnitCost[] = [];
  const rows: UnitRow[] = [];
  const several = new Map<string, UnitRow>();
  for (const one of units) {
    const recipe = recipeOf.find(one);
    if (recipe === undefined) leftOut.push(one);
    else if (rows.length < bounds.units || recipe.logged !== undefined) rows.push(rowOf(one, recipe));
    else {
      const key = `${recipe.number}\n${one.job.done}`;
      const before = several.get(key);
      several.set(key, before === undefined ? rowOf(one, recipe) : together(before, rowOf(one, recipe)));
    }
  }
  return { recipes: recipeOf.recipes, rows: [...rows, ...several.values()], leftOut };
}

function rowOf({ unit, job, cashMinor }: UnitCost, recipe: Recipe): UnitRow {
  const { count, batch, done } = job;
  const sittings = Math.ceil(count / batch);
  return { recipe, unit: unit.unit, units: 1, count, batch, sittings, done, cashMinor };
}

function together(before: UnitRow, more: UnitRow): UnitRow {
  return {
    ...more,
    unit: '',
    units: before.units + 1,
    count: before.count + more.count,
    batch: undefined,
    sittings: before.sittings + more.sittings,
    cashMinor: before.cashMinor + more.cashMinor,
  };
}

/** Finds the recipe of a unit, writing it down at the first; undefined once too many lines stand there. */
function writeRecipes(lastStepOf: (scheme: string) => number, mostLines: number) {
  const recipes: Recipe[] = [];
  const known = new Map<string | Job, Recipe | undefined>();
  let lines = 0;
  const write = (job: Job, logged: LoggedUnit | undefined): Recipe | undefined => {
    lines += job.lines.length;
    if (lines > mostLines) return undefined;
    const { figure, scheme } = job;
    const recipe = { number: recipes.length + 1, figure, scheme, lastStep: lastStepOf(scheme) };
    recipes.push({ ...recipe, lines: job.lines, ...(logged === undefined ? {} : { logged }) });
    return recipes.at(-1);
  };
  const find = ({ unit, job }: UnitCost): Recipe | undefined => {
    if (known.has(job)) return known.get(job);
    const logged = isLogged(job, lastStepOf(job.scheme)) ? readLogged(unit.unit, job) : undefined;
    const key = logged === undefined ? `${job.figure}\n${job.scheme}` : job;
    const recipe = known.has(key) ? known.get(key) : write(job, logged);
    known.set(key, recipe);
    known.set(job, recipe);
    return recipe;
  };
  return { recipes, find };
}

/** True where what is left is not simply every line past the last step done. */
function isLogged({ lines, remaining, done, unfinished }: Job, lastStep: number): boolean {
  const asDone = lines.filter(({ step }) => step > done);
  const isSame = asDone.length === remaining.length && asDone.every((line, at) => line === remaining[at]);
  return !isSame || unfinished !== done < lastStep;
}

/** Lines of one paint in one step are logged together, so what is left stands in the order of the lines. */
function readLogged(unit: string, { lines, remaining, done, count }: Job): LoggedUnit {
  let at = 0;
  const figures = lines.map((line) => {
    const left = remaining[at];
    const isLeft = left !== undefined && left.step === line.step && left.paint === line.paint;
    if (isLeft) at++;
    return line.step <= done ? 0 : count - (isLeft ? left.figures : 0);
  });
  return { unit, figures };
}
