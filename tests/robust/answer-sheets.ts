// Robust: the whole program in this process. In: a path to sheets. Out: a plan with all its files, or problems; anything else
// fails.
import { expect } from 'vitest';
import { packPieces } from '../../src/cli/pack-pieces.js';
import { renderFiles } from '../../src/cli/render-files.js';
import type { OutputFile } from '../../src/cli/write-files.js';
import { planArmy, registry } from '../../src/plan-army.js';
import { wordProblem } from '../../src/problems/word-problem.js';
import { viewPlan } from '../../src/report/page/view.js';
import { planSchema } from '../../src/report/plan-json/plan-document.js';
import { readSheets } from '../../src/sheets/read-sheets.js';

const today = '2026-11-02';

/** Bytes of each file by name; undefined where the sheets have errors. */
export type Answer = ReadonlyMap<string, Buffer> | undefined;

/** Reads and checks: sheets without errors, or words for each problem. */
export async function readChecked(path: string) {
  const { sheets, problems } = await readSheets(path, { assumptions: registry, today });
  for (const one of problems) expect(wordProblem(one)).toMatch(/^.+: .+\.$/s);
  if (sheets === undefined) expect(problems.map(({ severity }) => severity)).toContain('error');
  return { sheets, problems };
}

/** Plans and renders whatever can be planned. */
export async function answerSheets(path: string): Promise<Answer> {
  const { sheets, problems } = await readChecked(path);
  if (sheets === undefined) return undefined;
  const plan = await planArmy(sheets, today, { draws: 200, seconds: 1 });
  const files = await renderFiles({ plan, view: viewPlan(plan, problems), sheets, problems });
  const bytes = new Map(files.map(({ name, content }) => [name, toBytes(content)]));
  planSchema.parse(JSON.parse(bytes.get('plan.json')?.toString() ?? ''));
  return bytes;
}

function toBytes(content: OutputFile['content']): Buffer {
  if (typeof content === 'string') return Buffer.from(content);
  if (content instanceof Uint8Array) return Buffer.from(content);
  return Buffer.concat(Array.from(packPieces(content), (chunk) => Buffer.from(chunk)));
}
