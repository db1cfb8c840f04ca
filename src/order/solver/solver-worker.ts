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

// Loading takes longer than most programs: begun before the first one comes.
void loadSolver();

const send = (reply: SolveReply): void => parentPort?.postMessage(reply);

parentPort?.on('message', ({ program, limits, wantsProgress }: SolveRequest) => {
  const onProgress = wantsProgress ? (progress: Parameters<OnProgress>[0]) => send({ progress }) : undefined;
  solveProgram(program, limits, onProgress).then(
    (solution) => send({ solution }),
    (error: unknown) => send({ failure: error instanceof Error ? error.message : String(error) }),
  );
});
