// Bench: the least that any reader of a log must do. In: a folder with a log.csv, or none. Out: its rows, parsed and left at that.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { argv } from 'node:process';
import Papa from 'papaparse';

const [folder] = argv.slice(2);
if (folder !== undefined) {
  const text = readFileSync(join(folder, 'log.csv'), 'utf8');
  console.log(Papa.parse(text, { skipEmptyLines: true }).data.length);
}
