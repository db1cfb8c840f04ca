// Command line: sheets from paths. In: paths of armies and their shelf, the day. Out: checked sheets; their problems go to the error stream.
import { registry } from '../assumptions/registry.js';
import type { Known } from '../sheets/check/check-tables.js';
import { type CheckedArmies, type CheckedSheets, readArmies } from '../sheets/read-sheets.js';
import { showLine } from './show-line.js';
import { showProblems } from './show-problems.js';

/** Sheets without errors. */
export type Sheets = NonNullable<CheckedSheets['sheets']>;

/** Reads and checks; `sheets` is undefined where an error stands among the problems. */
export async function readOrShow(
  paths: readonly string[],
  day: Omit<Known, 'assumptions'>,
  beside: Parameters<typeof readArmies>[2] = {},
): Promise<CheckedArmies> {
  const line = showLine();
  line?.show('Reading the sheets');
  const result = await readArmies(paths, { assumptions: registry, ...day }, beside).finally(line?.end);
  showProblems(result.problems);
  return result;
}
