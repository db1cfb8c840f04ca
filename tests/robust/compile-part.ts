// Robust: one file of the program and what it imports, compiled for processes of their own. The program itself is built as
// one file, of which a test can't run a part.
import { spawnSync } from 'node:child_process';
import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Compiles `src/...ts` into a folder; gives the path of the module there. Types are checked elsewhere. */
export function compilePart(source: string, folder: string): string {
  writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
  const options = ['--ignoreConfig', '--noCheck', '--module', 'nodenext', '--target', 'es2023'];
  const places = ['--rootDir', 'src', '--outDir', folder];
  const args = ['node_modules/typescript/bin/tsc', ...options, ...places, source];
  const { stdout } = spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8' });
  const made = join(folder, source.replace(/^src\//, '').replace(/\.ts$/, '.js'));
  if (!existsSync(made)) throw new Error(stdout);
  return made;
}
