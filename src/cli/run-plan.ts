// Command line: `halfpot plan`. In: a path to sheets, flags. Out: the report's files, the answer on the console.
import { join } from 'node:path';
import { stderr } from 'node:process';
import { openSolver, type PlanOptions, planArmy } from '../plan-army.js';
import { piecesOfPlanJson } from '../report/export/write-plan-json.js';
import { describePlan } from '../report/view/describe-plan.js';
import { viewPlan } from '../report/view/view-plan.js';
import { checkOutFolder } from './check-out-folder.js';
import { checkDate, today } from './choose-date.js';
import { exitCodes, UsageError } from './end-run.js';
import { printChunks } from './print-chunks.js';
import { readBudget, readBuy, readSeconds, readSure } from './read-budget.js';
import { readOrShow, type Sheets } from './read-or-show.js';
import { loadWriters, outputNames, renderFiles } from './render-files.js';
import { showAnswer } from './show-answer.js';
import type { Problem } from './show-problems.js';
import { showProgress } from './show-progress.js';
import { wordLeftAlone } from './word-left-alone.js';
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
  /** How much to buy at once, as written. */
  readonly buy?: string;
  /** How long to search for the order, as written. */
  readonly seconds?: string;
  /** Where files go without --out. */
  readonly usualFolder: string;
}

/** Plans and writes; gives 1, with nothing written, where the sheets have errors. */
export async function runPlan(path: string, flags: PlanFlags): Promise<number> {
  const chosen = flags.date === undefined ? undefined : checkDate(flags.date);
  const seconds = flags.seconds === undefined ? undefined : readSeconds(flags.seconds);
  const wayToBuy = readWayToBuy(flags);
  // A thread of its own: while it searches for long, Ctrl-C is answered at once.
  const solver = openSolver();
  try {
    const { sheets, problems, leftAlone } = await readOrShow(path, chosen ?? today());
    stderr.write(wordLeftAlone(leftAlone, mostNamed));
    if (sheets === undefined) return exitCodes.problems;
    const flagged = setByFlags(sheets, chosen, wayToBuy);
    const search = { solve: solver.solve, seconds };
    await planAndWrite({ path, sheets: flagged, problems, today: chosen ?? today() }, flags, search);
    return exitCodes.done;
  } finally {
    await solver.close();
  }
}

interface Asked {
  readonly path: string;
  readonly sheets: Sheets;
  readonly problems: readonly Problem[];
  readonly today: string;
}

async function planAndWrite(
  { path, sheets, problems, today }: Asked,
  flags: PlanFlags,
  search: Search,
): Promise<void> {
  const folder = flags.out ?? (flags.json ? undefined : flags.usualFolder);
  const budgetMinor = flags.budget === undefined ? undefined : readBudget(flags.budget, sheets.settings);
  if (folder !== undefined) await checkOutFolder(folder, { sheets: path, names: outputNames });
  // The main thread has nothing to do while a solver searches: it loads what the files will need.
  if (folder !== undefined) loadWriters();
  const progress = showProgress(sheets.settings);
  const options = { ...search, budgetMinor, onProgress: progress.onProgress };
  const plan = await planArmy(sheets, today, options).finally(progress.end);
  const view = viewPlan(plan, problems);
  if (folder !== undefined) await writeFiles(folder, await renderFiles({ plan, view, sheets, problems }));
  if (flags.json) await printChunks(piecesOfPlanJson(describePlan(plan, problems)));
  else if (folder !== undefined) showAnswer(view.answer, fileList(folder));
}

type Settings = Sheets['settings'];

/** A way to buy; undefined where no flag names one. */
function readWayToBuy({ buy, sure }: PlanFlags): Pick<Settings, 'buy' | 'surePercent'> | undefined {
  if (buy !== undefined && sure !== undefined)
    throw new UsageError('--buy and --sure are two ways to buy. Write one of them.');
  if (sure !== undefined) return { surePercent: readSure(sure) };
  return buy === undefined ? undefined : { buy: readBuy(buy) };
}

/** A flag wins over the settings sheet; a way to buy over both settings that name one. */
function setByFlags(
  sheets: Sheets,
  date: string | undefined,
  wayToBuy: ReturnType<typeof readWayToBuy>,
): Sheets {
  const { surePercent, buy, ...others } = sheets.settings;
  const own = {
    ...(surePercent === undefined ? {} : { surePercent }),
    ...(buy === undefined ? {} : { buy }),
  };
  const settings = { ...others, ...(wayToBuy ?? own), ...(date === undefined ? {} : { date }) };
  return { ...sheets, settings };
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
