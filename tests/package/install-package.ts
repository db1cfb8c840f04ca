// The package as a stranger gets it: packed, and installed into an empty folder with no network and nothing cached.
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, realpathSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll } from 'vitest';
import { buildOnce } from '../cli/build-once.js';
import type { Run } from '../cli/run-halfpot.js';

const root = fileURLToPath(new URL('../..', import.meta.url));

export interface Installed {
  /** The folder into which it was installed. */
  readonly home: string;
  /** The package in it. */
  readonly folder: string;
  readonly packedBytes: number;
  /** Runs a program there, by the name that npm gave it or by its path. */
  readonly run: (program: string, args: readonly string[]) => Run;
}

/** Builds where needed, packs and installs. Throws with npm's own words where that fails. */
export function installPackage(): Installed {
  buildOnce({ withTypes: true });
  const scratch = realpathSync(mkdtempSync(join(tmpdir(), 'halfpot-package-')));
  afterAll(() => rmSync(scratch, { recursive: true, force: true }));
  const home = join(scratch, 'home');
  mkdirSync(home);
  writeFileSync(join(home, 'package.json'), '{ "private": true }');
  const run = (cwd: string, program: string, args: readonly string[]): Run => {
    const { status, stdout, stderr } = spawnSync(program, args, { cwd, encoding: 'utf8' });
    return { code: status, out: stdout, err: stderr };
  };
  const npm = (cwd: string, args: readonly string[]): void => {
    const { code, err } = run(cwd, 'npm', [...args, '--cache', join(scratch, 'cache')]);
    if (code !== 0) throw new Error(`npm ${args.join(' ')}: ${err}`);
  };
  npm(root, ['pack', '--ignore-scripts', '--pack-destination', scratch]);
  const packed = readdirSync(scratch).find((name) => name.endsWith('.tgz')) ?? '';
  npm(home, ['install', '--offline', '--no-audit', '--no-fund', join(scratch, packed)]);
  return {
    home,
    folder: join(home, 'node_modules/halfpot'),
    packedBytes: statSync(join(scratch, packed)).size,
    run: (program, args) =>
      run(home, program === 'halfpot' ? join(home, 'node_modules/.bin/halfpot') : program, args),
  };
}
