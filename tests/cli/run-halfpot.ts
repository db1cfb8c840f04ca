// The real program as a painter runs it: built, in a process of its own, in a folder of its own.
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll } from 'vitest';
import { buildOnce } from './build-once.js';

buildOnce();

/** The built command. */
export const mainPath = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));

export interface Run {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export interface RunOptions {
  /** Where it runs; the current folder unless given. */
  readonly cwd?: string;
  readonly env?: Readonly<Record<string, string>>;
  /** Another user to run as; only root may choose one. */
  readonly uid?: number;
}

/** Runs to the end. */
export function runHalfpot(args: readonly string[], { env = {}, ...options }: RunOptions = {}): Run {
  const run = spawnSync(process.execPath, [mainPath, ...args], {
    ...options,
    env: { ...process.env, ...env },
    encoding: 'utf8',
    maxBuffer: 2 ** 30,
  });
  return { code: run.status, out: run.stdout, err: run.stderr };
}

/** Starts and does not wait. */
export function startHalfpot(args: readonly string[]): ChildProcess {
  return spawn(process.execPath, [mainPath, ...args], { stdio: ['ignore', 'pipe', 'pipe'] });
}

/** A fresh folder, removed when the test file is done. */
export function makeFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'halfpot-test-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
