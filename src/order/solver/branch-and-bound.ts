// Solver: small programs searched to the end. In: columns, rows, how much work. Out: the best values, and whether they are
// proved; all in this thread, and the same on every machine.

import { loosenCovers, rowsWithin } from './covering-rows.js';
import type { Column, IntegerProgram, Row } from './integer-program.js';
import { BranchQueue } from './node-queue.js';
import { shrinkProgram } from './presolve.js';
import type { ColumnBounds } from './propagate-bounds.js';
import { closeBranch, isMuchSmaller, openPart, type Part, relaxBranch, shrinkPart } from './subproblem.js';
import type { Work } from './work.js';

/** Nearer than this to a whole number is whole. */
const wholeWithin = 1e-9;

/** Costs nearer than this are the same, where they are not whole. */
const costsWithin = 1e-6;

/** Of a step of whole costs, what rounding may have taken from a bound. */
const roundedOff = 1e-4;

/** What a search found; `work` counts the coefficients that it touched. */
export type Searched = { readonly work: number } & (
  | { readonly state: 'proved' | 'not proved'; readonly values: readonly number[]; readonly cost: number }
  | { readonly state: 'none found' }
  | { readonly state: 'impossible' }
);

/** Bounds between which to search, brought nearer in place, and what nothing there undercuts. */
interface Branch extends ColumnBounds {
  readonly leastCost: number;
}

/** What the whole search has at hand. */
interface Search {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** All costs are whole multiples of this; 0 where they are not whole. */
  readonly step: number;
  /** The best so far; a start counts. */
  readonly best: { values: readonly number[] | undefined; cost: number };
  readonly work: Work;
  readonly mostWork: number;
}

/**
 * Branch and bound: what lies between some bounds of the columns is left aside where its relaxation shows that nothing there
 * is cheaper than the best; else one column is split at its fraction. The nearer half is searched next, as long as it may hold
 * anything; then what has the lowest bound of all that waits. A branch that leaves little open becomes a program of its own.
 * Columns need finite bounds. `not proved`: the work was done, or rounding left something in doubt.
 *
 * Source: Land & Doig 1960 (An automatic method of solving discrete programming problems).
 */
export function searchTree(program: IntegerProgram, mostWork: number): Searched {
  const search = openSearch(program, mostWork);
  const { best, work } = search;
  const lower = Float64Array.from(program.columns, (column) => column.lower);
  const upper = Float64Array.from(program.columns, (column) => column.upper);
  const rows = loosenCovers(program.rows, program.columns);
  const whole = shrinkProgram({ columns: program.columns, rows }, { lower, upper });
  const isAll = searchPart(openPart(whole, work), search);
  if (best.values === undefined) return { state: isAll ? 'impossible' : 'none found', work: work.touched };
  return { state: isAll ? 'proved' : 'not proved', values: best.values, cost: best.cost, work: work.touched };
}

/** A start counts where it keeps to bounds and rows. */
function openSearch({ columns, rows, start: given }: IntegerProgram, mostWork: number): Search {
  const isKept =
    given !== undefined &&
    columns.every(({ lower, upper }, at) => isWithin({ lower, upper, terms: [[at, 1]] }, given)) &&
    rows.every((row) => isWithin(row, given));
  const start = isKept ? given : undefined;
  const step = stepOf(columns);
  const most = columns.reduce((sum, { cost, lower, upper }) => sum + Math.max(cost * lower, cost * upper), 0);
  // Without a start anything at all is better.
  const best = { values: start, cost: start === undefined ? most + step + 1 : costOf(start, columns) };
  return { columns, rows, step, best, work: { touched: 0 }, mostWork };
}

/** The largest whole number of which all costs are multiples; 0 where a cost is not whole, or not of something whole. */
function stepOf(columns: readonly Column[]): number {
  const areWhole = columns.every(({ cost, integer }) => Number.isInteger(cost) && (integer || cost === 0));
  if (!areWhole) return 0;
  return columns.reduce((step, { cost }) => commonDivisor(step, Math.abs(cost)), 0) || 1;
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));

/** What costs more than this, in a part, is no better than the best. */
function cutoffOf({ baseCost }: Part, { best, step }: Search): number {
  return best.cost - baseCost - (step === 0 ? costsWithin : step * (1 - roundedOff));
}

/** False where the work was done before the last branch, or a branch was lost: then the others are searched all the same. */
function searchPart(part: Part, search: Search): boolean {
  const lower = new Float64Array(part.columns.length);
  const upper = Float64Array.from(part.columns, (column) => column.upper);
  const waiting = new BranchQueue<Branch>();
  let isAll = true;
  let next: Branch | undefined = { lower, upper, leastCost: Number.NEGATIVE_INFINITY };
  while (next !== undefined) {
    if (search.work.touched > search.mostWork) return false;
    const halves = searchBranch(next, part, search);
    if (halves === 'lost') isAll = false;
    const [farther, nearer]: readonly Branch[] = halves === 'lost' ? [] : halves;
    if (farther !== undefined) waiting.add(farther);
    next = nearer ?? waiting.take();
  }
  return isAll;
}

