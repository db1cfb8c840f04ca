// Solver: what a program costs at the least, whatever was rounded on the way. In: costs, rows, bounds, a weight for each row.
// Out: a bound that holds for any weights at all.
import type { SparseRow } from './sparse-rows.js';

/** Bounds of all unknowns: the columns first, then the sum of each row. */
export interface Bounds {
  readonly low: Float64Array;
  readonly high: Float64Array;
}

/**
 * A row's sum lies between its bounds, so adding its weight times the difference of the two changes nothing; and what is left
 * of each column's cost counts at the bound where it is least. So the sum is never above the cost of anything that fits.
 * Weights of no use make it lower, never wrong: all proofs of a search rest on this, and none on the table that proposes the weights.
 *
 * Source: weak duality; as a bound safe from rounding Neumaier & Shcherbina 2004 (Safe bounds in linear and mixed-integer
 * linear programming).
 */
export class SafeBound {
  /** Coefficients touched so far. */
  work = 0;

  readonly #costs: Float64Array;
  readonly #rows: readonly SparseRow[];
  readonly #bounds: Bounds;
  /** What the weights leave of each column's cost. */
  readonly #left: Float64Array;
  #sum = 0;

  /** The bounds are those of the caller, who may move them between two sums. */
  constructor(costs: Float64Array, rows: readonly SparseRow[], bounds: Bounds) {
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
    this.work += places.length;
  }

  /** The bound by all weights since the beginning. */
  end(): number {
    const { low, high } = this.#bounds;
    for (let place = 0; place < this.#left.length; place++) {
      const left = this.#left[place] ?? 0;
      this.#sum += left * ((left > 0 ? low : high)[place] ?? 0);
    }
    this.work += this.#left.length;
    return this.#sum;
  }
}
