// Command line: `halfpot check`. In: a path to sheets. Out: their problems, what was found, an exit code.
import { stderr, stdout } from 'node:process';
import { today } from './choose-date.js';
import { exitCodes } from './end-run.js';
import { listFound } from './list-found.js';
import { readOrShow } from './read-or-show.js';
import { wordLeftAlone } from './word-left-alone.js';
import { wordReadAs } from './word-read-as.js';

/** Columns of the painter's own that are named; only a table gone wrong has more. */
const mostNamed = 100;

/** Gives 0 where the sheets can be planned, with or without warnings, else 1. */
export async function runCheck(path: string): Promise<number> {
  const { sheets, problems, leftAlone, readAs } = await readOrShow(path, { today: today() });
  const left = wordReadAs(readAs) + wordLeftAlone(leftAlone, mostNamed);
  if (sheets === undefined) {
    // Standard output stays empty where the answer is no.
    stderr.write(left);
    return exitCodes.problems;
  }
  const verdict = problems.length === 0 ? 'No problems.' : 'No errors: it can be planned.';
  stdout.write(`Found:\n${listFound(sheets).join('\n')}\n${left}${verdict}\n`);
  return exitCodes.done;
}
