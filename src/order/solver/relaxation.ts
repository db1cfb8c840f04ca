// Solver: a small program with its whole numbers let loose. In: columns and rows, bounds of the columns. Out: the least cost
// between those bounds, the values, and a bound that holds whatever was rounded on the way.

import type { Column } from './integer-program.js';
import type { ColumnBounds } from './propagate-bounds.js';
import { SafeBound } from './safe-dual-bound.js';
import type { SparseRow } from './sparse-rows.js';
import { DenseTable } from './tableau.js';
import type { Work } from './work.js';

/**
 * How far a value may lie outside its bounds, rows scaled so that their largest coefficient is about 1: less than what
 * rows may be missed by in the end, so that what keeps to a relaxation also keeps to the program.
 */
const tolerance = 1e-9;

/** A smaller coefficient is rounding, and no exchange is made on it. */
const leastPivot = 1e-9;

/** More exchanges than this for each row and column are going round in circles. */
const mostRounds = 20;

/**
 * `solved`: the values are the cheapest. `over`: nothing between the bounds costs no more than the cutoff, or nothing fits
 * at all. `lost`: rounding got the better of it, and nothing is known.
 */
export type Relaxed = 'solved' | 'over' | 'lost';

/**
 * The dual simplex method for bounded columns on a dense table, which begins where it last ended: after a bound is moved
 * a few exchanges do. Unknowns are the columns and, for each row, its sum. Those *aside* stand at one of their bounds;
 * each of the others, *in the base*, is a line of the table, a weighed sum of those aside.
 *
 * Source: Lemke 1954, Wagner 1958; in textbooks such as Chvátal 1983 (Linear Programming), chapters 8 and 10, here
 * from memory. All columns have finite bounds, so that a start is always at hand.
 */
export class Relaxation {
  readonly #bound: SafeBound;
  readonly #costs: Float64Array;
  readonly #rows: readonly SparseRow[];
  readonly #width: number;
  #height: number;
  /** Bounds of all unknowns, columns first. */
  readonly #low: Float64Array;
  readonly #high: Float64Array;
  readonly #table: DenseTable;
  /** What one more of each unknown aside costs. */
  readonly #price: Float64Array;
  readonly #aside: Int32Array;
  /** Where each of them stands, and whether that is its upper bound. */
  readonly #at: Float64Array;
  readonly #isHigh: Uint8Array;
  #base: Int32Array;
  #value: Float64Array;
  /** The rows that are in use. */
  #used: Int32Array;

  constructor(columns: readonly Column[], rows: readonly SparseRow[], work: Work) {
    const [width, height] = [columns.length, rows.length];
    this.#costs = Float64Array.from(columns, ({ cost }) => cost);
    this.#rows = rows;
    this.#width = width;
    this.#height = height;
    this.#low = Float64Array.from([...columns, ...this.#rows], ({ lower }) => lower);
    this.#high = Float64Array.from([...columns, ...this.#rows], ({ upper }) => upper);
    this.#table = new DenseTable(width, height, work);
    this.#price = new Float64Array(width);
    this.#aside = new Int32Array(width);
    this.#at = new Float64Array(width);
    this.#isHigh = new Uint8Array(width);
    this.#base = new Int32Array(height);
    this.#value = new Float64Array(height);
    this.#used = Int32Array.from(rows.keys());
    this.#bound = new SafeBound(this.#costs, this.#rows, { low: this.#low, high: this.#high }, work);
    this.reset();
  }

