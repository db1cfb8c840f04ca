// Solver: branch and bound over small programs. In: columns, rows, how much work. Out: the best values, and whether they are
// proved; all in this thread, and the same on every machine.
import { at } from '../../model/at.js';
import { feasibilityTolerance, loosenCoveringRows } from './covering-rows.js';
import type { Column, IntegerProgram, Row } from './integer-program.js';
import { NodeQueue } from './node-queue.js';
import { presolve } from './presolve.js';
import type { ColumnBounds } from './propagate-bounds.js';
import {
  isMuchSmaller,
  openSubproblem,
  propagateNode,
  relaxNode,
  relaxRoot,
  restrict,
  type Subproblem,
} from './subproblem.js';
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

/** A node of the search tree: bounds of the columns, tightened in place, and what nothing between them undercuts. */
interface Node extends ColumnBounds {
  readonly bound: number;
}

/** What the whole search has at hand. */
interface Search {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** All costs are whole multiples of this; 0 where they are not whole. */
  readonly step: number;
  /** The best solution so far; a start counts. */
  readonly incumbent: { values: readonly number[] | undefined; cost: number };
  readonly work: Work;
  readonly mostWork: number;
}

/**
 * Branch and bound: a node is pruned where its relaxation shows that nothing in it is cheaper than the incumbent; else one
 * column is branched on at its fraction. The nearer child is searched next, as long as there is one (a dive); then the open node
 * of the least bound. A node that leaves little open becomes a subproblem of its own. Columns need finite bounds.
 * `not proved`: the work was done, or rounding left something in doubt.
 *
 * Source: Land & Doig 1960 (An automatic method of solving discrete programming problems).
 */
export function branchAndBound(program: IntegerProgram, mostWork: number): Searched {
  const search = openSearch(program, mostWork);
  const { incumbent, work } = search;
  const lower = Float64Array.from(program.columns, (column) => column.lower);
  const upper = Float64Array.from(program.columns, (column) => column.upper);
  const rows = loosenCoveringRows(program.rows, program.columns);
  const whole = presolve({ columns: program.columns, rows }, { lower, upper });
  const isAll = searchSubproblem(openSubproblem(whole, work), search);
  const { values, cost } = incumbent;
  if (values === undefined) return { state: isAll ? 'impossible' : 'none found', work: work.touched };
  return { state: isAll ? 'proved' : 'not proved', values, cost, work: work.touched };
}

/** A start counts where it is feasible. */
function openSearch({ columns, rows, start: given }: IntegerProgram, mostWork: number): Search {
  const isKept =
    given !== undefined &&
    columns.every(({ lower, upper }, column) => isFeasible({ lower, upper, terms: [[column, 1]] }, given)) &&
    rows.every((row) => isFeasible(row, given));
  const start = isKept ? given : undefined;
  const step = stepOf(columns);
  const most = columns.reduce((sum, { cost, lower, upper }) => sum + Math.max(cost * lower, cost * upper), 0);
  // Without a start anything at all is better.
  const cost = start === undefined ? most + step + 1 : costOf(start, columns);
  return { columns, rows, step, incumbent: { values: start, cost }, work: { touched: 0 }, mostWork };
}

/** The largest whole number of which all costs are multiples; 0 where a cost is not whole, or not of something whole. */
function stepOf(columns: readonly Column[]): number {
  const areWhole = columns.every(({ cost, integer }) => Number.isInteger(cost) && (integer || cost === 0));
  if (!areWhole) return 0;
  return columns.reduce((step, { cost }) => commonDivisor(step, Math.abs(cost)), 0) || 1;
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));

/** What costs more than this, in a subproblem, is no better than the incumbent. */
function cutoffOf({ baseCost }: Subproblem, { incumbent, step }: Search): number {
  return incumbent.cost - baseCost - (step === 0 ? costsWithin : step * (1 - roundedOff));
}

/** False where the work was done before the last node, or a node was lost: then the others are searched all the same. */
function searchSubproblem(subproblem: Subproblem, search: Search): boolean {
  const lower = new Float64Array(subproblem.columns.length);
  const upper = Float64Array.from(subproblem.columns, (column) => column.upper);
  const open = new NodeQueue<Node>();
  let isAll = true;
  let next: Node | undefined = { lower, upper, bound: Number.NEGATIVE_INFINITY };
  while (next !== undefined) {
    if (search.work.touched > search.mostWork) return false;
    const children = searchNode(next, subproblem, search);
    if (children === 'lost') isAll = false;
    const [farther, nearer]: readonly Node[] = children === 'lost' ? [] : children;
    if (farther !== undefined) open.add(farther);
    next = nearer ?? open.take();
  }
  return isAll;
}

