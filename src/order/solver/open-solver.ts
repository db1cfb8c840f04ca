// Solver: programs solved in a thread of their own. In: programs, one at a time. Out: solutions; close ends the thread.
import { Worker } from 'node:worker_threads';
import type { IntegerProgram, Limits, OnProgress, Solution, Solve } from './integer-program.js';
import type { SolveReply, SolveRequest } from './solver-worker.js';

export interface SolverThread {
  readonly solve: Solve;
  /** Ends the thread; a solve under way is given up. */
  readonly close: () => Promise<void>;
}

/** The solver keeps what memory it once took: after a program of more columns than that its thread is given up. */
const mostColumnsKept = 2000;

/**
 * A solver thread, started when a program comes to it, and anew where it has ended; it keeps no process alive. One program
 * at a time, in the order in which they come. Once closed, every question is refused.
 */
export function openSolver(): SolverThread {
  let worker: Worker | undefined;
  let isClosed = false;
  let last: Promise<unknown> = Promise.resolve();
  const openWorker = (): Worker => {
    const started = startWorker();
    started.once('exit', () => {
      if (worker === started) worker = undefined;
    });
    worker = started;
    return started;
  };
  const solve: Solve = (program, limits, onProgress) => {
    const turn = last.then(async () => {
      if (isClosed) throw new Error('the solver is closed');
      const running = worker ?? openWorker();
      const solution = await ask(running, { program, limits }, onProgress);
      if (program.columns.length > mostColumnsKept) await running.terminate();
      return solution;
    });
    last = turn.catch(() => undefined);
    return turn;
  };
  return {
    solve,
    close: async () => {
      isClosed = true;
      await worker?.terminate();
    },
  };
}

/** An error between two questions ends the thread and nothing else; one during a question is told to who asked. */
function startWorker(): Worker {
  const worker = new Worker(new URL('./solver-worker.js', import.meta.url));
  worker.on('error', () => undefined);
  worker.unref();
  return worker;
}

interface Asked {
  readonly program: IntegerProgram;
  readonly limits: Limits;
}

function ask(worker: Worker, asked: Asked, onProgress: OnProgress | undefined): Promise<Solution> {
  worker.ref();
  return new Promise<Solution>((resolve, reject) => {
    const end = (finish: () => void): void => {
      worker.off('message', hear).off('error', fail).off('exit', leave);
      worker.unref();
      finish();
    };
    const fail = (error: Error): void => end(() => reject(error));
    const leave = (): void => fail(new Error('the solver ended before it had an answer'));
    const hear = (reply: SolveReply): void => {
      if ('progress' in reply) onProgress?.(reply.progress);
      else if ('solution' in reply) end(() => resolve(reply.solution));
      else fail(new Error(reply.failure));
    };
    worker.on('message', hear).on('error', fail).on('exit', leave);
    const request: SolveRequest = { ...asked, wantsProgress: onProgress !== undefined };
    worker.postMessage(request);
  });
}
