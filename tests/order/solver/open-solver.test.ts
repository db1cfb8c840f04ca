// The threads of the built program: what is asked at once, after an end, after a close.
import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';
import { setImmediate } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { cachedDataVersionTag } from 'node:v8';
import type { Worker } from 'node:worker_threads';
import { expect, it } from 'vitest';
import type { SolverThreads } from '../../../src/order/solver/open-solver.js';
import { atLeast, whole } from './published-programs.js';

const library = fileURLToPath(new URL('../../../dist/program/library.js', import.meta.url));
const { openSolver } = createRequire(import.meta.url)(library) as {
  openSolver: (threads?: number) => SolverThreads;
};
const limits = { seconds: 10 };
/** 24 + 24 + 12 ml for 50 ml; twice as dear, twice the cost. */
const program = (times = 1) => ({
  columns: [whole(290 * times, 9), whole(495 * times, 9)],
  rows: [atLeast(50, [12, 24])],
});

/** One paint of many offers. */
const large = (columns: number) => ({
  columns: Array.from({ length: columns }, () => whole(290, 9)),
  rows: [
    atLeast(
      50,
      Array.from({ length: columns }, () => 12),
    ),
  ],
});

it.each([1, 2, 4])('answers what is asked at once: %i', async (threads) => {
  const solver = openSolver(threads);
  const answers = await Promise.all([1, 2, 3].map((times) => solver.solve(program(times), limits)));
  expect(answers.map((answer) => 'bound' in answer && answer.bound)).toEqual([1280, 2560, 3840]);
  await solver.close();
});

it('refuses what is asked once it is closed, and does not let it wait', async () => {
  const solver = openSolver(1);
  const [under, queued] = [solver.solve(program(), limits), solver.solve(program(), limits)];
  await solver.close();
  await expect(queued).rejects.toThrow('the solver is closed');
  await expect(solver.solve(program(), limits)).rejects.toThrow('the solver is closed');
  await expect(under).rejects.toThrow();
});

it('gives its thread up after a large program, and its memory with it, and goes on', async () => {
  let [started, alive] = [0, 0];
  process.on('worker', (worker) => {
    started++;
    alive++;
    worker.once('exit', () => alive--);
  });
  const solver = openSolver(2);
  expect(await solver.solve(large(2000), limits)).toMatchObject({ state: 'proved', bound: 1450 });
  expect({ started, alive }).toEqual({ started: 1, alive: 1 });
  expect(await solver.solve(large(2001), limits)).toMatchObject({ state: 'proved', bound: 1450 });
  expect({ started, alive }).toEqual({ started: 1, alive: 0 });
  expect(await solver.solve(program(), limits)).toMatchObject({ state: 'proved', bound: 1280 });
  expect({ started, alive }).toEqual({ started: 2, alive: 1 });
  await solver.close();
});

it("keeps V8's heap small from the first large program on, until it is closed", async () => {
  // One number for all flags of the process.
  const own = cachedDataVersionTag();
  const solver = openSolver(1);
  await solver.solve(large(2000), limits);
  expect(cachedDataVersionTag()).toBe(own);
  await solver.solve(large(2001), limits);
  const sparing = cachedDataVersionTag();
  expect(sparing).not.toBe(own);
  await solver.solve(large(2001), limits);
  expect(cachedDataVersionTag()).toBe(sparing);
  await solver.close();
  expect(cachedDataVersionTag()).toBe(own);
});

it('goes on after a question that fails', async () => {
  const solver = openSolver(1);
  await expect(solver.solve({ columns: [], rows: null } as never, limits)).rejects.toThrow();
  expect(await solver.solve(program(), limits)).toMatchObject({ state: 'proved', bound: 1280 });
  await solver.close();
});

it('starts a thread only where all others are busy, and no more than it may', async () => {
  let started = 0;
  process.on('worker', () => started++);
  const solver = openSolver(2);
  expect(started).toBe(0);
  await solver.solve(program(), limits);
  await solver.solve(program(), limits);
  expect(started).toBe(1);
  await Promise.all([1, 2, 3].map((times) => solver.solve(program(times), limits)));
  expect(started).toBe(2);
  await solver.close();
});

it('goes on after a thread that dies', async () => {
  const workers: Worker[] = [];
  process.on('worker', (worker) => workers.push(worker));
  const solver = openSolver(1);
  const under = solver.solve(program(), limits);
  await setImmediate();
  await workers.at(-1)?.terminate();
  await expect(under).rejects.toThrow('the solver ended before it had an answer');
  expect(await solver.solve(program(), limits)).toMatchObject({ state: 'proved', bound: 1280 });
  await solver.close();
});

it('solves in the thread that asks where a process may start none', () => {
  // Node's permission model starts no worker unless it is told to.
  const script = `const { openSolver } = require(${JSON.stringify(library)});
    openSolver().solve(${JSON.stringify({ ...program(), rows: [{ ...program().rows[0], upper: 999 }] })}, { seconds: 10 })
      .then(({ state, bound }) => console.log(state, bound));`;
  const isFinal = process.allowedNodeEnvironmentFlags.has('--permission');
  const allowed = [isFinal ? '--permission' : '--experimental-permission', '--allow-fs-read=*'];
  const { stdout } = spawnSync(process.execPath, [...allowed, '-e', script], { encoding: 'utf8' });
  expect(stdout).toBe('proved 1280\n');
});
