// Command line: `halfpot plan`. In: a path to sheets, flags. Out: the report's files, the answer on the console.
import { join } from 'node:path';
import { stderr } from 'node:process';
import { openSolver, type PlanOptions, planArmy } from '../plan-army.js';
import { viewPlan } from '../report/page/view.js';
import { describePlan } from '../report/plan-json/describe-plan.js';
import { writePlanJson } from '../report/plan-json/write-plan-json.js';
import { checkOutFolder } from './check-out-folder.js';
import { checkDate, today } from './choose-date.js';
import { exitCodes } from './end-run.js';
import { printChunks } from './print-chunks.js';
import { readBudget, readSeconds, readSure } from './read-budget.js';
import { readOrShow, type Sheets } from './read-or-show.js';
import { loadWriters, outputNames, renderFiles } from './render-files.js';
import { showAnswer } from './show-answer.js';
import type { Problem } from './show-problems.js';
import { showProgress } from './show-progress.js';
import { wordLeftAlone } from './word-left-alone.js';
import { wordReadAs } from './word-read-as.js';
import { writeFiles } from './write-files.js';

/** Of the painter's own columns so many are named, so that the line stays short; `halfpot check` names all. */
const mostNamed = 6;

type Search = Pick<PlanOptions, 'solve' | 'seconds'>;

export interface PlanFlags {
  readonly out?: string;
  readonly date?: string;
  readonly json?: true;
  /** What cash there is, as written. */
  readonly budget?: string;
  /** How sure the order shall be, as written. */
  readonly sure?: string;
  /** How long to search for the order, as written. */
  readonly seconds?: string;
  /** Where files go without --out. */
  readonly usualFolder: string;
}

/** Plans and writes; gives 1, with nothing written, where the sheets have errors. */
export async function runPlan(path: string, flags: PlanFlags): Promise<number> {
  const day = { today: today(), chosenDay: flags.date === undefined ? undefined : checkDate(flags.date) };
  const seconds = flags.seconds === undefined ? undefined : readSeconds(flags.seconds);
  const sure = flags.sure === undefined ? undefined : readSure(flags.sure);
  const folder = flags.out ?? (flags.json ? undefined : flags.usualFolder);
  if (folder !== undefined) await checkOutFolder(folder, { sheets: path, names: outputNames });
  // A thread of its own: while it searches for long, Ctrl-C is answered at once.
  const solver = openSolver();
  try {
    const { sheets, problems, leftAlone, readAs } = await readOrShow(path, day);
    stderr.write(wordReadAs(readAs) + wordLeftAlone(leftAlone, mostNamed));
    if (sheets === undefined) return exitCodes.problems;
    const settings = { ...sheets.settings, ...(sure === undefined ? {} : { surePercent: sure }) };
    const search = { solve: solver.solve, seconds };
    const asked = { folder, sheets: { ...sheets, settings }, problems, today: day.today };
    await planAndWrite(asked, flags, search);
    return exitCodes.done;
  } finally {
    await solver.close();
  }
}

interface Asked {
  /** Undefined: no files. */
  readonly folder: string | undefined;
  readonly sheets: Sheets;
  readonly problems: readonly Problem[];
  readonly today: string;
}

async function planAndWrite(
  { folder, sheets, problems, today }: Asked,
  flags: PlanFlags,
  search: Search,
): Promise<void> {
  const budgetMinor = flags.budget === undefined ? undefined : readBudget(flags.budget, sheets.settings);
  // The main thread has nothing to do while a solver searches: it loads what the files will need.
  if (folder !== undefined) loadWriters();
  const progress = showProgress(sheets.settings);
  const options = { ...search, budgetMinor, onProgress: progress.onProgress };
  const plan = await planArmy(sheets, today, options).finally(progress.end);
  const view = viewPlan(plan, problems);
  if (folder !== undefined) await writeFiles(folder, await renderFiles({ plan, view, sheets, problems }));
  if (flags.json) await printChunks(writePlanJson(describePlan(plan, problems)));
  else if (folder !== undefined) showAnswer(view, fileList(folder));
}

function fileList(folder: string): string[] {
  const says = [
    'open it in a browser',
    'the reorder list',
    'the same as a workbook',
    'the estimate, to try changes',
    'every number',
  ];
  return outputNames.map((name, at) => `  ${join(folder, name)}  ${says[at] ?? ''}`);
}
