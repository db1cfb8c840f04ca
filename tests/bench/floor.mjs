// Bench: the least that any planner must do. In: a folder of CSV sheets, a folder to write to, and the outputs of the
// real plan. Out: every sheet parsed, and as many bytes written to files of the same names.
import { closeSync, mkdirSync, openSync, readdirSync, readFileSync, statSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { argv } from 'node:process';
import Papa from 'papaparse';

const [sheets, out, like] = argv.slice(2);
let rows = 0;
for (const name of readdirSync(sheets)) {
  rows += Papa.parse(readFileSync(join(sheets, name), 'utf8'), { skipEmptyLines: true }).data.length;
}
mkdirSync(out, { recursive: true });
const piece = '.'.repeat(2 ** 20);
for (const name of readdirSync(like)) {
  const file = openSync(join(out, name), 'w');
  for (let left = statSync(join(like, name)).size; left > 0; left -= piece.length) {
    writeSync(file, piece.slice(0, left));
  }
  closeSync(file);
}
console.log(`${rows} rows`);
