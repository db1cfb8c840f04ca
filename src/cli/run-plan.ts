// Command line: `halfpot plan`. In: a path to sheets, flags. Out: the report's files, the answer on the console.
import { join } from 'node:path';
import { openSolver, planArmy } from '../plan-army.js';
import { writePlanJson } from '../report/export/write-plan-json.js';
import { writeReorderCsv } from '../report/export/write-reorder-csv.js';
import { writeReorderWorkbook } from '../report/export/write-reorder-workbook.js';
import { renderReport } from '../report/render-report.js';
import { describePlan } from '../report/view/describe-plan.js';
import { viewPlan } from '../report/view/view-plan.js';
import { viewReorder } from '../report/view/view-reorder.js';
import { checkOutFolder } from './check-out-folder.js';
import { checkDate, today } from './choose-date.js';
import { exitCodes } from './end-run.js';
import { printChunks } from './print-chunks.js';
import { readBudget, readSeconds } from './read-budget.js';
import { readOrShow, type Sheets } from './read-or-show.js';
import { showAnswer } from './show-answer.js';
import type { Problem } from './show-problems.js';
import { showProgress } from './show-progress.js';
import { type OutputFile, writeFiles } from './write-files.js';

export interface PlanFlags {
  readonly out?: string;
  readonly date?: string;
  readonly json?: true;
  /** What cash there is, as written. */
  readonly budget?: string;
  /** How long to search for the order, as written. */
  readonly seconds?: string;
  /** Where files go without --out. */
  readonly usualFolder: string;
}

/** Plans and writes; gives 1, with nothing written, where the sheets have errors. */
export async function runPlan(path: string, flags: PlanFlags): Promise<number> {
  const chosen = flags.date === undefined ? undefined : checkDate(flags.date);
  const { sheets, problems } = await readOrShow(path, chosen ?? today());
  if (sheets === undefined) return exitCodes.problems;

  const folder = flags.out ?? (flags.json ? undefined : flags.usualFolder);
  if (folder !== undefined) await checkOutFolder(folder, { sheets: path, names: outputNames });
  const plan = await planWatched(datedSheets(sheets, chosen), chosen ?? today(), flags);
  if (folder !== undefined) await writeFiles(folder, await renderFiles(plan, problems));

  if (flags.json) await printChunks(writePlanJson(describePlan(plan, problems)));
  else if (folder !== undefined) showAnswer(viewPlan(plan, problems).answer, fileList(folder));
  return exitCodes.done;
}

/** Plans with the solver in a thread of its own, so that Ctrl-C is answered at once. */
async function planWatched(sheets: Sheets, day: string, { budget, seconds }: PlanFlags): Promise<Plan> {
  const progress = showProgress(sheets.settings);
  const solver = openSolver();
  try {
    return await planArmy(sheets, day, {
      solve: solver.solve,
      onProgress: progress.onProgress,
      seconds: seconds === undefined ? undefined : readSeconds(seconds),
      budgetMinor: budget === undefined ? undefined : readBudget(budget, sheets.settings),
    });
  } finally {
    progress.end();
    await solver.close();
  }
}

type Plan = Awaited<ReturnType<typeof planArmy>>;

/** plan.json comes last: where it stands, the others stand too. */
const outputNames = ['report.html', 'reorder.csv', 'reorder.xlsx', 'plan.json'] as const;

/** The flag wins over the date of the settings sheet. */
function datedSheets(sheets: Sheets, date: string | undefined): Sheets {
  return date === undefined ? sheets : { ...sheets, settings: { ...sheets.settings, date } };
}

async function renderFiles(plan: Plan, problems: readonly Problem[]): Promise<OutputFile[]> {
  const reorder = viewReorder(plan);
  const contents: Readonly<Record<(typeof outputNames)[number], OutputFile['content']>> = {
    'report.html': await renderReport(viewPlan(plan, problems)),
    'reorder.csv': writeReorderCsv(reorder),
    'reorder.xlsx': await writeReorderWorkbook(reorder),
    'plan.json': writePlanJson(describePlan(plan, problems)),
  };
  return outputNames.map((name) => ({ name, content: contents[name] }));
}

function fileList(folder: string): string[] {
  const says = ['open it in a browser', 'the reorder list', 'the same as a workbook', 'every number'];
  return outputNames.map((name, at) => `  ${join(folder, name)}  ${says[at] ?? ''}`);
}
