// Solver: programs solved in threads, several at a time. In: programs. Out: solutions; close ends the threads.
import { availableParallelism } from 'node:os';
import { setFlagsFromString } from 'node:v8';
import type { Solve } from './integer-program.js';
import { openThread, type Thread } from './thread.js';

export interface SolverThreads {
  readonly solve: Solve;
  /** Ends the threads; what is under way is given up. */
  readonly close: () => Promise<void>;
}

/** More at a time take more memory than they save time. */
const mostThreads = 4;

/** The solver keeps what memory it once took: after a program of more columns than that its thread is given up. */
const mostColumnsKept = 2000;

/**
 * V8 lets its heap grow to four times what was left of it before it looks again; with this, by so many per cent. A plan of 5,000
 * paints then holds a third less, and takes 3 % longer. It changes no result.
 */
const sparingGrowth = 100;

/** V8's own: as it sees fit. The flag is that of the whole process. */
const ownGrowth = 0;

const setGrowth = (percent: number): void => setFlagsFromString(`--heap-growing-percent=${percent}`);

/**
 * As many threads as the machine has cores, four at the most, each started when a program comes to it, and anew where it has ended;
 * they keep no process alive. Programs are begun in the order in which they come, of the large ones one at a time. How many threads
 * there are changes no answer; without any, programs are solved in this one. Once closed, every question is refused.
 */
export function openSolver(threads = Math.min(mostThreads, availableParallelism())): SolverThreads {
  const all = Array.from({ length: Math.max(1, threads) }, openThread);
  const free = openTurns(all);
  const forLarge = openTurns([undefined]);
  let [isClosed, isSparing] = [false, false];
  const solve: Solve = (program, limits, onProgress) => {
    const isLarge = program.columns.length > mostColumnsKept;
    if (isLarge && !isSparing) {
      isSparing = true;
      setGrowth(sparingGrowth);
    }
    const ask = async (thread: Thread) => {
      if (isClosed) throw new Error('the solver is closed');
      const solution = await thread.ask({ program, limits }, onProgress);
      if (isLarge) await thread.end();
      return solution;
    };
    return isLarge ? forLarge(() => free(ask)) : free(ask);
  };
  return {
    solve,
    close: async () => {
      isClosed = true;
      await Promise.all(all.map((thread) => thread.end()));
      if (isSparing) setGrowth(ownGrowth);
      isSparing = false;
    },
  };
}

/** Whoever asks first is first to get one of them; the last given back goes first, since it is warm. */
function openTurns<One>(
  all: readonly One[],
): <Answer>(use: (one: One) => Promise<Answer>) => Promise<Answer> {
  const free = [...all].reverse();
  const waiting: ((one: One) => void)[] = [];
  const take = (): Promise<One> =>
    new Promise((resolve) => {
      if (free.length > 0) resolve(free.pop() as One);
      else waiting.push(resolve);
    });
  const give = (one: One): void => {
    const next = waiting.shift();
    if (next === undefined) free.push(one);
    else next(one);
  };
  return async (use) => {
    const one = await take();
    try {
      return await use(one);
    } finally {
      give(one);
    }
  };
}
