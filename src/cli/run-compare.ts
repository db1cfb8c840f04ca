// Command line: `halfpot compare`. In: two paths, or one and the sheets to replace. Out: compare.html, compare.json, a table on the
// console, an exit code.
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { comparePlans } from '../compare/compare-plans.js';
import { drawCompare } from '../report/compare/draw-compare.js';
import { viewCompare } from '../report/compare/view-compare.js';
import { writeCompareJson } from '../report/compare/write-compare-json.js';
import { matchSheetName } from '../sheets/read/match-sheet-name.js';
import { checkOutFolder } from './check-out-folder.js';
import { checkDate, today } from './choose-date.js';
import { exitCodes, UsageError } from './end-run.js';
import { readSeconds } from './read-budget.js';
import { showCompare } from './show-compare.js';
import { planFileOf, takePlan } from './take-plan.js';
import { writeFiles } from './write-files.js';

export interface CompareFlags {
  /** Each `sheet=file`. */
  readonly with?: readonly string[];
  readonly out?: string;
  readonly date?: string;
  readonly seconds?: string;
}

const usualFolder = 'halfpot-compare';
const outputNames = ['compare.html', 'compare.json'] as const;

/** Plans what is not planned yet; gives 1, with nothing written, where sheets have errors. */
export async function runCompare(a: string, b: string | undefined, flags: CompareFlags): Promise<number> {
  const day = { today: today(), chosenDay: flags.date === undefined ? undefined : checkDate(flags.date) };
  const seconds = flags.seconds === undefined ? undefined : readSeconds(flags.seconds);
  const folder = flags.out ?? usualFolder;
  const other = readOther(a, b, flags.with ?? []);
  for (const path of [a, other.path])
    checkOutFolder(folder, { sheets: [planFileOf(path) ?? path], names: outputNames });
  const planA = await takePlan({ path: a, instead: [], day, seconds });
  if (planA === undefined) return exitCodes.problems;
  const planB = await takePlan({ path: other.path, instead: other.instead, day, seconds });
  if (planB === undefined) return exitCodes.problems;
  const sides = { a: { ...planA, name: a }, b: { ...planB, name: other.name } };
  const comparison = comparePlans(planA, planB);
  const view = viewCompare(comparison, sides);
  await writeFiles(folder, [
    { name: outputNames[0], content: await drawCompare(view) },
    { name: outputNames[1], content: writeCompareJson(comparison, sides) },
  ]);
  showCompare(
    view,
    outputNames.map((name) => join(folder, name)),
  );
  return exitCodes.done;
}

type Instead = Parameters<typeof takePlan>[0]['instead'];

interface Other {
  readonly path: string;
  readonly instead: Instead;
  readonly name: string;
}

/** What A is compared with. Throws a UsageError where there is nothing, or two things. */
function readOther(a: string, b: string | undefined, replaced: readonly string[]): Other {
  for (const path of b === undefined ? [a] : [a, b])
    if (!existsSync(path)) throw new UsageError(`There is no ${path}.`);
  if (replaced.length === 0) {
    if (b === undefined)
      throw new UsageError('Compare it with what? Name two, or one and --with schemes=other.csv.');
    return { path: b, instead: [], name: b };
  }
  if (b !== undefined)
    throw new UsageError('--with replaces a sheet of the one before it. Name one, not two.');
  if (planFileOf(a) !== undefined)
    throw new UsageError(`${a} holds a plan and no sheets. Name its sheets, so that --with can replace one.`);
  return { path: a, instead: replaced.map(readReplacement), name: `${a} with ${replaced.join(', ')}` };
}

function readReplacement(text: string): Instead[number] {
  const [, name = '', path = ''] = /^([^=]+)=(.+)$/.exec(text) ?? [];
  const sheet = matchSheetName(name);
  if (sheet === undefined)
    throw new UsageError(`"${text}" names no sheet and file. Write --with as schemes=other.csv.`);
  if (!existsSync(path)) throw new UsageError(`There is no ${path}.`);
  return { sheet, path };
}
