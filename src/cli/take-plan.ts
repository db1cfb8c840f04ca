// Command line: one of two plans to compare. In: a path, sheets to replace. Out: what is compared of its plan, from the plan.json
// there or made anew.
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type Compared, readPlan } from '../compare/pick-plan.js';
import { openSolver, planArmy } from '../plan-army.js';
import { compareWords } from '../report/compare/words.js';
import { describePlan } from '../report/plan-json/describe-plan.js';
import { writePlanJson } from '../report/plan-json/write-plan-json.js';
import { UsageError } from './end-run.js';
import { readOrShow } from './read-or-show.js';
import { showProgress } from './show-progress.js';

interface Given {
  readonly path: string;
  /** Read in the place of sheets of the path. */
  readonly instead: NonNullable<NonNullable<Parameters<typeof readOrShow>[2]>['instead']>;
  readonly day: Parameters<typeof readOrShow>[1];
  readonly seconds: number | undefined;
}

/** The plan.json that `plan` has written into a folder; undefined where there is none. */
export function planFileOf(path: string): string | undefined {
  const file = join(path, 'plan.json');
  return existsSync(file) ? file : undefined;
}

/** Undefined where the sheets have errors, which are shown. Throws a UsageError for a plan.json that cannot be compared. */
export async function takePlan(given: Given): Promise<Compared | undefined> {
  const file = planFileOf(given.path);
  const { text, market }: Read =
    file === undefined ? await planSheets(given) : { text: await readFile(file, 'utf8') };
  if (text === undefined) return undefined;
  const plan = readPlan(text);
  if (typeof plan === 'object') return { ...plan, market };
  const remedy = `Plan its sheets again, or name the sheets instead of ${given.path}.`;
  throw new UsageError(`${file} ${compareWords.fault[plan]}. ${remedy}`);
}

interface Read {
  /** Of a plan.json; undefined where the sheets have errors. */
  readonly text?: string;
  readonly market?: Compared['market'];
}

/** What a plan.json of the sheets would hold, with their market. */
async function planSheets({ path, instead, day, seconds }: Given): Promise<Read> {
  const solver = openSolver();
  try {
    const { sheets, problems } = await readOrShow([path], day, { instead });
    if (sheets === undefined) return {};
    const { onStage, follow, end } = showProgress();
    const told = { onStage, ...follow?.(sheets.settings) };
    const plan = await planArmy(sheets, day.today, { solve: solver.solve, seconds, ...told }).finally(end);
    const text = [...writePlanJson(describePlan(plan, problems))].join('');
    return { text, market: { offers: sheets.offers, shops: sheets.shops } };
  } finally {
    await solver.close();
  }
}
