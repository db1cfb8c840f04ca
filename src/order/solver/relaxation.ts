// Solver: the linear relaxation of a small program. In: columns and rows, bounds of the columns. Out: the least cost between
// those bounds, the values, and a dual bound that rounding can't make too high.
import { at, indexAt, numberAt } from '../../model/at.js';
import type { Column } from './integer-program.js';
import type { ColumnBounds } from './propagate-bounds.js';
import { SafeDualBound } from './safe-dual-bound.js';
import type { SparseRow } from './sparse-rows.js';
import { Tableau } from './tableau.js';
import type { Work } from './work.js';

/**
 * How far a value may lie outside its bounds, rows scaled so that their largest coefficient is about 1: less than what
 * rows may be missed by in the end, so that what is feasible in a relaxation is so in the program.
 */
const primalTolerance = 1e-9;

/** A smaller coefficient is rounding, and no pivot is made on it. */
const leastPivot = 1e-9;

/** More pivots than this for each row and column are cycling. */
const mostPivots = 20;

/**
 * `optimal`: the values are the cheapest. `pruned`: between the bounds nothing costs as little as the cutoff, or nothing is
 * feasible at all. `failed`: rounding got the better of it, and nothing is known.
 */
export type Relaxed = 'optimal' | 'pruned' | 'failed';

/**
 * The dual simplex method for bounded variables, on a dense tableau, warm-started: after a bound is moved it goes on from the
 * last basis, which stays dual feasible, so that a few pivots do. Variables are the columns and, as slacks, the sum of
 * each row. A nonbasic variable stands at one of its bounds; a basic one has a line of the tableau.
 *
 * Source: Lemke 1954, Wagner 1958; in textbooks such as Chvátal 1983 (Linear Programming), chapters 8 and 10, here
 * from memory. All columns have finite bounds, so the slack basis can always be made dual feasible.
 */
export class Relaxation {
  readonly #bound: SafeDualBound;
  readonly #work: Work;
  readonly #costs: Float64Array;
  readonly #rows: SparseRow[];
  readonly #width: number;
  #height: number;
  /** Bounds of all variables, columns first. */
  readonly #bounds: { low: Float64Array; high: Float64Array };
  readonly #tableau: Tableau;
  readonly #reducedCosts: Float64Array;
  /** The nonbasic variables by place: which, where each stands, and whether that is its upper bound. */
  readonly #nonbasic: Int32Array;
  readonly #nonbasicValues: Float64Array;
  readonly #isAtUpper: Uint8Array;
  /** The basic variables by line. */
  #basic: Int32Array;
  #basicValues: Float64Array;
  /** The rows that are in use. */
  #used: Int32Array;

  constructor(columns: readonly Column[], rows: readonly SparseRow[], work: Work) {
    const [width, height] = [columns.length, rows.length];
    this.#work = work;
    this.#costs = Float64Array.from(columns, ({ cost }) => cost);
    this.#rows = [...rows];
    this.#width = width;
    this.#height = height;
    this.#bounds = boundsOf([...columns, ...rows]);
    this.#tableau = new Tableau(width, height, work);
    this.#reducedCosts = new Float64Array(width);
    this.#nonbasic = new Int32Array(width);
    this.#nonbasicValues = new Float64Array(width);
    this.#isAtUpper = new Uint8Array(width);
    this.#basic = new Int32Array(height);
    this.#basicValues = new Float64Array(height);
    this.#used = Int32Array.from(rows.keys());
    this.#bound = new SafeDualBound(this.#costs, this.#rows, this.#bounds, work);
    this.restart();
  }

