// Solver: what whoever asks has not searched himself, by our own search or by HiGHS. In: a program, limits. Out: its solution.
import type { Solve } from './integer-program.js';
import { searchThere } from './search-first.js';
import { solveProgram } from './solve-program.js';

export const solveWhole: Solve = searchThere(solveProgram);
