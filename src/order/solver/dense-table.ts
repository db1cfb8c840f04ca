// Solver: the table of a relaxation. In: rows, exchanges. Out: each unknown in the base as a weighed sum of those aside.
import type { SparseRow } from './sparse-rows.js';

/** Lines of coefficients, one place for each unknown aside. */
export class DenseTable {
  /** Coefficients touched so far. */
  work = 0;

  readonly #width: number;
  readonly #coefficients: Float64Array;
  /** Scratch of exchanges: places of a line that are not 0. */
  readonly #filled: Int32Array;

  constructor(width: number, height: number) {
    this.#width = width;
    this.#coefficients = new Float64Array(width * height);
    this.#filled = new Int32Array(width);
  }

  /** Each line a row, as it is while all columns stand aside. */
  fill(rows: readonly SparseRow[]): void {
    this.#coefficients.fill(0);
    for (const [line, { places, coefficients }] of rows.entries()) {
      for (const [term, place] of places.entries())
        this.#coefficients[line * this.#width + place] = coefficients[term] ?? 0;
    }
    this.work += this.#coefficients.length;
  }

  coefficient(line: number, place: number): number {
    return this.#coefficients[line * this.#width + place] ?? 0;
  }

  /** What each line comes to where those aside have such values. */
  multiply(values: Float64Array, into: Float64Array): void {
    for (let line = 0, start = 0; line < into.length; line++, start += this.#width) {
      let sum = 0;
      for (let place = 0; place < values.length; place++)
        sum += (this.#coefficients[start + place] ?? 0) * (values[place] ?? 0);
      into[line] = sum;
    }
    this.work += this.#coefficients.length;
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
    const count = this.#solveFor(from, place);
    for (let into = 0; into < table.length; into += width) {
      if (into !== from) this.#replace(table, into, { from, place, count });
    }
    this.#replace(prices, 0, { from, place, count });
    this.work += (table.length / width) * count;
  }

  /** Solves a line for the unknown at a place; gives how many others it holds. */
  #solveFor(from: number, place: number): number {
    const table = this.#coefficients;
    const pivot = table[from + place] ?? 1;
    let count = 0;
    for (let other = 0; other < this.#width; other++) {
      const coefficient = table[from + other] ?? 0;
      if (coefficient === 0 || other === place) continue;
      table[from + other] = -coefficient / pivot;
      this.#filled[count++] = other;
    }
    table[from + place] = 1 / pivot;
    return count;
  }

  /** In some line, the unknown at a place replaced by what the solved line says of it. */
  #replace(line: Float64Array, start: number, { from, place, count }: Solved): void {
    const factor = line[start + place] ?? 0;
    if (factor === 0) return;
    const table = this.#coefficients;
    for (let at = 0; at < count; at++) {
      const other = this.#filled[at] ?? 0;
      line[start + other] = (line[start + other] ?? 0) + factor * (table[from + other] ?? 0);
    }
    line[start + place] = factor * (table[from + place] ?? 0);
  }
}

/** A line solved for one of its unknowns. */
interface Solved {
  /** Where the line begins. */
  readonly from: number;
  readonly place: number;
  readonly count: number;
}