/** No children where a node is pruned, or its best is found; else two, the one to search first last. */
function searchNode(node: Node, subproblem: Subproblem, search: Search): readonly Node[] | 'lost' {
  if (node.bound > cutoffOf(subproblem, search)) return [];
  const size = propagateNode(node, subproblem, search.work);
  if (size === undefined) return [];
  if (isMuchSmaller(size, subproblem))
    return searchSubproblem(restrict(subproblem, node, search.work), search) ? [] : 'lost';
  const relaxed = relaxNode(node, subproblem, cutoffOf(subproblem, search));
  if (relaxed !== 'optimal') return relaxed === 'pruned' ? [] : 'lost';
  if (node.bound === Number.NEGATIVE_INFINITY) {
    const again = relaxRoot(subproblem, cutoffOf(subproblem, search));
    if (again !== 'optimal') return again === 'pruned' ? [] : 'lost';
    subproblem.relaxation.dropSlackCuts(subproblem.rows.length);
  }
  return branch(node, subproblem, search);
}

/** Of a node that has just been relaxed. */
function branch(node: Node, subproblem: Subproblem, search: Search): readonly Node[] | 'lost' {
  const { relaxation, areWhole } = subproblem;
  const bound = relaxation.dualBound();
  if (bound > cutoffOf(subproblem, search)) return [];
  const values = new Float64Array(areWhole.length);
  relaxation.readValues(values);
  bringWithin(node, values);
  const column = chooseColumn(subproblem, values);
  if (column === undefined) {
    const isKept = keepIncumbent(values, subproblem, search);
    return isKept && bound > cutoffOf(subproblem, search) ? [] : 'lost';
  }
  const value = at(values, column);
  const [lower, upper] = [node.lower.slice(), node.upper.slice()];
  relaxation.fixByReducedCosts(areWhole, cutoffOf(subproblem, search), { lower, upper });
  const down = { lower, upper: upper.slice(), bound };
  const up = { lower: lower.slice(), upper, bound };
  down.upper[column] = Math.floor(value);
  up.lower[column] = Math.floor(value) + 1;
  return value - Math.floor(value) > 0.5 ? [down, up] : [up, down];
}

/** Values that rounding left a little out of their bounds would be branched on for ever. */
function bringWithin({ lower, upper }: ColumnBounds, values: Float64Array): void {
  for (let column = 0; column < values.length; column++)
    values[column] = Math.min(Math.max(at(values, column), at(lower, column)), at(upper, column));
}

/** The column whose fraction weighs the most; undefined where all are whole that must be. */
function chooseColumn({ areWhole, priorities }: Subproblem, values: Float64Array): number | undefined {
  let found: number | undefined;
  let most = 0;
  for (let column = 0; column < values.length; column++) {
    const value = at(values, column);
    const fraction = value - Math.floor(value);
    const apart = Math.min(fraction, 1 - fraction);
    const weight = apart * at(priorities, column);
    if (!areWhole[column] || apart <= wholeWithin || weight <= most) continue;
    found = column;
    most = weight;
  }
  return found;
}

/** Whole values become the incumbent if they are cheaper, once they are rounded; false where they are not feasible then. */
function keepIncumbent(
  values: Float64Array,
  subproblem: Subproblem,
  { columns, rows, incumbent }: Search,
): boolean {
  const found = subproblem.areWhole.every((isWhole) => isWhole) ? values : withRest(values, subproblem);
  if (found === undefined) return false;
  const kept = Array.from(subproblem.postsolve(found), (value, column) =>
    at(columns, column).integer ? Math.round(value) + 0 : value,
  );
  if (!rows.every((row) => isFeasible(row, kept))) return false;
  const cost = costOf(kept, columns);
  if (cost < incumbent.cost || incumbent.values === undefined)
    [incumbent.values, incumbent.cost] = [kept, cost];
  return true;
}

/** The whole columns rounded, and the others as cheap as these allow; undefined where these allow nothing. */
function withRest(values: Float64Array, { columns, relaxation }: Subproblem): Float64Array | undefined {
  const bounds = (of: 'lower' | 'upper'): Float64Array =>
    Float64Array.from(columns, (column, place) =>
      column.integer ? Math.round(at(values, place)) : column[of],
    );
  relaxation.setBounds(bounds('lower'), bounds('upper'));
  if (relaxation.solve(Number.MAX_VALUE) !== 'optimal') return undefined;
  relaxation.readValues(values);
  return values;
}

function isFeasible({ lower, upper, terms }: Row, values: readonly number[]): boolean {
  const sum = terms.reduce((total, [column, coefficient]) => total + coefficient * at(values, column), 0);
  return sum >= lower - feasibilityTolerance && sum <= upper + feasibilityTolerance;
}

const costOf = (values: readonly number[], columns: readonly Column[]): number =>
  columns.reduce((sum, { cost }, column) => sum + cost * at(values, column), 0);
