// Solver: how fast the solver works. In: a program. Out: seconds for iterations, and the other way round, the same on every machine.
import type { IntegerProgram } from './integer-program.js';

/** What counts as seconds of work, and what may be done in them. */
export interface Pace {
  readonly secondsOf: (iterations: number) => number;
  readonly iterationsIn: (seconds: number) => number;
}

/** Seconds after which the clock stops a search that hangs. Some take four times what is counted, on a machine that does other things too. */
export const clockFor = (seconds: number): number => 10 * seconds + 2;

/** A relaxation alone, without all that a search does beside it; measured on programs of 60 to 440 rows. */
const ofRelaxation = 0.2;

/**
 * Iterations of the simplex method, which take the longer the more rows there are; and for what comes before the first, each
 * coefficient. Measured on 2026-11-29 on two cores: programs of 300 to 1,000 rows took 0.6 to 1.2 times as long, some of 4,000 to 12,000
 * rows a third, others up to four times.
 */
export function paceOf({ columns, rows }: IntegerProgram): Pace {
  const part = columns.some(({ integer }) => integer) ? 1 : ofRelaxation;
  const ofEach = part * (2.5e-4 + 3e-8 * rows.length);
  const before = part * 1e-5 * rows.reduce((sum, { terms }) => sum + terms.length, 0);
  return {
    secondsOf: (iterations) => before + ofEach * iterations,
    iterationsIn: (seconds) => Math.max(1, Math.floor((seconds - before) / ofEach)),
  };
}
