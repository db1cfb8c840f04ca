// The built program is what command line tests run, so it must not be older than its sources. `npm test` builds first;
// this serves runs of single test files.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, rmdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Test files run side by side; the folder stands while one of them builds. */
const lock = join(root, 'node_modules/.halfpot-build');

const command = 'dist/cli/main.js';
const types = 'dist/types/library.d.ts';

/** A template may come and go while someone edits it. */
const changedMs = (name: string): number =>
  statSync(join(root, name), { throwIfNoEntry: false })?.mtimeMs ?? 0;

function isOld(built: string): boolean {
  const sources = ['.build', 'src', 'templates'].flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }).map((name) => join(folder, name)),
  );
  return sources.some((name) => changedMs(name) > changedMs(built));
}

function isFree(): boolean {
  try {
    mkdirSync(lock);
    return true;
  } catch {
    return false;
  }
}

/** Builds where a source is newer than what was built; types only where they are asked for, since they take longest. */
export function buildOnce({ withTypes = false }: { readonly withTypes?: boolean } = {}): void {
  const built = withTypes ? types : command;
  if (!isOld(built)) return;
  for (let waited = 0; !isFree() && waited < 6000; waited += 1)
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 100);
  try {
    if (isOld(built)) build(withTypes);
  } finally {
    rmdirSync(lock);
  }
}

function build(withTypes: boolean): void {
  const args = ['.build/build.mjs', ...(withTypes ? [] : ['--program'])];
  const { stderr } = spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8' });
  if (isOld(withTypes ? types : command)) throw new Error(`the build failed: ${stderr}`);
}
