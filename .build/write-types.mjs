// Build: types of the library. In: the checkout. Out: the declarations that `import 'halfpot'` reaches, and no others.
// They must stand on their own, since the package brings no library along: those of decimal.js are copied among them.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join, posix } from 'node:path';
import { execPath } from 'node:process';

const require = createRequire(import.meta.url);

/** `from './plan.js'`, `import('./plan.js')` */
const importPattern = /(\bfrom |\bimport\()'([^']+)'/g;

const copied = { 'decimal.js': join(dirname(require.resolve('decimal.js')), 'decimal.d.ts') };

/** The path of a declaration relative to the types folder, seen from another one. */
const seenFrom = (name, target) => {
  const path = posix.relative(posix.dirname(name), target);
  return path.startsWith('.') ? path : `./${path}`;
};

/** Declarations of all sources; a type error is printed and makes the build fail, after all is written. */
function declare(root, folder) {
  const tsc = join(root, 'node_modules/typescript/bin/tsc');
  const { status } = spawnSync(
    execPath,
    [tsc, '-p', 'tsconfig.json', '--emitDeclarationOnly', '--outDir', folder],
    { cwd: root, stdio: 'inherit' },
  );
  if (status !== 0) process.exitCode = 1;
}

/**
 * Throws where a declaration leans on a library that is not copied.
 * @returns {[name: string, text: string][]} the declarations
 */
export function writeTypes(root) {
  const scratch = mkdtempSync(join(tmpdir(), 'halfpot-types-'));
  const texts = new Map();
  const take = (name) => {
    if (texts.has(name)) return;
    texts.set(name, '');
    const text = readFileSync(join(scratch, name), 'utf8').replace(importPattern, (_, before, from) => {
      if (copied[from] !== undefined) return `${before}'${seenFrom(name, from)}'`;
      if (!from.startsWith('.'))
        throw new Error(`${name} leans on ${from}, which the package does not bring`);
      take(posix.join(posix.dirname(name), from.replace(/\.js$/, '.d.ts')));
      return `${before}'${from}'`;
    });
    texts.set(name, text);
  };
  try {
    declare(root, scratch);
    take('library.d.ts');
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
  for (const [name, path] of Object.entries(copied))
    texts.set(name.replace(/\.js$/, '.d.ts'), readFileSync(path, 'utf8'));
  return [...texts];
}
