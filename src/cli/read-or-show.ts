// Command line: sheets from a path. In: the path, the day. Out: checked sheets; their problems go to the error stream.
import { registry } from '../plan-army.js';
import type { Known } from '../sheets/check/check-tables.js';
import { type CheckedSheets, readSheets } from '../sheets/read-sheets.js';
import { showProblems } from './show-problems.js';
import { showProgress } from './show-progress.js';

/** Sheets without errors. */
export type Sheets = NonNullable<CheckedSheets['sheets']>;

/** Reads and checks; `sheets` is undefined where an error stands among the problems. */
export async function readOrShow(
  path: string,
  day: Omit<Known, 'assumptions'>,
  instead: Parameters<typeof readSheets>[2] = [],
): Promise<CheckedSheets> {
  const progress = showProgress();
  progress.onStage('reading');
  const result = await readSheets(path, { assumptions: registry, ...day }, instead).finally(progress.end);
  showProblems(result.problems);
  return result;
}
