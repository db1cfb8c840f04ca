// Command line: one of two plans to compare. In: a path, sheets to replace. Out: what is compared of its plan, from the plan.json
// there or made anew.
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { type ComparedPlan, pickPlan } from '../compare/pick-plan.js';
import { openSolver, planArmy } from '../plan-army.js';
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
export async function takePlan(given: Given): Promise<ComparedPlan | undefined> {
  const file = planFileOf(given.path);
  const text = file === undefined ? await planSheets(given) : await readFile(file, 'utf8');
  if (text === undefined) return undefined;
  const plan = pickPlan(parse(text));
  if (typeof plan === 'object') return plan;
  const why = {
    older: 'was written by an older Halfpot',
    newer: 'was written by a newer Halfpot',
    damaged: 'is not a plan, or is damaged',
  }[plan];
  throw new UsageError(`${file} ${why}. Plan its sheets again, or name the sheets instead of ${given.path}.`);
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** The text of a plan.json that is never written. */
async function planSheets({ path, instead, day, seconds }: Given): Promise<string | undefined> {
  const solver = openSolver();
  try {
    const { sheets, problems } = await readOrShow([path], day, { instead });
    if (sheets === undefined) return undefined;
    const { onStage, follow, end } = showProgress();
    const told = { onStage, ...follow?.(sheets.settings) };
    const plan = await planArmy(sheets, day.today, { solve: solver.solve, seconds, ...told }).finally(end);
    return [...writePlanJson(describePlan(plan, problems))].join('');
  } finally {
    await solver.close();
  }
}
