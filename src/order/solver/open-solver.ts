// Solver: programs solved in a thread of their own. In: programs, one at a time. Out: solutions; close ends the thread.
import { Worker } from 'node:worker_threads';
import type { IntegerProgram, Limits, OnProgress, Solution, Solve } from './integer-program.js';
import type { SolveReply, SolveRequest } from './solver-worker.js';

export interface SolverThread {
  readonly solve: Solve;
  /** Ends the thread; a solve under way is given up. */
  readonly close: () => Promise<void>;
}

/** A solver thread, started when the first program comes; it keeps no process alive. */
export function openSolver(): SolverThread {
  let worker: Worker | undefined;
  let last: Promise<unknown> = Promise.resolve();
  const solve: Solve = (program, limits, onProgress) => {
    worker ??= startWorker();
    const asked = worker;
    const turn = last.then(() => ask(asked, { program, limits }, onProgress));
    last = turn.catch(() => undefined);
    return turn;
  };
  return {
    solve,
    close: async () => {
      await worker?.terminate();
    },
  };
}

function startWorker(): Worker {
  const worker = new Worker(new URL('./solver-worker.js', import.meta.url));
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
