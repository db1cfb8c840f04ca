// Solver: small programs searched to the end. In: columns, rows, how much work. Out: the best values, and whether they are
// proved; all in this thread, and the same on every machine.
import type { Column, IntegerProgram, Row } from './integer-program.js';
import { Relaxation } from './relaxation.js';
import { roundRows } from './round-rows.js';

/** Nearer than this to a whole number is whole. */
const wholeWithin = 1e-9;

/** Rows are kept to within this, as volumes are that count as the same. */
const rowsWithin = 1e-6;

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

/** Part of the search: bounds of the columns, and what nothing within them undercuts. */
interface Branch {
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  readonly leastCost: number;
}

/** The best so far; a start counts. */
interface Best {
  values: readonly number[] | undefined;
  cost: number;
}

/** What a search needs at hand. */
interface Searching {
  readonly columns: readonly Column[];
  /** As given, without those that rounding added. */
  readonly rows: readonly Row[];
  readonly relaxation: Relaxation;
  /** All costs are whole multiples of this; 0 where they are not whole. */
  readonly step: number;
  readonly best: Best;
}

/**
 * Branch and bound: what lies between some bounds of the columns is left aside where its relaxation shows that nothing there
 * is cheaper than the best; else one column is split at its fraction, the nearer half searched first. Rows from rounding
 * bring the relaxation close enough that small orders take a few dozen branches. Columns need finite bounds. `not proved`:
 * the work was done, or rounding left something in doubt.
 *
 * Source: Land & Doig 1960 (An automatic method of solving discrete programming problems).
 */
export function searchTree(program: IntegerProgram, mostWork: number): Searched {
  const searching = openSearch(program);
  const isAll = searchAll(searching, mostWork);
  const { best, relaxation } = searching;
  const { work } = relaxation;
  if (best.values === undefined) return { state: isAll ? 'impossible' : 'none found', work };
  return { state: isAll ? 'proved' : 'not proved', values: best.values, cost: best.cost, work };
}

/** False where the work was done before the last branch, or a branch was lost. */
function searchAll(searching: Searching, mostWork: number): boolean {
  const { columns, relaxation } = searching;
  const lower = Float64Array.from(columns, (column) => column.lower);
  const upper = Float64Array.from(columns, (column) => column.upper);
  const branches: Branch[] = [{ lower, upper, leastCost: Number.NEGATIVE_INFINITY }];
  for (let branch = branches.pop(); branch !== undefined; branch = branches.pop()) {
    if (branch.leastCost > cutoffOf(searching)) continue;
    if (relaxation.work > mostWork) return false;
    const parts = searchBranch(branch, searching);
    if (parts === 'lost') return false;
    branches.push(...parts);
  }
  return true;
}

function openSearch(program: IntegerProgram): Searching {
  const { columns, rows, start } = program;
  const step = stepOf(columns);
  const most = columns.reduce((sum, { cost, lower, upper }) => sum + Math.max(cost * lower, cost * upper), 0);
  return {
    columns,
    rows,
    relaxation: new Relaxation(columns, [...rows, ...roundRows(program)]),
    step,
    // Without a start anything at all is better.
    best: { values: start, cost: start === undefined ? most + step + 1 : costOf(start, columns) },
  };
}

/** The largest whole number of which all costs are multiples; 0 where a cost is not whole, or not of something whole. */
function stepOf(columns: readonly Column[]): number {
  const areWhole = columns.every(({ cost, integer }) => Number.isInteger(cost) && (integer || cost === 0));
  if (!areWhole) return 0;
  return columns.reduce((step, { cost }) => commonDivisor(step, Math.abs(cost)), 0) || 1;
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));

/** What costs more than this is no better than the best. */
function cutoffOf({ best, step }: Searching): number {
  return step === 0 ? best.cost - costsWithin : best.cost - step * (1 - roundedOff);
}