  /** Begins anew from the slack basis: what rounding has gathered in the tableau is gone. */
  restart(): void {
    this.#tableau.fill(Array.from(this.#used, (row) => at(this.#rows, row)));
    this.#reducedCosts.set(this.#costs);
    for (let place = 0; place < this.#width; place++) this.#nonbasic[place] = place;
    for (let line = 0; line < this.#height; line++)
      this.#basic[line] = this.#width + indexAt(this.#used, line);
    this.#computeValues();
  }

  /** Adds cuts, each as a line of the present basis: what it says of the nonbasic variables. */
  addRows(rows: readonly SparseRow[]): void {
    const { low, high } = boundsOf(rows);
    this.#bounds.low = concat(this.#bounds.low, low);
    this.#bounds.high = concat(this.#bounds.high, high);
    const first = this.#rows.length;
    const added = Int32Array.from(rows.keys(), (row) => first + row);
    this.#rows.push(...rows);
    this.#used = Int32Array.from([...this.#used, ...added]);
    this.#tableau.addLines(rows, this.#places());
    this.#basic = Int32Array.from([...this.#basic, ...added.map((row) => this.#width + row)]);
    this.#height = this.#basic.length;
    this.#basicValues = new Float64Array(this.#height);
    this.#tableau.multiply(this.#nonbasicValues, this.#basicValues);
  }

  /** Where each column stands: its place where it is nonbasic; else its line, from -1 down. */
  #places(): Int32Array {
    const places = new Int32Array(this.#width);
    for (const [place, variable] of this.#nonbasic.entries())
      if (variable < this.#width) places[variable] = place;
    for (const [line, variable] of this.#basic.entries())
      if (variable < this.#width) places[variable] = -1 - line;
    return places;
  }

  /** Drops the cuts, which are all rows but the first `kept`, that are slack at the present basis. */
  dropSlackCuts(kept: number): void {
    const isKept = (variable: number): boolean => variable < this.#width + kept;
    const lines = Array.from(this.#basic.keys()).filter((line) => isKept(indexAt(this.#basic, line)));
    const dropped = new Set(this.#basic.filter((variable) => !isKept(variable)));
    this.#used = this.#used.filter((row) => !dropped.has(this.#width + row));
    this.#tableau.keepLines(lines);
    this.#basic = Int32Array.from(lines, (line) => indexAt(this.#basic, line));
    this.#basicValues = Float64Array.from(lines, (line) => numberAt(this.#basicValues, line));
    this.#height = lines.length;
  }

  /** Other bounds for the columns, from now on. */
  setBounds(lower: Float64Array, upper: Float64Array): void {
    this.#bounds.low.set(lower);
    this.#bounds.high.set(upper);
    this.#computeValues();
  }

  /** Searches for the least cost, as long as that may be no more than the cutoff. */
  solve(cutoff: number): Relaxed {
    for (let left = mostPivots * (this.#width + this.#height); left >= 0; left--) {
      const line = this.#leavingLine();
      if (line < 0) return 'optimal';
      const place = this.#enteringPlace(line);
      if (place < 0) return this.#isInfeasible(line, cutoff) ? 'pruned' : 'failed';
      this.#pivot(line, place);
      if (this.#objective() > cutoff && this.dualBound() > cutoff) return 'pruned';
    }
    return 'failed';
  }

  /** Values of the columns. */
  readValues(into: Float64Array): void {
    for (let place = 0; place < this.#width; place++) {
      const variable = indexAt(this.#nonbasic, place);
      if (variable < this.#width) into[variable] = numberAt(this.#nonbasicValues, place);
    }
    for (let line = 0; line < this.#height; line++) {
      const variable = indexAt(this.#basic, line);
      if (variable < this.#width) into[variable] = numberAt(this.#basicValues, line);
    }
  }

  /**
   * What moving a basic column by one, down and up, costs at the least: the ratio of the first pivot that would follow. 0 where the
   * column is not basic.
   *
   * Source: the penalties of Driebeck 1966 (An algorithm for the solution of mixed integer programming problems), from memory.
   */
  penalties(column: number): { readonly down: number; readonly up: number } {
    const line = this.#basic.indexOf(column);
    if (line < 0) return { down: 0, up: 0 };
    let [down, up] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (let place = 0; place < this.#width; place++) {
      const gain = this.#tableau.coefficient(line, place);
      if (Math.abs(gain) < leastPivot || this.#isFixed(indexAt(this.#nonbasic, place))) continue;
      const ratio = Math.abs(numberAt(this.#reducedCosts, place) / gain);
      if (gain > 0 === (this.#isAtUpper[place] === 0)) up = Math.min(up, ratio);
      else down = Math.min(down, ratio);
    }
    this.#work.touched += this.#width;
    return { down, up };
  }

  /** What everything costs at the least with a column at the whole number under its value at the most, or over it at the least. */
  childBounds(column: number, value: number): { readonly down: number; readonly up: number } {
    const line = this.#basic.indexOf(column);
    const { down, up } = this.penalties(column);
    const { low, high } = this.#bounds;
    const [least, most] = [numberAt(low, column), numberAt(high, column)];
    high[column] = Math.floor(value);
    const ofDown = this.#boundAlong(line, -down);
    high[column] = most;
    low[column] = Math.floor(value) + 1;
    const ofUp = this.#boundAlong(line, up);
    low[column] = least;
    return { down: ofDown, up: ofUp };
  }

  /** The dual bound by the present multipliers, some way along the ray of a line. */
  #boundAlong(line: number, weight: number): number {
    this.#bound.begin();
    this.#addMultipliers(Math.max(0, line), Number.isFinite(weight) && line >= 0 ? weight : 0);
    return this.#bound.end();
  }

  /** What everything between the bounds costs at the least. The multipliers are the reduced costs of nonbasic slacks. */
  dualBound(): number {
    this.#bound.begin();
    this.#addMultipliers();
    return this.#bound.end();
  }

  /** Reduced-cost fixing by the last dual bound: bounds of whole columns, moved in place. */
  fixByReducedCosts(areWhole: readonly boolean[], cutoff: number, bounds: ColumnBounds): void {
    this.#bound.fixByReducedCosts(areWhole, cutoff, bounds);
  }

  /**
   * Whether nothing is feasible: a basic variable stays out of its bounds whatever the nonbasic ones do. Its line is then a
   * Farkas proof, a dual ray: with enough weight on it the dual bound passes any cutoff.
   */
  #isInfeasible(line: number, cutoff: number): boolean {
    const missing = Math.max(1, cutoff - this.dualBound() + 1);
    const weight = (2 * missing) / this.#infeasibility(line);
    this.#bound.begin();
    this.#addMultipliers(line, weight);
    const leaving = indexAt(this.#basic, line);
    if (leaving >= this.#width) this.#bound.add(leaving - this.#width, weight);
    return this.#bound.end() > cutoff;
  }

  /** Multipliers of the rows whose slacks are nonbasic; less those of a ray, a line of some weight. */
  #addMultipliers(line = 0, weight = 0): void {
    for (let place = 0; place < this.#width; place++) {
      const variable = indexAt(this.#nonbasic, place);
      if (variable < this.#width) continue;
      const ofRay = weight === 0 ? 0 : weight * this.#tableau.coefficient(line, place);
      this.#bound.add(variable - this.#width, numberAt(this.#reducedCosts, place) - ofRay);
    }
  }

  /** Puts nonbasic variables at the bound that their reduced cost asks for, and works out the basic ones. */
  #computeValues(): void {
    for (let place = 0; place < this.#width; place++) this.#placeNonbasic(place);
    this.#tableau.multiply(this.#nonbasicValues, this.#basicValues);
  }

  #placeNonbasic(place: number): void {
    const variable = indexAt(this.#nonbasic, place);
    const low = numberAt(this.#bounds.low, variable);
    const high = numberAt(this.#bounds.high, variable);
    const reducedCost = numberAt(this.#reducedCosts, place);
    if (low === Number.NEGATIVE_INFINITY) this.#isAtUpper[place] = 1;
    else if (high === Number.POSITIVE_INFINITY) this.#isAtUpper[place] = 0;
    else if (reducedCost !== 0) this.#isAtUpper[place] = reducedCost < 0 ? 1 : 0;
    this.#nonbasicValues[place] = this.#isAtUpper[place] === 1 ? high : low;
  }

  #objective(): number {
    let sum = 0;
    for (let place = 0; place < this.#width; place++)
      sum += numberAt(this.#reducedCosts, place) * numberAt(this.#nonbasicValues, place);
    return sum;
  }

  /** How far a basic variable lies under its lower bound (positive) or over its upper one (negative); else 0. */
  #infeasibility(line: number): number {
    const variable = indexAt(this.#basic, line);
    const value = numberAt(this.#basicValues, line);
    const under = numberAt(this.#bounds.low, variable) - value;
    if (under > 0) return under;
    return Math.min(0, numberAt(this.#bounds.high, variable) - value);
  }

  /** The line whose variable leaves the basis: the one farthest out of its bounds; -1 where all are primal feasible. */
  #leavingLine(): number {
    let [found, farthest] = [-1, primalTolerance];
    for (let line = 0; line < this.#height; line++) {
      const out = Math.abs(this.#infeasibility(line));
      if (out > farthest) [found, farthest] = [line, out];
    }
    return found;
  }

  /** The place whose variable enters, by the dual ratio test, of equal ratios the largest pivot; -1 where none can. */
  #enteringPlace(line: number): number {
    const sign = Math.sign(this.#infeasibility(line));
    let [found, leastRatio, largest] = [-1, Number.POSITIVE_INFINITY, 0];
    for (let place = 0; place < this.#width; place++) {
      const gain = sign * this.#tableau.coefficient(line, place);
      if (this.#isAtUpper[place] === 1 ? gain > -leastPivot : gain < leastPivot) continue;
      if (this.#isFixed(indexAt(this.#nonbasic, place))) continue;
      const size = Math.abs(gain);
      const ratio = Math.abs(numberAt(this.#reducedCosts, place)) / size;
      if (ratio > leastRatio || (ratio === leastRatio && size <= largest)) continue;
      [found, leastRatio, largest] = [place, ratio, size];
    }
    return found;
  }

  #isFixed(variable: number): boolean {
    return this.#bounds.low[variable] === this.#bounds.high[variable];
  }

  /** A basic variable leaves for the bound that it was out of; a nonbasic one enters. */
  #pivot(line: number, place: number): void {
    const out = this.#infeasibility(line);
    const leaving = indexAt(this.#basic, line);
    const step = out / this.#tableau.coefficient(line, place);
    this.#tableau.addStep(place, step, this.#basicValues);
    this.#basicValues[line] = numberAt(this.#nonbasicValues, place) + step;
    this.#basic[line] = indexAt(this.#nonbasic, place);
    this.#nonbasic[place] = leaving;
    this.#isAtUpper[place] = out > 0 ? 0 : 1;
    this.#nonbasicValues[place] = numberAt(out > 0 ? this.#bounds.low : this.#bounds.high, leaving);
    this.#tableau.pivot(line, place, this.#reducedCosts);
  }
}

function boundsOf(all: readonly { readonly lower: number; readonly upper: number }[]) {
  return {
    low: Float64Array.from(all, ({ lower }) => lower),
    high: Float64Array.from(all, ({ upper }) => upper),
  };
}

const concat = (one: Float64Array, other: Float64Array): Float64Array => {
  const both = new Float64Array(one.length + other.length);
  both.set(one);
  both.set(other, one.length);
  return both;
};
