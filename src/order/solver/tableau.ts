// Solver: the table of a relaxation. In: rows, exchanges. Out: each unknown in the base as a weighed sum of those aside.
import type { SparseRow } from './sparse-rows.js';
import type { Work } from './work.js';

/** Lines of coefficients, one place for each unknown aside. */
export class DenseTable {
  readonly #width: number;
  readonly #work: Work;
  #coefficients: Float64Array;
  /** Scratch: places that are not 0, and what an exchange makes of them. */
  readonly #places: Int32Array;
  readonly #solved: Float64Array;

  constructor(width: number, height: number, work: Work) {
    this.#width = width;
    this.#work = work;
    this.#coefficients = new Float64Array(width * height);
    this.#places = new Int32Array(width);
    this.#solved = new Float64Array(width);
  }

  /** Each line a row, as it is while all columns stand aside. */
  fill(rows: readonly SparseRow[]): void {
    this.#coefficients.fill(0);
    for (const [line, { places, coefficients }] of rows.entries()) {
      for (const [term, place] of places.entries())
        this.#coefficients[line * this.#width + place] = coefficients[term] ?? 0;
    }
    this.#work.touched += this.#coefficients.length;
  }

  /** Without some of the lines. */
  keepLines(lines: readonly number[]): void {
    const kept = new Float64Array(lines.length * this.#width);
    for (const [into, line] of lines.entries())
      kept.set(this.#coefficients.subarray(line * this.#width, (line + 1) * this.#width), into * this.#width);
    this.#coefficients = kept;
  }

  coefficient(line: number, place: number): number {
    return this.#coefficients[line * this.#width + place] ?? 0;
  }

  /** What each line comes to where those aside have such values; most of them stand at 0. */
  multiply(values: Float64Array, into: Float64Array): void {
    const [table, filled] = [this.#coefficients, this.#places];
    let count = 0;
    for (let place = 0; place < values.length; place++) if (values[place] !== 0) filled[count++] = place;
    for (let line = 0, start = 0; line < into.length; line++, start += this.#width) {
      let sum = 0;
      for (let at = 0; at < count; at++) {
        const place = filled[at] ?? 0;
        sum += (table[start + place] ?? 0) * (values[place] ?? 0);
      }
      into[line] = sum;
    }
    this.#work.touched += into.length * count;
  }

  /** What each line gains where the value at a place goes up by a step. */
  addStep(place: number, step: number, into: Float64Array): void {
    for (let line = 0, at = place; line < into.length; line++, at += this.#width)
      into[line] = (into[line] ?? 0) + step * (this.#coefficients[at] ?? 0);
  }

  /** The unknowns of a line and of a place change sides; so they do in the prices, a line of their own. */
  exchange(line: number, place: number, prices: Float64Array): void {
    const [table, width] = [this.#coefficients, this.#width];
    const from = line * width;
    const solved = this.#solveFor(from, place);
    for (let into = 0; into < table.length; into += width) {
      if (into !== from && table[into + place] !== 0) replace(table, into, solved);
    }
    if (prices[place] !== 0) replace(prices, 0, solved);
    this.#work.touched += (table.length / width) * solved.places.length;
  }

  /** Solves a line for the unknown at a place. */
  #solveFor(from: number, place: number): Solved {
    const table = this.#coefficients;
    const pivot = table[from + place] ?? 1;
    let count = 0;
    for (let other = 0; other < this.#width; other++) {
      const coefficient = table[from + other] ?? 0;
      if (coefficient === 0 || other === place) continue;
      const solved = -coefficient / pivot;
      table[from + other] = solved;
      this.#places[count] = other;
      this.#solved[count++] = solved;
    }
    table[from + place] = 1 / pivot;
    const [places, coefficients] = [this.#places.subarray(0, count), this.#solved.subarray(0, count)];
    return { place, own: 1 / pivot, places, coefficients };
  }
}

/** An unknown as the sum of others: of the one that takes its place, and of those that are not 0. */
interface Solved {
  readonly place: number;
  readonly own: number;
  readonly places: Int32Array;
  readonly coefficients: Float64Array;
}

/** In a line, the unknown at a place replaced by what it was solved for. */
function replace(table: Float64Array, start: number, { place, own, places, coefficients }: Solved): void {
  const factor = table[start + place] ?? 0;
  for (let at = 0; at < places.length; at++) {
    const into = start + (places[at] ?? 0);
    table[into] = (table[into] ?? 0) + factor * (coefficients[at] ?? 0);
  }
  table[start + place] = factor * own;
}
