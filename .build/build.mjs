// Build: the whole of dist/. `node .build/build.mjs` makes the program, its types and the notices of the libraries in it;
// `--out FOLDER` puts them elsewhere, `--program` leaves types as they are (they take longest). Ends with 1 on a type error.
import { createHash } from 'node:crypto';
import { chmodSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { bundleProgram } from './bundle-program.mjs';
import { escapeLetters } from './escape-letters.mjs';
import { listNotices } from './list-notices.mjs';
import { writeTypes } from './write-types.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));

const { values } = parseArgs({
  options: { out: { type: 'string', default: 'dist' }, program: { type: 'boolean', default: false } },
});
const dist = resolve(root, values.out);

/** The command itself; check, plan and so on keep compiled code of their own, and all helps together. */
const command = (build) => `#!/usr/bin/env node
const words = process.argv.slice(2);
const isHelp = words.some((word) => word === '-h' || word === '--help') || !/^[a-z]+$/.test(words[0] ?? '');
require('../program/start-program.js')('main.js', isHelp ? 'help' : words[0], '${build}');
`;

/** Writes a file of dist/ and gives its path back. */
function write(name, content) {
  const path = join(dist, name);
  mkdirSync(dirname(path), { recursive: true });
  writeFileSync(path, content);
  return path;
}

/** Removes what an earlier build left and this one did not make, compiled code too. */
function removeOld(kept) {
  const folders = new Set(
    [...kept, ...(values.program ? [join(dist, 'types/library.d.ts')] : [])].map(topOf),
  );
  for (const name of readdirSync(dist))
    if (!folders.has(name)) rmSync(join(dist, name), { recursive: true, force: true });
  for (const entry of readdirSync(dist, { recursive: true, withFileTypes: true })) {
    const path = join(entry.parentPath, entry.name);
    const isLeft = values.program && topOf(path) === 'types';
    if (entry.isFile() && !kept.has(path) && !isLeft) rmSync(path);
  }
}

/** What stands in dist/ itself on the way to a file. */
const topOf = (path) => relative(dist, path).split(sep)[0];

const { files, moduleIds } = await bundleProgram(root);
const program = files.map(([name, content]) => [
  name,
  name.endsWith('.js') ? escapeLetters(content, name) : content,
]);
const hash = createHash('sha256');
for (const [name, content] of program) hash.update(`${name}\n`).update(content);
const build = hash.digest('hex').slice(0, 16);
const written = [
  ...(values.program ? [] : writeTypes(root)).map(([name, text]) => write(join('types', name), text)),
  ...program.map(([name, content]) => write(join('program', name), content)),
  write('program/start-program.js', readFileSync(new URL('start-program.cjs', import.meta.url))),
  write('THIRD-PARTY-NOTICES.txt', listNotices(moduleIds)),
  // CommonJS starts sooner: no loader that waits, and the system's modules come without a copy of all their members.
  write('package.json', '{ "type": "commonjs" }\n'),
  // Last: where it is newer than a source, the build was whole.
  write('cli/main.js', command(build)),
];
chmodSync(join(dist, 'cli/main.js'), 0o755);
removeOld(new Set(written));
