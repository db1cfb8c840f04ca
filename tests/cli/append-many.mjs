// Adds lines to a file as fast as it can, until it is killed: a writer for the tests.
// `append-many.mjs MODULE FILE NAME LETTERS [MOST [START]]`: by the appendLines of that module; at most so many lines, from
// that time on (ms since 1970).
import { setTimeout as wait } from 'node:timers/promises';
import { pathToFileURL } from 'node:url';

const [module, path, name, letters, most = 'Infinity', start = '0'] = process.argv.slice(2);
const { appendLines } = await import(pathToFileURL(module).href);
const filler = 'x'.repeat(Number(letters));
const header = Buffer.from('name,count,filler,end\n');

await wait(Math.max(0, Number(start) - Date.now() - 5));
while (Date.now() < Number(start)) {
  // The timers of several processes are not exact enough to begin at once.
}
for (let count = 0; count < Number(most); count += 1) {
  const line = Buffer.from(`${name},${count},${filler},end\n`);
  await appendLines(path, (held) => (held === undefined ? Buffer.concat([header, line]) : line));
  process.stdout.write(`${count}\n`);
}
