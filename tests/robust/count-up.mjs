// Counts in a file, each time while it holds the folder: for the tests. `count-up.mjs MODULE FOLDER TIMES`: by the
// holdFolder of that module. With TIMES 0 it kills itself while it holds the folder.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const [module, folder, times] = process.argv.slice(2);
const { holdFolder } = await import(pathToFileURL(module).href);
const path = join(folder, 'count');

if (times === '0') await holdFolder(folder, () => process.kill(process.pid, 'SIGKILL'));
for (let turn = 0; turn < Number(times); turn += 1)
  await holdFolder(folder, () => writeFileSync(path, String(Number(readFileSync(path, 'utf8')) + 1)));
