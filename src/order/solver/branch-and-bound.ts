// Solver: branch and bound over small programs. In: columns, rows, how much work. Out: the best values, and whether they are
// proved; all in this thread, and the same on every machine.
import { at } from '../../model/at.js';
import { feasibilityTolerance, loosenCoveringRows } from './covering-rows.js';
import type { Column, IntegerProgram, Row } from './integer-program.js';
import { NodeQueue } from './node-queue.js';
import { presolve } from './presolve.js';
import type { ColumnBounds } from './propagate-bounds.js';
import {
  costless,
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

/** A node of the search tree: bounds of a subproblem's columns, tightened in place, and what nothing between them undercuts. */
interface Node extends ColumnBounds {
  readonly subproblem: Subproblem;
  readonly bound: number;
  /** Whether nothing of its subproblem was searched before. */
  readonly isRoot: boolean;
}

/** What a node leaves open, the one to search next last: two children, or itself as a subproblem of its own. */
type Children = readonly [] | readonly [Node] | readonly [farther: Node, nearer: Node];

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
 * column is branched on at its fraction. The child of the lesser bound is searched next, as long as there is one (a dive); then the
 * open node of the least bound. A node that leaves little open becomes a subproblem of its own. Columns need finite bounds.
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
  const isAll = searchFrom(rootOf(openSubproblem(whole, work), Number.NEGATIVE_INFINITY), search);
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

/** What costs more than this is no better than the incumbent. */
const cutoffOf = ({ incumbent, step }: Search): number =>
  incumbent.cost - (step === 0 ? costsWithin : step * (1 - roundedOff));

/** The same within a subproblem, whose costs come on top of what is fixed. */
const cutoffIn = ({ baseCost }: Subproblem, search: Search): number => cutoffOf(search) - baseCost;

function rootOf(subproblem: Subproblem, bound: number): Node {
  const lower = new Float64Array(subproblem.columns.length);
  const upper = Float64Array.from(subproblem.columns, (column) => column.upper);
  return { subproblem, lower, upper, bound, isRoot: true };
}

/** False where the work was done before the last node, or a node was lost: then the others are searched all the same. */
function searchFrom(root: Node, search: Search): boolean {
  const open = new NodeQueue<Node>();
  let isAll = true;
  let next: Node | undefined = root;
  while (next !== undefined) {
    if (search.work.touched > search.mostWork) return false;
    const children = searchNode(next, search);
    if (children === 'lost') isAll = false;
    else if (children.length === 2) open.add(children[0]);
    next = (children === 'lost' ? undefined : children.at(-1)) ?? open.take();
  }
  return isAll;
}

/** No children where a node is pruned, or its best is found. */
function searchNode(node: Node, search: Search): Children | 'lost' {
  const { subproblem, bound, isRoot } = node;
  if (bound > cutoffOf(search)) return [];
  const size = propagateNode(node, subproblem, search.work);
  if (size === undefined) return [];
  if (isMuchSmaller(size, subproblem)) return [rootOf(restrict(subproblem, node, search.work), bound)];
  const cutoff = cutoffIn(subproblem, search);
  const relaxed = isRoot ? relaxRoot(node, subproblem, cutoff) : relaxNode(node, subproblem, cutoff);
  if (relaxed !== 'optimal') return relaxed === 'pruned' ? [] : 'lost';
  return branch(node, search);
}

/** Of a node that has just been relaxed. */
function branch(node: Node, search: Search): Children | 'lost' {
  const { subproblem } = node;
  const { relaxation, areWhole, baseCost } = subproblem;
  const cutoff = cutoffIn(subproblem, search);
  const bound = relaxation.dualBound();
  if (bound > cutoff) return [];
  const values = new Float64Array(areWhole.length);
  relaxation.readValues(values);
  bringWithin(node, values);
  const column = chooseColumn(subproblem, values, cutoff - bound);
  if (column === undefined) {
    const isKept = keepIncumbent(values, subproblem, search);
    return isKept && bound > cutoffIn(subproblem, search) ? [] : 'lost';
  }
  const value = at(values, column);
  const [lower, upper] = [node.lower.slice(), node.upper.slice()];
  relaxation.fixByReducedCosts(areWhole, cutoff, { lower, upper });
  const bounds = relaxation.childBounds(column, value);
  const child = (of: number) => ({ subproblem, isRoot: false, bound: baseCost + Math.max(bound, of) });
  const down = { ...child(bounds.down), lower, upper: upper.slice() };
  const up = { ...child(bounds.up), lower: lower.slice(), upper };
  down.upper[column] = Math.floor(value);
  up.lower[column] = Math.floor(value) + 1;
  return up.bound < down.bound ? [down, up] : [up, down];
}

/** Values that rounding left a little out of their bounds would be branched on for ever. */
function bringWithin({ lower, upper }: ColumnBounds, values: Float64Array): void {
  for (let column = 0; column < values.length; column++)
    values[column] = Math.min(Math.max(at(values, column), at(lower, column)), at(upper, column));
}

/** The column to branch on: of the highest rank that which weighs the most; undefined where all are whole that must be. */
function chooseColumn(subproblem: Subproblem, values: Float64Array, room: number): number | undefined {
  const { areWhole, ranks } = subproblem;
  let [found, highest, most]: [number | undefined, number, number] = [undefined, 0, 0];
  for (let column = 0; column < values.length; column++) {
    const value = at(values, column);
    const fraction = value - Math.floor(value);
    const rank = at(ranks, column);
    if (!areWhole[column] || Math.min(fraction, 1 - fraction) <= wholeWithin || rank < highest) continue;
    const weight = weigh(column, fraction, { subproblem, room });
    if (rank === highest && weight <= most) continue;
    [found, highest, most] = [column, rank, weight];
  }
  return found;
}

interface Branching {
  readonly subproblem: Subproblem;
  /** From the bound to the cutoff: what raises the bound by more is pruned all the same. */
  readonly room: number;
}

/** By fraction and cost; what has no cost by what it raises the bound, on both sides. */
function weigh(column: number, fraction: number, { subproblem, room }: Branching): number {
  const { columns, ranks, relaxation } = subproblem;
  if (at(ranks, column) !== costless)
    return Math.min(fraction, 1 - fraction) * (1 + Math.abs(at(columns, column).cost));
  const { down, up } = relaxation.penalties(column);
  const raised = (by: number): number => Math.min(room, by) + wholeWithin * (1 + room);
  return raised(down * fraction) * raised(up * (1 - fraction));
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
