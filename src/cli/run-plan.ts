// Command line: `halfpot plan`. In: paths to the sheets of armies, flags. Out: the report's files, the answer on the console.
import { join, resolve } from 'node:path';
import { openSolver, type PlanOptions, planArmy } from '../plan-army.js';
import { viewPlan } from '../report/page/view.js';
import { describePlan } from '../report/plan-json/describe-plan.js';
import { writePlanJson } from '../report/plan-json/write-plan-json.js';
import { checkOutFolder } from './check-out-folder.js';
import { checkDate, today } from './choose-date.js';
import { exitCodes, UsageError } from './end-run.js';
import { type Narrowing, narrowSheets } from './narrow-sheets.js';
import { openOrSay } from './open-file.js';
import { printChunks } from './print-chunks.js';
import { readBudget, readBuy, readSeconds, readSure } from './read-budget.js';
import { readOrShow, type Sheets } from './read-or-show.js';
import { loadWriters, outputNames, renderFiles } from './render-files.js';
import { showAnswer } from './show-answer.js';
import type { Problem } from './show-problems.js';
import { showProgress } from './show-progress.js';
import { writeFiles } from './write-files.js';

interface Search extends Pick<PlanOptions, 'seconds'> {
  readonly solver: ReturnType<typeof openSolver>;
}

export interface PlanFlags extends Narrowing {
  /** Folder of the pots, offers and log of all armies. */
  readonly shelf?: string;
  readonly out?: string;
  readonly date?: string;
  readonly json?: true;
  /** Whether to open the report. */
  readonly open?: true;
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
export async function runPlan(paths: readonly string[], flags: PlanFlags): Promise<number> {
  checkArmies(paths);
  const day = { today: today(), chosenDay: flags.date === undefined ? undefined : checkDate(flags.date) };
  const seconds = flags.seconds === undefined ? undefined : readSeconds(flags.seconds);
  const wayToBuy = readWayToBuy(flags);
  const folder = flags.out ?? (flags.json ? undefined : flags.usualFolder);
  if (flags.open && folder === undefined)
    throw new UsageError('--json writes no report to open. Name a folder with --out, or leave --open out.');
  if (folder !== undefined) checkOutFolder(folder, { sheets: paths, names: outputNames });
  // A thread of its own: while it searches for long, Ctrl-C is answered at once.
  const solver = openSolver();
  try {
    const { sheets, problems, shelf } = await readOrShow(paths, day, { shelf: flags.shelf });
    if (sheets === undefined) return exitCodes.problems;
    if (folder !== undefined && shelf !== undefined)
      checkOutFolder(folder, { sheets: [shelf], names: outputNames });
    const settings = setByFlags(sheets.settings, wayToBuy);
    const part = narrowSheets({ ...sheets, settings }, flags);
    const asked = { folder, ...part, problems, today: day.today };
    await planAndWrite(asked, flags, { solver, seconds });
    return exitCodes.done;
  } finally {
    await solver.close();
  }
}

function checkArmies(paths: readonly string[]): void {
  const again = paths.find((path, at) => paths.findIndex((other) => resolve(other) === resolve(path)) < at);
  if (again !== undefined) throw new UsageError(`${again} is named twice. Name each army once.`);
}

interface Asked {
  /** Undefined: no files. */
  readonly folder: string | undefined;
  readonly sheets: Sheets;
  /** The part of the army to plan for; undefined: all of it. */
  readonly army: Sheets['army'] | undefined;
  readonly problems: readonly Problem[];
  readonly today: string;
}

async function planAndWrite(
  { folder, sheets, army, problems, today }: Asked,
  flags: PlanFlags,
  { solver, seconds }: Search,
): Promise<void> {
  const budgetMinor = flags.budget === undefined ? undefined : readBudget(flags.budget, sheets.settings);
  // The main thread has nothing to do while a solver searches: it loads what the files will need.
  if (folder !== undefined) loadWriters();
  const { onStage, follow, end } = showProgress();
  const told = { onStage, ...follow?.(sheets.settings) };
  const options = { solve: solver.solve, seconds, budgetMinor, army, ...told };
  const plan = await planArmy(sheets, today, options).finally(end);
  // The files take the memory that the solver leaves.
  await solver.close();
  const view = viewPlan(plan, problems);
  if (folder !== undefined) {
    onStage('writing');
    const files = renderFiles({ plan, view, sheets, problems });
    await files.then((all) => writeFiles(folder, all)).finally(end);
  }
  if (flags.json) await printChunks(writePlanJson(describePlan(plan, problems)));
  else if (folder !== undefined) showAnswer(view, fileList(folder));
  if (flags.open && folder !== undefined) await openOrSay(join(folder, outputNames[0]));
}

type Settings = Sheets['settings'];

/** A way to buy; undefined where no flag names one. */
function readWayToBuy({ buy, sure }: PlanFlags): Pick<Settings, 'buy' | 'surePercent'> | undefined {
  if (buy !== undefined && sure !== undefined)
    throw new UsageError('--buy and --sure are two ways to buy. Write one of them.');
  if (sure !== undefined) return { surePercent: readSure(sure) };
  return buy === undefined ? undefined : { buy: readBuy(buy) };
}

/** A way to buy that a flag names wins over both settings that name one. */
function setByFlags(settings: Settings, wayToBuy: ReturnType<typeof readWayToBuy>): Settings {
  const { surePercent, buy, ...others } = settings;
  return wayToBuy === undefined ? settings : { ...others, ...wayToBuy };
}

function fileList(folder: string): string[] {
  const says = [
    'open it in a browser',
    'the shopping list for a phone',
    'cards for the bench, four to a page',
    'the reorder list',
    'the same as a workbook',
    'the estimate, to try changes',
    'every number',
  ];
  return outputNames.map((name, at) => `  ${join(folder, name)}  ${says[at] ?? ''}`);
}