/** Nothing where a branch holds nothing better, or its best is found; else its two halves, the one to search first last. */
function searchBranch(branch: Branch, part: Part, search: Search): readonly Branch[] | 'lost' {
  if (branch.leastCost > cutoffOf(part, search)) return [];
  const size = closeBranch(branch, part, search.work);
  if (size === undefined) return [];
  if (isMuchSmaller(size, part))
    return searchPart(shrinkPart(part, branch, search.work), search) ? [] : 'lost';
  const relaxed = relaxBranch(branch, part, cutoffOf(part, search));
  if (relaxed !== 'solved') return relaxed === 'over' ? [] : 'lost';
  const isWholePart = branch.leastCost === Number.NEGATIVE_INFINITY;
  if (isWholePart) part.relaxation.dropLoose(part.rows.length);
  return splitBranch(branch, part, search);
}

/** A branch that has just been relaxed. */
function splitBranch(branch: Branch, part: Part, search: Search): readonly Branch[] | 'lost' {
  const { relaxation, areWhole } = part;
  const leastCost = relaxation.leastCost();
  if (leastCost > cutoffOf(part, search)) return [];
  const values = new Float64Array(areWhole.length);
  relaxation.readValues(values);
  bringWithin(branch, values);
  const split = chooseSplit(part, values);
  if (split === undefined) {
    const isKept = keepValues(values, part, search);
    return isKept && leastCost > cutoffOf(part, search) ? [] : 'lost';
  }
  const value = values[split] ?? 0;
  const [lower, upper] = [branch.lower.slice(), branch.upper.slice()];
  relaxation.tighten(areWhole, cutoffOf(part, search), { lower, upper });
  const under = { lower, upper: upper.slice(), leastCost };
  const over = { lower: lower.slice(), upper, leastCost };
  under.upper[split] = Math.floor(value);
  over.lower[split] = Math.floor(value) + 1;
  return value - Math.floor(value) > 0.5 ? [under, over] : [over, under];
}

/** Values that rounding left a little out of their bounds would be split for ever. */
function bringWithin({ lower, upper }: ColumnBounds, values: Float64Array): void {
  for (let place = 0; place < values.length; place++)
    values[place] = Math.min(Math.max(values[place] ?? 0, lower[place] ?? 0), upper[place] ?? 0);
}

/** The column whose fraction weighs the most; undefined where all are whole that must be. */
function chooseSplit({ areWhole, weights }: Part, values: Float64Array): number | undefined {
  let found: number | undefined;
  let most = 0;
  for (let place = 0; place < values.length; place++) {
    const value = values[place] ?? 0;
    const fraction = value - Math.floor(value);
    const apart = Math.min(fraction, 1 - fraction);
    const weight = apart * (weights[place] ?? 0);
    if (!areWhole[place] || apart <= wholeWithin || weight <= most) continue;
    found = place;
    most = weight;
  }
  return found;
}

/** Values that are whole become the best, once they are rounded; false where they do not keep to a row then. */
function keepValues(values: Float64Array, part: Part, { columns, rows, best }: Search): boolean {
  const found = part.areWhole.every((isWhole) => isWhole) ? values : withRest(values, part);
  if (found === undefined) return false;
  const kept = Array.from(part.lift(found), (value, place) =>
    columns[place]?.integer ? Math.round(value) + 0 : value,
  );
  if (!rows.every((row) => isWithin(row, kept))) return false;
  const cost = costOf(kept, columns);
  if (cost < best.cost || best.values === undefined) [best.values, best.cost] = [kept, cost];
  return true;
}

/** The whole columns rounded, and the others as cheap as these allow; undefined where these allow nothing. */
function withRest(values: Float64Array, { columns, relaxation }: Part): Float64Array | undefined {
  const bounds = (of: 'lower' | 'upper'): Float64Array =>
    Float64Array.from(columns, (column, place) =>
      column.integer ? Math.round(values[place] ?? 0) : column[of],
    );
  relaxation.setBounds(bounds('lower'), bounds('upper'));
  if (relaxation.relax(Number.MAX_VALUE) !== 'solved') return undefined;
  relaxation.readValues(values);
  return values;
}

function isWithin({ lower, upper, terms }: Row, values: readonly number[]): boolean {
  const sum = terms.reduce((total, [column, coefficient]) => total + coefficient * (values[column] ?? 0), 0);
  return sum >= lower - rowsWithin && sum <= upper + rowsWithin;
}

const costOf = (values: readonly number[], columns: readonly Column[]): number =>
  columns.reduce((sum, { cost }, place) => sum + cost * (values[place] ?? 0), 0);
