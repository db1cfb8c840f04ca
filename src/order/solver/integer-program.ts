// Solver: an integer program in plain numbers. In: nothing. Out: the types of a program, its limits, its solution.

/** One variable: `lower <= x <= upper`, whole where `integer`. */
export interface Column {
  readonly cost: number;
  readonly lower: number;
  readonly upper: number;
  readonly integer: boolean;
}

/** One constraint: `lower <= sum of coefficient x column <= upper`. */
export interface Row {
  readonly lower: number;
  readonly upper: number;
  /** Column index and coefficient; each column once. */
  readonly terms: readonly (readonly [column: number, coefficient: number])[];
}

/** Minimise the sum of cost x column. */
export interface IntegerProgram {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** Values of every column of a solution already known: the solver starts from it. */
  readonly start?: readonly number[];
  /** True where the start is known to be near the best: the solver then goes for proof, not for other solutions. */
  readonly isStartNear?: boolean;
  /** Looks for a better start, in about so many seconds of work at the most, and says how many it took. */
  readonly improveStart?: (
    start: readonly number[],
    seconds: number,
  ) => { readonly start: readonly number[]; readonly seconds: number };
}

export interface Limits {
  /** Seconds of work, which is counted: the same sheets end alike on every machine, however busy it is. */
  readonly seconds: number;
}

/** Called while the search goes on: the incumbent's cost, the dual bound, seconds spent. */
export type OnProgress = (progress: { best: number; bound: number; seconds: number }) => void;

/**
 * What a search found, and the seconds of work that it was.
 * `proved`: nothing is cheaper. `not proved`: a limit came first; nothing is under `bound`.
 * `none found`: a limit came before any solution. `impossible`: there is none.
 */
export type Solution = Found & { readonly seconds: number };

export type Found =
  | { readonly state: 'proved' | 'not proved'; readonly values: readonly number[]; readonly bound: number }
  | { readonly state: 'none found' }
  | { readonly state: 'impossible' };

/** Anything that solves programs: in this thread, or in one of its own. */
export type Solve = (program: IntegerProgram, limits: Limits, onProgress?: OnProgress) => Promise<Solution>;