  /** Begins anew, with every column aside: what rounding has gathered in the table is gone. */
  reset(): void {
    this.#table.fill(Array.from(this.#used, (row) => this.#rows[row] as SparseRow));
    this.#price.set(this.#costs);
    for (let place = 0; place < this.#width; place++) this.#aside[place] = place;
    for (let line = 0; line < this.#height; line++) this.#base[line] = this.#width + (this.#used[line] ?? 0);
    this.#place();
  }

  /** Leaves out rows that do not bind where it stands and only bring the bound nearer: all but the first `kept`. */
  dropLoose(kept: number): void {
    const isKept = (unknown: number): boolean => unknown < this.#width + kept;
    const lines = Array.from(this.#base.keys()).filter((line) => isKept(this.#base[line] ?? 0));
    const dropped = new Set(this.#base.filter((unknown) => !isKept(unknown)));
    this.#used = this.#used.filter((row) => !dropped.has(this.#width + row));
    this.#table.keepLines(lines);
    this.#base = Int32Array.from(lines, (line) => this.#base[line] ?? 0);
    this.#value = Float64Array.from(lines, (line) => this.#value[line] ?? 0);
    this.#height = lines.length;
  }

  /** Other bounds for the columns, from now on. */
  setBounds(lower: Float64Array, upper: Float64Array): void {
    this.#low.set(lower);
    this.#high.set(upper);
    this.#place();
  }

  /** Searches for the least cost, as long as that may be no more than the cutoff. */
  relax(cutoff: number): Relaxed {
    for (let left = mostRounds * (this.#width + this.#height); left >= 0; left--) {
      const line = this.#farthestOut();
      if (line < 0) return 'solved';
      const place = this.#cheapestExchange(line);
      if (place < 0) return this.#isEmpty(line, cutoff) ? 'over' : 'lost';
      this.#exchange(line, place);
      if (this.#cost() > cutoff && this.leastCost() > cutoff) return 'over';
    }
    return 'lost';
  }

  /** Values of the columns. */
  readValues(into: Float64Array): void {
    for (let place = 0; place < this.#width; place++) {
      const unknown = this.#aside[place] ?? 0;
      if (unknown < this.#width) into[unknown] = this.#at[place] ?? 0;
    }
    for (let line = 0; line < this.#height; line++) {
      const unknown = this.#base[line] ?? 0;
      if (unknown < this.#width) into[unknown] = this.#value[line] ?? 0;
    }
  }

  /** What everything between the bounds costs at the least, safe from rounding: the weights are the prices of the rows aside. */
  leastCost(): number {
    this.#bound.begin();
    this.#weighAside();
    return this.#bound.end();
  }

  /** After a bound: moves those of whole columns to where nothing beyond them costs no more than the cutoff. */
  tighten(areWhole: readonly boolean[], cutoff: number, bounds: ColumnBounds): void {
    this.#bound.tighten(areWhole, cutoff, bounds);
  }

  /**
   * Whether nothing fits: an unknown stays out of its bounds whatever those aside do. Its line is a sum of rows, and with
   * enough weight on it the bound passes any cutoff.
   */
  #isEmpty(line: number, cutoff: number): boolean {
    const missing = Math.max(1, cutoff - this.leastCost() + 1);
    const weight = (2 * missing) / this.#outOf(line);
    this.#bound.begin();
    this.#weighAside(line, weight);
    const out = this.#base[line] ?? 0;
    if (out >= this.#width) this.#bound.weigh(out - this.#width, weight);
    return this.#bound.end() > cutoff;
  }

  /** The prices of the rows aside; less what a line of some weight takes of them. */
  #weighAside(line = 0, weight = 0): void {
    for (let place = 0; place < this.#width; place++) {
      const unknown = this.#aside[place] ?? 0;
      if (unknown < this.#width) continue;
      const taken = weight === 0 ? 0 : weight * this.#table.coefficient(line, place);
      this.#bound.weigh(unknown - this.#width, (this.#price[place] ?? 0) - taken);
    }
  }

  /** Puts those aside at the bound that their price asks for, and works out the others. */
  #place(): void {
    for (let place = 0; place < this.#width; place++) this.#placeAside(place);
    this.#table.multiply(this.#at, this.#value);
  }

  #placeAside(place: number): void {
    const unknown = this.#aside[place] ?? 0;
    const low = this.#low[unknown] ?? 0;
    const high = this.#high[unknown] ?? 0;
    const price = this.#price[place] ?? 0;
    if (low === Number.NEGATIVE_INFINITY) this.#isHigh[place] = 1;
    else if (high === Number.POSITIVE_INFINITY) this.#isHigh[place] = 0;
    else if (price !== 0) this.#isHigh[place] = price < 0 ? 1 : 0;
    this.#at[place] = this.#isHigh[place] === 1 ? high : low;
  }

  #cost(): number {
    let sum = 0;
    for (let place = 0; place < this.#width; place++)
      sum += (this.#price[place] ?? 0) * (this.#at[place] ?? 0);
    return sum;
  }

  /** How far a line's unknown lies under its lower bound (positive) or over its upper one (negative); else 0. */
  #outOf(line: number): number {
    const unknown = this.#base[line] ?? 0;
    const value = this.#value[line] ?? 0;
    const under = (this.#low[unknown] ?? 0) - value;
    if (under > 0) return under;
    return Math.min(0, (this.#high[unknown] ?? 0) - value);
  }

  /** The line whose unknown lies the farthest out of its bounds; -1 where all are within. */
  #farthestOut(): number {
    let [found, farthest] = [-1, tolerance];
    for (let line = 0; line < this.#height; line++) {
      const out = Math.abs(this.#outOf(line));
      if (out > farthest) [found, farthest] = [line, out];
    }
    return found;
  }

  /** The unknown aside that brings a line's unknown back at the least price; -1 where none can. */
  #cheapestExchange(line: number): number {
    const sign = Math.sign(this.#outOf(line));
    let [found, cheapest, largest] = [-1, Number.POSITIVE_INFINITY, 0];
    for (let place = 0; place < this.#width; place++) {
      const gain = sign * this.#table.coefficient(line, place);
      if (this.#isHigh[place] === 1 ? gain > -leastPivot : gain < leastPivot) continue;
      if (this.#isFixed(this.#aside[place] ?? 0)) continue;
      const size = Math.abs(gain);
      const price = Math.abs(this.#price[place] ?? 0) / size;
      if (price > cheapest || (price === cheapest && size <= largest)) continue;
      [found, cheapest, largest] = [place, price, size];
    }
    return found;
  }

  #isFixed(unknown: number): boolean {
    return this.#low[unknown] === this.#high[unknown];
  }

  /** A line's unknown goes aside, to the bound that it was out of; another comes into the base. */
  #exchange(line: number, place: number): void {
    const out = this.#outOf(line);
    const leaving = this.#base[line] ?? 0;
    const step = out / this.#table.coefficient(line, place);
    this.#table.addStep(place, step, this.#value);
    this.#value[line] = (this.#at[place] ?? 0) + step;
    this.#base[line] = this.#aside[place] ?? 0;
    this.#aside[place] = leaving;
    this.#isHigh[place] = out > 0 ? 0 : 1;
    this.#at[place] = (out > 0 ? this.#low : this.#high)[leaving] ?? 0;
    this.#table.exchange(line, place, this.#price);
  }
}
