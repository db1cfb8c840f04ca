// Sample: the report under reports/ is what the program writes today, byte for byte.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { makeFolder, runHalfpot } from '../cli/run-halfpot.js';

const sample = fileURLToPath(new URL('../../sample-data/low-sluice', import.meta.url));
const committed = fileURLToPath(new URL('../../reports/low-sluice', import.meta.url));
const fresh = makeFolder();
// On a machine busy with other things a proof may take longer than usual: as long as `npm run demo` waits for one.
const run = runHalfpot(['plan', sample, '--seconds', '300', '--out', fresh]);

it('is planned without a word of trouble', () => {
  expect([run.code, run.err]).toEqual([0, '']);
});

it.each([
  'report.html',
  'shop.html',
  'bench.html',
  'reorder.csv',
  'reorder.xlsx',
  'estimate.xlsx',
  'plan.json',
])('%s is current', (name) => {
  const same = readFileSync(join(committed, name)).equals(readFileSync(join(fresh, name)));
  expect(same, `reports/low-sluice/${name} is stale: run "npm run demo" and commit what it writes`).toBe(
    true,
  );
});

it('holds these files and nothing else', () => {
  expect(readdirSync(committed).sort()).toEqual(readdirSync(fresh).sort());
});
