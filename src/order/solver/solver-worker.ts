// Solver: the thread in which programs are solved, so that the main one stays free. In: messages. Out: messages.
import { parentPort } from 'node:worker_threads';
import type { IntegerProgram, Limits, OnProgress, Solution } from './integer-program.js';
import { solveWhole } from './solve-whole.js';

export interface SolveRequest {
  readonly program: IntegerProgram;
  readonly limits: Limits;
  readonly wantsProgress: boolean;
}

export type SolveReply =
  | { readonly progress: Parameters<OnProgress>[0] }
  | { readonly solution: Solution }
  | { readonly failure: string };

const send = (reply: SolveReply): void => parentPort?.postMessage(reply);

parentPort?.on('message', ({ program, limits, wantsProgress }: SolveRequest) => {
  const onProgress = wantsProgress ? (progress: Parameters<OnProgress>[0]) => send({ progress }) : undefined;
  solveWhole(program, limits, onProgress).then(
    (solution) => send({ solution }),
    (error: unknown) => send({ failure: error instanceof Error ? error.message : String(error) }),
  );
});
