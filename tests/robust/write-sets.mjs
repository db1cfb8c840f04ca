// Writes one set of files after another into a folder, until it is killed: a writer for the tests.
// `write-sets.mjs MODULE FOLDER FILES NAME KILOBYTES [MOST]`: by the writeFiles of that module; prints the number of each set that
// stands. Every file says first and last which set it is of.
import { pathToFileURL } from 'node:url';

const [module, folder, files, name, kilobytes, most = 'Infinity'] = process.argv.slice(2);
const { writeFiles } = await import(pathToFileURL(module).href);
const filler = 'x'.repeat(1023);

function* pieces(set) {
  yield `${set}\n`;
  for (let at = 0; at < Number(kilobytes); at += 1) yield `${filler}\n`;
  yield `end of ${set}\n`;
}

for (let count = 0; count < Number(most); count += 1) {
  const set = `${name} ${count}`;
  await writeFiles(
    folder,
    files.split(',').map((file) => ({ name: file, content: pieces(set) })),
  );
  process.stdout.write(`${count}\n`);
}
