// Solver: the dual bound, what a program costs at the least. In: costs, rows, bounds, a multiplier for each row. Out: a bound
// that holds for any multipliers at all.
import { at, indexAt, numberAt } from '../../model/at.js';
import type { ColumnBounds } from './propagate-bounds.js';
import type { SparseRow } from './sparse-rows.js';
import type { Work } from './work.js';

/** What rounding may have taken from a whole number. */
const wholeWithin = 1e-6;

/** Bounds of all variables: the columns first, then the sum of each row. */
export interface Bounds {
  readonly low: Float64Array;
  readonly high: Float64Array;
}

/**
 * For `min c x` with row sums `Ax` and columns `x` between bounds, and any multipliers y: with the reduced costs
 * `r = c - A'y`, `c x = y (Ax) + r x`, which is least with each sum and each column at the bound that the sign of y or r asks for.
 * Multipliers of no use make the bound lower, never wrong, so no proof of a search rests on the tableau that proposes them.
 *
 * Source: weak duality; as a bound safe from a solver's rounding Neumaier & Shcherbina 2004 (Safe bounds in linear and
 * mixed-integer linear programming), from memory. They round the sums themselves downwards as well; here the cutoff of the
 * search leaves room for that.
 */
export class SafeDualBound {
  readonly #costs: Float64Array;
  readonly #rows: readonly SparseRow[];
  readonly #bounds: Bounds;
  readonly #work: Work;
  readonly #reducedCosts: Float64Array;
  #sum = 0;

  /** The bounds are those of the caller, who may move them between two sums. */
  constructor(costs: Float64Array, rows: readonly SparseRow[], bounds: Bounds, work: Work) {
    this.#work = work;
    this.#costs = costs;
    this.#rows = rows;
    this.#bounds = bounds;
    this.#reducedCosts = new Float64Array(costs.length);
  }

  /** With all multipliers 0. */
  begin(): void {
    this.#reducedCosts.set(this.#costs);
    this.#sum = 0;
  }

  /** One row's multiplier; left at 0 where it would need a bound that is infinite. */
  add(row: number, multiplier: number): void {
    const { low, high } = this.#bounds;
    const end = numberAt(multiplier > 0 ? low : high, this.#costs.length + row);
    if (multiplier === 0 || !Number.isFinite(end)) return;
    const { places, coefficients } = at(this.#rows, row);
    for (let term = 0; term < places.length; term++) {
      const place = indexAt(places, term);
      this.#reducedCosts[place] =
        numberAt(this.#reducedCosts, place) - multiplier * numberAt(coefficients, term);
    }
    this.#sum += multiplier * end;
    this.#work.touched += places.length;
  }

  /** The bound by all multipliers since the beginning. */
  end(): number {
    const { low, high } = this.#bounds;
    for (let place = 0; place < this.#reducedCosts.length; place++) {
      const reducedCost = numberAt(this.#reducedCosts, place);
      this.#sum += reducedCost * numberAt(reducedCost > 0 ? low : high, place);
    }
    this.#work.touched += this.#reducedCosts.length;
    return this.#sum;
  }

  /**
   * Reduced-cost fixing: each step of a column away from its bound adds its reduced cost to the bound just summed, so no whole
   * column need go further than the cutoff has room for. Moves the bounds in place.
   */
  fixByReducedCosts(areWhole: readonly boolean[], cutoff: number, { lower, upper }: ColumnBounds): void {
    const room = Math.max(0, cutoff - this.#sum);
    for (let place = 0; place < this.#reducedCosts.length; place++) {
      const reducedCost = numberAt(this.#reducedCosts, place);
      if (reducedCost === 0 || !areWhole[place]) continue;
      const [least, most] = [numberAt(this.#bounds.low, place), numberAt(this.#bounds.high, place)];
      const steps = room / reducedCost;
      if (reducedCost > 0)
        upper[place] = Math.min(numberAt(upper, place), Math.floor(least + steps + wholeWithin));
      else lower[place] = Math.max(numberAt(lower, place), Math.ceil(most + steps - wholeWithin));
    }
  }
}
