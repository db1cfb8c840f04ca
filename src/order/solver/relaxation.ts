// Solver: a small program with its whole numbers let loose. In: columns and rows, bounds of the columns. Out: the least cost
// between those bounds, the values, and a bound that holds whatever was rounded on the way.
import type { Column, Row } from './integer-program.js';

/** How far a value may lie outside its bounds, rows scaled so that their largest coefficient is about 1. */
const tolerance = 1e-7;

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
  /** Coefficients touched so far: the measure of time that is the same on every machine. */
  work = 0;

  readonly #costs: Float64Array;
  readonly #rows: readonly SparseRow[];
  readonly #width: number;
  readonly #height: number;
  /** Bounds of all unknowns, columns first. */
  readonly #low: Float64Array;
  readonly #high: Float64Array;
  /** Lines of #width coefficients. */
  readonly #table: Float64Array;
  /** What one more of each unknown aside costs. */
  readonly #price: Float64Array;
  readonly #aside: Int32Array;
  /** Where each of them stands, and whether that is its upper bound. */
  readonly #at: Float64Array;
  readonly #isHigh: Uint8Array;
  readonly #base: Int32Array;
  readonly #value: Float64Array;
  /** Scratch of bounds: what is left of each column's cost. */
  readonly #left: Float64Array;
  /** Scratch of exchanges: places of a line that are not 0. */
  readonly #filled: Int32Array;

  constructor(columns: readonly Column[], rows: readonly Row[]) {
    const [width, height] = [columns.length, rows.length];
    this.#costs = Float64Array.from(columns, ({ cost }) => cost);
    this.#rows = rows.map(scaleRow);
    this.#width = width;
    this.#height = height;
    this.#low = Float64Array.from([...columns, ...this.#rows], ({ lower }) => lower);
    this.#high = Float64Array.from([...columns, ...this.#rows], ({ upper }) => upper);
    this.#table = new Float64Array(width * height);
    this.#price = new Float64Array(width);
    this.#aside = new Int32Array(width);
    this.#at = new Float64Array(width);
    this.#isHigh = new Uint8Array(width);
    this.#base = new Int32Array(height);
    this.#value = new Float64Array(height);
    this.#left = new Float64Array(width);
    this.#filled = new Int32Array(width);
    this.reset();
  }

  /** Begins anew, with every column aside: what rounding has gathered in the table is gone. */
  reset(): void {
    this.#table.fill(0);
    for (const [line, { places, coefficients }] of this.#rows.entries()) {
      for (const [term, place] of places.entries())
        this.#table[line * this.#width + place] = coefficients[term] ?? 0;
      this.#base[line] = this.#width + line;
    }
    this.#price.set(this.#costs);
    for (let place = 0; place < this.#width; place++) this.#aside[place] = place;
    this.work += this.#table.length;
    this.#place();
  }

  /** Other bounds for the columns, from now on. */
  bound(lower: Float64Array, upper: Float64Array): void {
    this.#low.set(lower);
    this.#high.set(upper);
    this.#place();
  }

  /** Searches for the least cost, as long as that may be no more than the cutoff. */
  relax(cutoff: number): Relaxed {
    for (let left = mostRounds * (this.#width + this.#height); left > 0; left--) {
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

  /**
   * What everything between the bounds costs at the least. The table only proposes how much weight each row has; the
   * bound is worked out from the rows themselves and holds for any weights, so rounding can make it worse but not wrong.
   *
   * Source: weak duality; as a safe bound Neumaier & Shcherbina 2004 (Safe bounds in linear and mixed-integer programming).
   */
  leastCost(): number {
    return this.#weigh(-1, 0);
  }

  // The table may prove that nothing fits: the line of an unknown that stays out of its bounds whatever those aside do. With
  // enough weight on that line the bound passes any cutoff.
  #isEmpty(line: number, cutoff: number): boolean {
    const out = this.#outOf(line);
    const missing = Math.max(1, cutoff - this.leastCost() + 1);
    return this.#weigh(line, (2 * missing) / out) > cutoff;
  }

  /** The bound by the prices of the rows aside, and so much weight on the line of an unknown that is out of its bounds. */
  #weigh(line: number, weight: number): number {
    this.#left.set(this.#costs);
    const out = line < 0 ? 0 : (this.#base[line] ?? 0);
    let bound = out < this.#width ? 0 : this.#weighRow(out - this.#width, weight);
    for (let place = 0; place < this.#width; place++) {
      const unknown = this.#aside[place] ?? 0;
      if (unknown < this.#width) continue;
      const taken = line < 0 ? 0 : weight * (this.#table[line * this.#width + place] ?? 0);
      bound += this.#weighRow(unknown - this.#width, (this.#price[place] ?? 0) - taken);
    }
    return bound + this.#weighColumns();
  }

  /** What is left of each column's cost, at the bound where it is least. */
  #weighColumns(): number {
    let sum = 0;
    for (let place = 0; place < this.#width; place++) {
      const left = this.#left[place] ?? 0;
      sum += left * ((left > 0 ? this.#low : this.#high)[place] ?? 0);
    }
    this.work += this.#width;
    return sum;
  }

  #weighRow(row: number, weight: number): number {
    const end = (weight > 0 ? this.#low : this.#high)[this.#width + row] ?? 0;
    if (weight === 0 || !Number.isFinite(end)) return 0;
    const { places, coefficients } = this.#rows[row] ?? emptyRow;
    for (let term = 0; term < places.length; term++) {
      const place = places[term] ?? 0;
      this.#left[place] = (this.#left[place] ?? 0) - weight * (coefficients[term] ?? 0);
    }
    this.work += places.length;
    return weight * end;
  }

  /** Puts those aside at the bound that their price asks for, and works out the others. */
  #place(): void {
    for (let place = 0; place < this.#width; place++) this.#placeAside(place);
    for (let line = 0, start = 0; line < this.#height; line++, start += this.#width) {
      let sum = 0;
      for (let place = 0; place < this.#width; place++)
        sum += (this.#table[start + place] ?? 0) * (this.#at[place] ?? 0);
      this.#value[line] = sum;
    }
    this.work += this.#table.length;
  }

  #placeAside(place: number): void {
    const unknown = this.#aside[place] ?? 0;
    const [low, high, price] = [this.#low[unknown] ?? 0, this.#high[unknown] ?? 0, this.#price[place] ?? 0];
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
    const [unknown, value] = [this.#base[line] ?? 0, this.#value[line] ?? 0];
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
      const gain = sign * (this.#table[line * this.#width + place] ?? 0);
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
    const step = out / (this.#table[line * this.#width + place] ?? 1);
    for (let other = 0, at = place; other < this.#height; other++, at += this.#width)
      this.#value[other] = (this.#value[other] ?? 0) + step * (this.#table[at] ?? 0);
    this.#value[line] = (this.#at[place] ?? 0) + step;
    this.#base[line] = this.#aside[place] ?? 0;
    this.#aside[place] = leaving;
    this.#isHigh[place] = out > 0 ? 0 : 1;
    this.#at[place] = (out > 0 ? this.#low : this.#high)[leaving] ?? 0;
    this.#rewrite(line, place);
  }

  /** Writes the unknown that came into the base by the one that left, in every line and in the prices. */
  #rewrite(line: number, place: number): void {
    const [table, width, filled] = [this.#table, this.#width, this.#filled];
    const start = line * width;
    const pivot = table[start + place] ?? 1;
    let count = 0;
    for (let other = 0; other < width; other++) {
      const coefficient = table[start + other] ?? 0;
      if (coefficient === 0 || other === place) continue;
      table[start + other] = -coefficient / pivot;
      filled[count++] = other;
    }
    table[start + place] = 1 / pivot;
    for (let into = 0; into < this.#height * width; into += width) {
      if (into !== start) addLine(table, into, start, { place, filled, count });
    }
    const price = this.#price[place] ?? 0;
    this.#price[place] = price / pivot;
    for (let at = 0; at < count; at++) {
      const other = filled[at] ?? 0;
      this.#price[other] = (this.#price[other] ?? 0) + price * (table[start + other] ?? 0);
    }
    this.work += this.#height * count;
  }
}

interface Filled {
  readonly place: number;
  readonly filled: Int32Array;
  readonly count: number;
}

/** In one line, the unknown at a place replaced by another line. */
function addLine(table: Float64Array, into: number, from: number, { place, filled, count }: Filled): void {
  const factor = table[into + place] ?? 0;
  if (factor === 0) return;
  for (let at = 0; at < count; at++) {
    const other = filled[at] ?? 0;
    table[into + other] = (table[into + other] ?? 0) + factor * (table[from + other] ?? 0);
  }
  table[into + place] = factor * (table[from + place] ?? 0);
}

interface SparseRow {
  readonly lower: number;
  readonly upper: number;
  readonly places: Int32Array;
  readonly coefficients: Float64Array;
}

const emptyRow: SparseRow = {
  lower: 0,
  upper: 0,
  places: new Int32Array(),
  coefficients: new Float64Array(),
};

/** Scaled by a power of two, which rounds nothing. */
function scaleRow({ lower, upper, terms }: Row): SparseRow {
  const largest = terms.reduce((most, [, coefficient]) => Math.max(most, Math.abs(coefficient)), 0);
  const scale = largest === 0 ? 1 : 2 ** -Math.round(Math.log2(largest));
  return {
    lower: lower * scale,
    upper: upper * scale,
    places: Int32Array.from(terms, ([column]) => column),
    coefficients: Float64Array.from(terms, ([, coefficient]) => coefficient * scale),
  };
}
