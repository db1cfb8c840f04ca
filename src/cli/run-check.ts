// Command line: `halfpot check`. In: a path to sheets. Out: their problems, what was found, an exit code.
import { stderr, stdout } from 'node:process';
import type { CheckedSheets } from '../sheets/read-sheets.js';
import { today } from './choose-date.js';
import { exitCodes } from './end-run.js';
import { countFound } from './list-found.js';
import { readOrShow } from './read-or-show.js';
import { wordRead } from './word-read.js';

export interface CheckFlags {
  /** Whether to write down what the headers mean. */
  readonly writeColumns?: true;
}

/** Gives 0 where the sheets can be planned, with or without warnings, else 1. */
export async function runCheck(path: string, { writeColumns }: CheckFlags): Promise<number> {
  const checked = await readOrShow([path], { today: today() });
  const { sheets, problems, read } = checked;
  const isRight = sheets !== undefined;
  const verdict = problems.length === 0 ? 'No problems.' : 'No errors: it can be planned.';
  // Standard output stays empty where the answer is no.
  if (isRight) stdout.write(`Found:\n${wordRead(checked, countFound(sheets))}${verdict}\n`);
  else stderr.write(wordWrong(checked));
  if (writeColumns) {
    const { saveColumns } = await import('./save-columns.js');
    (isRight ? stdout : stderr).write(await saveColumns(path, read));
  }
  return isRight ? exitCodes.done : exitCodes.problems;
}

/** How the sheets were read that have errors; '' where none was read. */
function wordWrong({ read, problems, sheets }: CheckedSheets): string {
  const wrong = new Set(problems.flatMap(({ severity, sheet }) => (severity === 'error' && sheet) || []));
  const lines = wordRead({ read: read.filter(({ sheet }) => wrong.has(sheet)), sheets }, new Map());
  return lines === '' ? '' : `Read:\n${lines}`;
}
