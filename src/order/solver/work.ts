// Solver: how long a search is. In: nothing. Out: the measure of time that is the same on every machine.

/** What a search took so far. */
export interface Work {
  /** Coefficients touched. */
  touched: number;
}
