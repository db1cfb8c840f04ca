// Sample: reads the sample army as the command line does. In: `folder` or `workbook`. Out: its checked sheets.
import { fileURLToPath } from 'node:url';
import type { Problem } from '../../src/model/problem.js';
import type { Sheets } from '../../src/model/sheets.js';
import { registry } from '../../src/plan-army.js';
import { readSheets } from '../../src/sheets/read-sheets.js';

/** The date in the sample's settings: the day of the test does not matter. */
export const today = '2026-11-02';

const paths = {
  folder: fileURLToPath(new URL('../../sample-data/low-sluice', import.meta.url)),
  workbook: fileURLToPath(new URL('../../sample-data/low-sluice.xlsx', import.meta.url)),
} as const;

/** The sheets and what the checks found in them; throws where they cannot be planned. */
export async function readSample(
  kind: keyof typeof paths,
): Promise<{ readonly sheets: Sheets; readonly problems: readonly Problem[] }> {
  const { sheets, problems } = await readSheets(paths[kind], { assumptions: registry, today });
  if (sheets === undefined)
    throw new Error(`the sample has errors: ${JSON.stringify(problems, undefined, 2)}`);
  return { sheets, problems };
}
