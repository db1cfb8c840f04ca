// Library: what another program imports. Sheets in; a plan, its report and its files as text out. The same stages as
// behind the command, which adds only flags, words on the console and the writing of files.
import { comparePlans } from './compare/compare-plans.js';
import { type Compared, readPlan } from './compare/pick-plan.js';
import type { Plan } from './model/plan.js';
import type { Problem } from './model/problem.js';
import type { IsoDate, Sheets } from './model/sheets.js';
import { openSolver, type PlanOptions, planArmy as plan, registry } from './plan-army.js';
import { drawCompare } from './report/compare/draw-compare.js';
import { type Side, viewCompare } from './report/compare/view-compare.js';
import { compareWords } from './report/compare/words.js';
import { writeCompareJson as writeCompared } from './report/compare/write-compare-json.js';
import { renderReport as render } from './report/page/render-report.js';
import { viewPlan } from './report/page/view.js';
import { describePlan } from './report/plan-json/describe-plan.js';
import { writePlanJson as writePieces } from './report/plan-json/write-plan-json.js';
import { viewReorder } from './report/reorder/view-reorder.js';
import { writeReorderCsv as writeCsv } from './report/reorder/write-reorder-csv.js';
import { type CheckedSheets, readSheets as readAndCheck } from './sheets/read-sheets.js';

export type * from './model/order.js';
export type * from './model/plan.js';
export type * from './model/problem.js';
export type * from './model/sheets.js';
export { openSolver, type PlanOptions } from './plan-army.js';
export { wordProblem } from './problems/word-problem.js';
export { renderBench, renderShop } from './report/page/render-report.js';
export type { CheckedSheets } from './sheets/read-sheets.js';

/**
 * Reads a folder of CSV sheets, or one workbook, and checks all of it. `today` (YYYY-MM-DD) is the day of the plan unless
 * the settings sheet names another. `sheets` is undefined where one of the problems is an error; `wordProblem` makes a
 * sentence of a problem. Rejects only where the path can't be read at all.
 *
 * @example
 * const { sheets, problems } = await readSheets('my-army', '2026-03-14');
 * if (sheets === undefined) throw new Error(problems.map(wordProblem).join('\n'));
 * const plan = await planArmy(sheets, '2026-03-14');
 */
export function readSheets(path: string, today: IsoDate): Promise<CheckedSheets> {
  return readAndCheck(path, { assumptions: registry, today });
}

/**
 * Plans checked sheets as of a day. What our own search leaves is solved by `solve`, else in a thread that is opened for this
 * plan and ends with it.
 */
export async function planArmy(sheets: Sheets, today: IsoDate, options: PlanOptions = {}): Promise<Plan> {
  if (options.solve !== undefined) return plan(sheets, today, options);
  const solver = openSolver();
  return plan(sheets, today, { ...options, solve: solver.solve }).finally(solver.close);
}

/** report.html: one page that needs no other file. Warnings among `problems` are shown in it. */
export function renderReport(plan: Plan, problems: readonly Problem[] = []): Promise<string> {
  return render(viewPlan(plan, problems));
}

/** plan.json, as `halfpot/plan.schema.json` describes it. An army of a million lines makes a text of a gigabyte. */
export function writePlanJson(plan: Plan, problems: readonly Problem[] = []): string {
  return [...writePieces(describePlan(plan, problems))].join('');
}

/** reorder.csv: what to buy, shop by shop; only its header row where nothing is. */
export function writeReorderCsv(plan: Plan): string {
  return writeCsv(viewReorder(plan));
}

/** One of two plans to compare, called as in the page. */
export interface NamedPlan {
  readonly name: string;
  /** What writePlanJson has written. */
  readonly planJson: string;
  /** The sheets of it; left out on either side, offers and shops are not compared, which is said. */
  readonly sheets?: Pick<Sheets, 'offers' | 'shops'>;
}

/** compare.html: two plans side by side. Rejects where one is not of this version, or damaged. */
export async function renderCompare(a: NamedPlan, b: NamedPlan): Promise<string> {
  const sides = { a: openSide(a), b: openSide(b) };
  return drawCompare(viewCompare(comparePlans(sides.a, sides.b), sides));
}

/** compare.json: the same numbers. Throws where renderCompare rejects. */
export function writeCompareJson(a: NamedPlan, b: NamedPlan): string {
  const sides = { a: openSide(a), b: openSide(b) };
  return writeCompared(comparePlans(sides.a, sides.b), sides);
}

function openSide({ name, planJson, sheets }: NamedPlan): Compared & Side {
  const plan = readPlan(planJson);
  if (typeof plan !== 'object')
    throw new Error(`${name} ${compareWords.fault[plan]}. Plan its sheets again.`);
  return { ...plan, name, market: sheets };
}
