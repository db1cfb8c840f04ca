// Solver: what a program costs at the least, whatever was rounded on the way. In: costs, rows, bounds, a weight for each row.
// Out: a bound that holds for any weights at all.
import type { ColumnBounds } from './propagate-bounds.js';
import type { SparseRow } from './sparse-rows.js';
import type { Work } from './work.js';

/** What rounding may have taken from a whole number. */
const wholeWithin = 1e-6;

/** Bounds of all unknowns: the columns first, then the sum of each row. */
export interface Bounds {
  readonly low: Float64Array;
  readonly high: Float64Array;
}

/**
 * A row's sum lies between its bounds, so adding its weight times the difference of the two changes nothing; and what is left
 * of each column's cost counts at the bound where it is least. So the sum is never above the cost of anything that fits.
 * Weights of no use make it lower, never wrong: no proof of a search rests on the table that proposes the weights.
 *
 * Source: weak duality; as a bound safe from rounding Neumaier & Shcherbina 2004 (Safe bounds in linear and mixed-integer
 * linear programming).
 */
export class SafeBound {
  readonly #costs: Float64Array;
  readonly #rows: readonly SparseRow[];
  readonly #bounds: Bounds;
  readonly #work: Work;
  /** What the weights leave of each column's cost. */
  readonly #left: Float64Array;
  #sum = 0;

  /** The bounds are those of the caller, who may move them between two sums. */
  constructor(costs: Float64Array, rows: readonly SparseRow[], bounds: Bounds, work: Work) {
    this.#work = work;
    this.#costs = costs;
    this.#rows = rows;
    this.#bounds = bounds;
    this.#left = new Float64Array(costs.length);
  }

  /** Without any weight. */
  begin(): void {
    this.#left.set(this.#costs);
    this.#sum = 0;
  }

  /** One row's weight; none where it would lean on a bound that is not there. */
  weigh(row: number, weight: number): void {
    const { low, high } = this.#bounds;
    const end = (weight > 0 ? low : high)[this.#costs.length + row] ?? 0;
    const sparse = this.#rows[row];
    if (weight === 0 || !Number.isFinite(end) || sparse === undefined) return;
    const { places, coefficients } = sparse;
    for (let term = 0; term < places.length; term++) {
      const place = places[term] ?? 0;
      this.#left[place] = (this.#left[place] ?? 0) - weight * (coefficients[term] ?? 0);
    }
    this.#sum += weight * end;
    this.#work.touched += places.length;
  }

  /** The bound by all weights since the beginning. */
  end(): number {
    const { low, high } = this.#bounds;
    for (let place = 0; place < this.#left.length; place++) {
      const left = this.#left[place] ?? 0;
      this.#sum += left * ((left > 0 ? low : high)[place] ?? 0);
    }
    this.#work.touched += this.#left.length;
    return this.#sum;
  }

  /**
   * Bounds of whole columns, moved to where nothing beyond them costs no more than the cutoff: what is left of a column's cost
   * is what each one more of it adds to the bound just summed.
   */
  tighten(areWhole: readonly boolean[], cutoff: number, { lower, upper }: ColumnBounds): void {
    const spare = Math.max(0, cutoff - this.#sum);
    for (let place = 0; place < this.#left.length; place++) {
      const left = this.#left[place] ?? 0;
      if (left === 0 || !areWhole[place]) continue;
      const [least, most] = [this.#bounds.low[place] ?? 0, this.#bounds.high[place] ?? 0];
      if (left > 0)
        upper[place] = Math.min(upper[place] ?? 0, Math.floor(least + spare / left + wholeWithin));
      else lower[place] = Math.max(lower[place] ?? 0, Math.ceil(most + spare / left - wholeWithin));
    }
  }
}
