// Solver: the thread in which programs are solved, so that the main one stays free. In: messages. Out: messages.
import { parentPort } from 'node:worker_threads';
import type { IntegerProgram, Limits, OnProgress, Solution } from './integer-program.js';
import { loadSolver, solveProgram } from './solve-program.js';

export interface SolveRequest {
  readonly program: IntegerProgram;
  readonly limits: Limits;
  readonly wantsProgress: boolean;
}

export type SolveReply =
  | { readonly progress: Parameters<OnProgress>[0] }
  | { readonly solution: Solution }
  | { readonly failure: string };

/** Whole numbers and a fraction: what it takes to solve it is compiled once it has been solved. */
const first: IntegerProgram = {
  columns: [2, 3, 5].map((cost) => ({ cost, lower: 0, upper: 4, integer: true })),
  rows: [
    {
      lower: 7.5,
      upper: Number.POSITIVE_INFINITY,
      terms: [
        [0, 2],
        [1, 3],
        [2, 4],
      ],
    },
  ],
};

// Loading, and compiling as it solves, take longer than most programs: begun before the first one comes.
const isReady = loadSolver().then(() => solveProgram(first, { nodes: 10, seconds: 1 }));
// A solver that can't be loaded says so to whoever asks it.
isReady.catch(() => undefined);

const send = (reply: SolveReply): void => parentPort?.postMessage(reply);

parentPort?.on('message', ({ program, limits, wantsProgress }: SolveRequest) => {
  const onProgress = wantsProgress ? (progress: Parameters<OnProgress>[0]) => send({ progress }) : undefined;
  solveProgram(program, limits, onProgress).then(
    (solution) => send({ solution }),
    (error: unknown) => send({ failure: error instanceof Error ? error.message : String(error) }),
  );
});
