// Solver: the simplex tableau. In: rows, pivots. Out: each basic variable as a sum of the nonbasic ones.
import { indexAt, numberAt } from '../../model/at.js';
import type { SparseRow } from './sparse-rows.js';
import type { Work } from './work.js';

/** A line for each basic variable, in it a coefficient for each nonbasic one, by its place; all of them kept, zeros too. */
export class Tableau {
  readonly #width: number;
  readonly #work: Work;
  #coefficients: Float64Array;
  /** Scratch: places that are not 0, and the coefficients that a pivot puts there. */
  readonly #places: Int32Array;
  readonly #solved: Float64Array;

  constructor(width: number, height: number, work: Work) {
    this.#width = width;
    this.#work = work;
    this.#coefficients = new Float64Array(width * height);
    this.#places = new Int32Array(width);
    this.#solved = new Float64Array(width);
  }

  /** Each line a row, as it is while all columns are nonbasic: the slack basis. */
  fill(rows: readonly SparseRow[]): void {
    this.#coefficients.fill(0);
    for (const [line, { places, coefficients }] of rows.entries()) {
      for (const [term, place] of places.entries())
        this.#coefficients[line * this.#width + place] = numberAt(coefficients, term);
    }
    this.#work.touched += this.#coefficients.length;
  }

  /** More lines, for rows over the columns; of each column its place, or, where it is basic, its line from -1 down. */
  addLines(rows: readonly SparseRow[], placeOf: Int32Array): void {
    const [before, width] = [this.#coefficients, this.#width];
    this.#coefficients = new Float64Array(before.length + rows.length * width);
    this.#coefficients.set(before);
    for (const [row, { places, coefficients }] of rows.entries()) {
      const line = this.#coefficients.subarray(
        before.length + row * width,
        before.length + (row + 1) * width,
      );
      for (const [term, column] of places.entries()) {
        const [coefficient, place] = [numberAt(coefficients, term), indexAt(placeOf, column)];
        if (place >= 0) line[place] = numberAt(line, place) + coefficient;
        else addTimes(line, before.subarray((-1 - place) * width, -place * width), coefficient);
      }
      this.#work.touched += places.length * width;
    }
  }

  /** Without some of the lines. */
  keepLines(lines: readonly number[]): void {
    const kept = new Float64Array(lines.length * this.#width);
    for (const [into, line] of lines.entries())
      kept.set(this.#coefficients.subarray(line * this.#width, (line + 1) * this.#width), into * this.#width);
    this.#coefficients = kept;
  }

  coefficient(line: number, place: number): number {
    return numberAt(this.#coefficients, line * this.#width + place);
  }

  /** Values of the basic variables, by those of the nonbasic ones; most of these are 0. */
  multiply(values: Float64Array, into: Float64Array): void {
    const [table, filled] = [this.#coefficients, this.#places];
    let count = 0;
    for (let place = 0; place < values.length; place++) if (values[place] !== 0) filled[count++] = place;
    for (let line = 0, start = 0; line < into.length; line++, start += this.#width) {
      let sum = 0;
      for (let term = 0; term < count; term++) {
        const place = indexAt(filled, term);
        sum += numberAt(table, start + place) * numberAt(values, place);
      }
      into[line] = sum;
    }
    this.#work.touched += into.length * count;
  }

  /** What the basic variables gain where the nonbasic one at a place goes up by a step. */
  addStep(place: number, step: number, into: Float64Array): void {
    for (let line = 0, index = place; line < into.length; line++, index += this.#width)
      into[line] = numberAt(into, line) + step * numberAt(this.#coefficients, index);
  }

  /** The basic variable of a line and the nonbasic one of a place change sides; reduced costs are one line more. */
  pivot(line: number, place: number, reducedCosts: Float64Array): void {
    const [table, width] = [this.#coefficients, this.#width];
    const from = line * width;
    const solved = this.#solveFor(from, place);
    for (let into = 0; into < table.length; into += width) {
      if (into !== from && table[into + place] !== 0) substitute(table, into, solved);
    }
    if (reducedCosts[place] !== 0) substitute(reducedCosts, 0, solved);
    this.#work.touched += (table.length / width) * solved.places.length;
  }

  /** Solves the pivot line for its entering variable. */
  #solveFor(from: number, place: number): Solved {
    const table = this.#coefficients;
    const pivot = numberAt(table, from + place);
    let count = 0;
    for (let other = 0; other < this.#width; other++) {
      const coefficient = numberAt(table, from + other);
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

/** The entering variable as a sum of the others: of the leaving one, which takes its place, and of those that are not 0. */
interface Solved {
  readonly place: number;
  /** Coefficient of the leaving variable. */
  readonly own: number;
  readonly places: Int32Array;
  readonly coefficients: Float64Array;
}

/**
 * In one line, the entering variable replaced by what it was solved for. In this innermost loop of a search checked reads cost
 * 4 %, so they are left out: its places are those that solving for the variable has just read in its own line.
 */
function substitute(table: Float64Array, start: number, { place, own, places, coefficients }: Solved): void {
  const factor = numberAt(table, start + place);
  for (let term = 0; term < places.length; term++) {
    const into = start + (places[term] as number);
    table[into] = (table[into] as number) + factor * (coefficients[term] as number);
  }
  table[start + place] = factor * own;
}

function addTimes(line: Float64Array, other: Float64Array, times: number): void {
  for (let place = 0; place < line.length; place++)
    line[place] = numberAt(line, place) + times * numberAt(other, place);
}
