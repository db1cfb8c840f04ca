// How large the page is: 50 units under 400 KB, 1,000 under 3 MB, with every unit in it. The armies repeat the sample's.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, it } from 'vitest';
import { readSheets, renderReport } from '../../../src/library.js';
import { planArmy } from '../../../src/plan-army.js';
import { makeArmy } from '../../bench/make-army.mjs';

const sample = fileURLToPath(new URL('../../../sample-data/low-sluice', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'halfpot-size-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

it.each([
  [50, 400_000],
  [1000, 3_000_000],
])('%d units take less than %d bytes, and none is left out', async (rows, bytes) => {
  const army = join(folder, String(rows));
  makeArmy({ sample, folder: army, rows });
  const { sheets, problems } = await readSheets(army, '2026-11-02');
  if (sheets === undefined) throw new Error('no sheets');
  const page = await renderReport(await planArmy(sheets, '2026-11-02'), problems);
  expect(Buffer.byteLength(page)).toBeLessThan(bytes);
  const costs = page.slice(
    page.indexOf('<table class="sums'),
    page.indexOf('</table>', page.indexOf('<table class="sums')),
  );
  for (const row of [1, Math.floor(rows / 2), rows]) expect(costs).toContain(`>Unit ${row}<`);
});
