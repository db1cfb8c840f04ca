// Command line: `halfpot check`. In: a path to sheets. Out: their problems, what was found, an exit code.
import { stderr, stdout } from 'node:process';
import { today } from './choose-date.js';
import { exitCodes } from './end-run.js';
import { countFound } from './list-found.js';
import { readOrShow } from './read-or-show.js';
import { saveColumns } from './save-columns.js';
import { wordRead } from './word-read.js';

export interface CheckFlags {
  /** Whether to write down what the headers mean. */
  readonly writeColumns?: true;
}

/** Gives 0 where the sheets can be planned, with or without warnings, else 1. */
export async function runCheck(path: string, { writeColumns }: CheckFlags): Promise<number> {
  const checked = await readOrShow(path, { today: today() });
  const { sheets, problems, read } = checked;
  const isRight = sheets !== undefined;
  const lines = wordRead(checked, isRight ? countFound(sheets) : new Map());
  const verdict = problems.length === 0 ? 'No problems.' : 'No errors: it can be planned.';
  // Standard output stays empty where the answer is no.
  if (isRight) stdout.write(`Found:\n${lines.join('\n')}\n${verdict}\n`);
  else if (lines.length > 0) stderr.write(`Read:\n${lines.join('\n')}\n`);
  if (writeColumns) (isRight ? stdout : stderr).write(await saveColumns(path, read));
  return isRight ? exitCodes.done : exitCodes.problems;
}
