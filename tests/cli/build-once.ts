// The built program is what command line tests run, so it must not be older than the sources. `npm test` builds first;
// this serves runs of single test files.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, rmdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Test files run side by side; the folder stands while one of them builds. */
const lock = join(root, 'node_modules/.halfpot-build');

function isOld(): boolean {
  const built = statSync(join(root, 'dist/cli/main.js'), { throwIfNoEntry: false })?.mtimeMs ?? 0;
  const sources = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' });
  return sources.some((name) => statSync(join(root, 'src', name)).mtimeMs > built);
}

function isFree(): boolean {
  try {
    mkdirSync(lock);
    return true;
  } catch {
    return false;
  }
}

/** Builds where a source is newer than the built program; types are checked elsewhere. */
export function buildOnce(): void {
  if (!isOld()) return;
  for (let waited = 0; !isFree() && waited < 600; waited += 1)
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 100);
  try {
    if (isOld())
      spawnSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'tsconfig.json'], { cwd: root });
  } finally {
    rmdirSync(lock);
  }
}
