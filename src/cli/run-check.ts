// Command line: `halfpot check`. In: a path to sheets. Out: their problems, what was found, an exit code.
import { stdout } from 'node:process';
import { today } from './choose-date.js';
import { exitCodes } from './end-run.js';
import { listFound } from './list-found.js';
import { readOrShow } from './read-or-show.js';

/** Gives 0 where the sheets can be planned, with or without warnings, else 1. */
export async function runCheck(path: string): Promise<number> {
  const { sheets, problems } = await readOrShow(path, today());
  if (sheets === undefined) return exitCodes.problems;
  const verdict = problems.length === 0 ? 'No problems.' : 'No errors: the army can be planned.';
  stdout.write(`Found:\n${listFound(sheets).join('\n')}\n${verdict}\n`);
  return exitCodes.done;
}
