// One at a time in a folder, though some are killed while they hold it.
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, readdirSync, readFileSync, utimesSync, writeFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { UsageError } from '../../src/cli/end-run.js';
import { holdFolder } from '../../src/cli/hold-folder.js';
import { makeFolder } from '../cli/run-halfpot.js';
import { compilePart } from './compile-part.js';
import { rounds } from './soak.js';

const root = makeFolder();
const compiled = makeFolder();
const script = fileURLToPath(new URL('./count-up.mjs', import.meta.url));
let module = '';
beforeAll(async () => {
  module = await compilePart('src/cli/hold-folder.ts', compiled);
});

const start = (folder: string, times: number): ChildProcess =>
  spawn(process.execPath, [script, module, folder, String(times)], { stdio: 'inherit' });

/** A lock as a run leaves it. */
function leaveLock(folder: string, owner: string): string {
  const lock = join(folder, '.halfpot-lock');
  mkdirSync(lock, { recursive: true });
  writeFileSync(join(lock, 'owner'), owner);
  return lock;
}

/** Above the largest number that Linux gives (4194304), so that no process has it. */
const nobody = 2 ** 30;

describe('holdFolder', () => {
  it('loses no count among processes that hold it by turns, some of which die holding it', async () => {
    const folder = join(root, 'count');
    mkdirSync(folder);
    writeFileSync(join(folder, 'count'), '0');
    const turns = rounds(20);
    const counting = [turns, turns, turns].map((times) => start(folder, times));
    const ended = counting.map((child) => once(child, 'exit'));
    for (let round = 0; round < rounds(4); round += 1)
      await Promise.all([0, 0].map((times) => once(start(folder, times), 'exit')));
    expect((await Promise.all(ended)).map(([code]) => code)).toEqual([0, 0, 0]);
    expect(readFileSync(join(folder, 'count'), 'utf8')).toBe(String(3 * turns));
  });

  it('takes over from a dead run, and leaves nothing of it', async () => {
    const folder = join(root, 'dead');
    leaveLock(folder, `${nobody} 0a ${hostname()}`);
    let done = false;
    await holdFolder(folder, () => {
      done = true;
    });
    expect({ done, left: readdirSync(folder) }).toEqual({ done: true, left: [] });
  });

  it('takes over from a run whose number is its own by now', async () => {
    const folder = join(root, 'same number');
    leaveLock(folder, `${process.pid} 0a ${hostname()}`);
    await holdFolder(folder, () => undefined);
    expect(readdirSync(folder)).toEqual([]);
  });

  it('waits for a run that is at work, here or elsewhere, and then says so', async () => {
    for (const owner of [`1 0a ${hostname()}`, `${nobody} 0a some-other-machine`]) {
      const folder = join(root, owner.replaceAll(' ', '-'));
      const lock = leaveLock(folder, owner);
      const held = holdFolder(folder, () => undefined, 100);
      await expect(held).rejects.toThrow(UsageError);
      await expect(held).rejects.toThrow(`Another run is writing to ${folder}. Try again when it is done.`);
      expect(readdirSync(folder)).toEqual(['.halfpot-lock']);
      // Ten minutes later nobody can be at work any more.
      const longAgo = new Date(Date.now() - 601_000);
      utimesSync(join(lock, 'owner'), longAgo, longAgo);
      await holdFolder(folder, () => undefined, 100);
      expect(readdirSync(folder)).toEqual([]);
    }
  });

  it('lets go when what is done there fails', async () => {
    const folder = join(root, 'fails');
    mkdirSync(folder);
    const act = (): void => {
      throw new Error('the well is dry');
    };
    await expect(holdFolder(folder, act)).rejects.toThrow('the well is dry');
    expect(readdirSync(folder)).toEqual([]);
  });
});
