// Solver: one thread that solves programs, one after the other. In: a program. Out: its solution.
import { Worker } from 'node:worker_threads';
import type { IntegerProgram, Limits, OnProgress, Solution } from './integer-program.js';
import { solveWhole } from './solve-whole.js';
import type { SolveReply, SolveRequest } from './solver-worker.js';

interface Asked {
  readonly program: IntegerProgram;
  readonly limits: Limits;
}

export interface Thread {
  /** One question at a time. */
  readonly ask: (asked: Asked, onProgress: OnProgress | undefined) => Promise<Solution>;
  /** What is asked is given up; the next question starts it anew. */
  readonly end: () => Promise<void>;
}

/** Started with the first question, and anew where it has ended. */
export function openThread(): Thread {
  let worker: Worker | undefined;
  const running = (): Worker | undefined => {
    if (worker !== undefined) return worker;
    const started = startWorker();
    started?.once('exit', () => {
      if (worker === started) worker = undefined;
    });
    worker = started;
    return started;
  };
  return {
    ask: (asked, onProgress) => {
      const own = running();
      return own === undefined
        ? solveWhole(asked.program, asked.limits, onProgress)
        : askWorker(own, asked, onProgress);
    },
    end: async () => {
      await worker?.terminate();
    },
  };
}

/**
 * An error between two questions ends the thread and nothing else; one during a question is told to who asked. Undefined where a
 * process may start none.
 */
function startWorker(): Worker | undefined {
  try {
    const worker = new Worker(new URL('./solver-worker.js', import.meta.url));
    worker.on('error', () => undefined);
    worker.unref();
    return worker;
  } catch {
    return undefined;
  }
}

function askWorker(worker: Worker, asked: Asked, onProgress: OnProgress | undefined): Promise<Solution> {
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
