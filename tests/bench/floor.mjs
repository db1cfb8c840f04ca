// Bench: the least that any planner must do. In: a folder of CSV sheets, a folder to write to, and the outputs of the
// real plan. Out: every sheet parsed, and as many bytes written to files of the same names.
import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { argv } from 'node:process';
import Papa from 'papaparse';

const [sheets, out, like] = argv.slice(2);
let rows = 0;
for (const name of readdirSync(sheets)) {
  rows += Papa.parse(readFileSync(join(sheets, name), 'utf8'), { skipEmptyLines: true }).data.length;
}
mkdirSync(out, { recursive: true });
for (const name of readdirSync(like)) {
  writeFileSync(join(out, name), '.'.repeat(statSync(join(like, name)).size));
}
console.log(`${rows} rows`);
