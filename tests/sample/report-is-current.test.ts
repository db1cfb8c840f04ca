// Sample: the report under reports/ is what the program writes today, byte for byte.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { runPlan } from '../../src/cli/run-plan.js';

const sample = fileURLToPath(new URL('../../sample-data/low-sluice', import.meta.url));
const committed = fileURLToPath(new URL('../../reports/low-sluice', import.meta.url));
const fresh = mkdtempSync(join(tmpdir(), 'halfpot-report-'));

beforeAll(async () => {
  const quiet = vi.spyOn(process.stdout, 'write').mockReturnValue(true);
  expect(await runPlan(sample, { out: fresh, usualFolder: fresh })).toBe(0);
  quiet.mockRestore();
});

afterAll(() => rmSync(fresh, { recursive: true, force: true }));

it.each(['report.html', 'reorder.csv', 'reorder.xlsx', 'plan.json'])('%s is current', (name) => {
  const same = readFileSync(join(committed, name)).equals(readFileSync(join(fresh, name)));
  expect(same, `reports/low-sluice/${name} is stale: run \`npm run demo\` and commit what it writes`).toBe(
    true,
  );
});

it('holds these four files and nothing else', () => {
  expect(readdirSync(committed).sort()).toEqual(readdirSync(fresh).sort());
});
