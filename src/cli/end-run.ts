// Command line: how a run ends. In: what went wrong. Out: words on the error stream and an exit code.
import { env, stderr } from 'node:process';
import { showPlain } from './show-plain.js';

export const exitCodes = { done: 0, problems: 1, usage: 2 } as const;

/** Something the caller can mend: the message says what and how, and no details are of use. */
export class UsageError extends Error {
  override readonly name = 'UsageError';
}

/** Says one plain line (and where details are) and gives the exit code. HALFPOT_DEBUG=1 adds the details. */
export function reportCrash(error: unknown): number {
  const message = error instanceof Error ? error.message : String(error);
  const isUsage = error instanceof UsageError;
  const more = isUsage ? '' : '. Nothing more was done. Set HALFPOT_DEBUG=1 and run again for details.';
  stderr.write(`halfpot: ${isUsage ? '' : 'something unexpected happened: '}${showPlain(message)}${more}\n`);
  if (env.HALFPOT_DEBUG === '1' && error instanceof Error) stderr.write(`${error.stack ?? ''}\n`);
  return exitCodes.usage;
}