/** Nothing where a branch holds nothing better, or its best is found; else its two halves, the one to search first last. */
function searchBranch(branch: Branch, searching: Searching): readonly Branch[] | 'lost' {
  const { columns, relaxation } = searching;
  const relaxed = relaxBranch(branch, searching);
  if (relaxed !== 'solved') return relaxed === 'over' ? [] : 'lost';
  const leastCost = relaxation.leastCost();
  if (leastCost > cutoffOf(searching)) return [];
  const values = new Float64Array(columns.length);
  relaxation.readValues(values);
  const split = chooseSplit(columns, values);
  if (split === undefined) {
    const isKept = keepValues(values, searching);
    return isKept && leastCost > cutoffOf(searching) ? [] : 'lost';
  }
  const value = values[split] ?? 0;
  const [upper, lower] = [branch.upper.slice(), branch.lower.slice()];
  upper[split] = Math.floor(value);
  lower[split] = Math.floor(value) + 1;
  const under = { lower: branch.lower, upper, leastCost };
  const over = { lower, upper: branch.upper, leastCost };
  return value - Math.floor(value) > 0.5 ? [under, over] : [over, under];
}

/** Relaxes once more from the beginning where rounding has gathered. */
function relaxBranch({ lower, upper }: Branch, searching: Searching): ReturnType<Relaxation['relax']> {
  const { relaxation } = searching;
  relaxation.setBounds(lower, upper);
  const relaxed = relaxation.relax(cutoffOf(searching));
  if (relaxed !== 'lost') return relaxed;
  relaxation.reset();
  return relaxation.relax(cutoffOf(searching));
}

/** The column with a fraction whose whole costs the most; undefined where all are whole that must be. */
function chooseSplit(columns: readonly Column[], values: Float64Array): number | undefined {
  let [found, most] = [-1, 0];
  for (const [place, { cost, integer }] of columns.entries()) {
    const value = values[place] ?? 0;
    const fraction = value - Math.floor(value);
    const apart = Math.min(fraction, 1 - fraction);
    if (!integer || apart <= wholeWithin) continue;
    const weight = apart * (1 + Math.abs(cost));
    if (weight > most) [found, most] = [place, weight];
  }
  return found < 0 ? undefined : found;
}

/** Values that are whole become the best, once they are rounded; false where they do not keep to a row then. */
function keepValues(values: Float64Array, searching: Searching): boolean {
  const { columns, rows, best } = searching;
  const kept = columns.every(({ integer }) => integer)
    ? Array.from(values, (value) => Math.round(value) + 0)
    : withRest(values, searching);
  if (kept === undefined || !rows.every((row) => isWithin(row, kept))) return false;
  const cost = costOf(kept, columns);
  if (cost < best.cost || best.values === undefined) [best.values, best.cost] = [kept, cost];
  return true;
}

/** The whole columns rounded, and the others as cheap as these allow; undefined where these allow nothing. */
function withRest(values: Float64Array, { columns, relaxation }: Searching): number[] | undefined {
  const round = (value: number, place: number): number =>
    columns[place]?.integer ? Math.round(value) : value;
  const bounds = (of: 'lower' | 'upper'): Float64Array =>
    Float64Array.from(columns, (column, place) =>
      column.integer ? Math.round(values[place] ?? 0) : column[of],
    );
  relaxation.setBounds(bounds('lower'), bounds('upper'));
  if (relaxation.relax(Number.MAX_VALUE) !== 'solved') return undefined;
  relaxation.readValues(values);
  return Array.from(values, round);
}

function isWithin({ lower, upper, terms }: Row, values: readonly number[]): boolean {
  const sum = terms.reduce((total, [column, coefficient]) => total + coefficient * (values[column] ?? 0), 0);
  return sum >= lower - rowsWithin && sum <= upper + rowsWithin;
}

const costOf = (values: readonly number[], columns: readonly Column[]): number =>
  columns.reduce((sum, { cost }, place) => sum + cost * (values[place] ?? 0), 0);
