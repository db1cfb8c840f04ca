// The thread of the built program: what is asked at once, after an end, after a close.
import { createRequire } from 'node:module';
import { expect, it } from 'vitest';
import type { SolverThread } from '../../../src/order/solver/open-solver.js';
import { atLeast, whole } from './published-programs.js';

const { openSolver } = createRequire(import.meta.url)('../../../dist/program/library.js') as {
  openSolver: () => SolverThread;
};
const limits = { nodes: 100, seconds: 10 };
/** 24 + 24 + 12 ml for 50 ml; twice as dear, twice the cost. */
const program = (times = 1) => ({
  columns: [whole(290 * times, 9), whole(495 * times, 9)],
  rows: [atLeast(50, [12, 24])],
});

it('answers in turn what is asked at once', async () => {
  const solver = openSolver();
  const answers = await Promise.all([1, 2, 3].map((times) => solver.solve(program(times), limits)));
  expect(answers.map((answer) => 'bound' in answer && answer.bound)).toEqual([1280, 2560, 3840]);
  await solver.close();
});

it('refuses what is asked once it is closed, and does not let it wait', async () => {
  const solver = openSolver();
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
  const solver = openSolver();
  const large = (columns: number) => ({
    columns: Array.from({ length: columns }, () => whole(290, 9)),
    rows: [
      atLeast(
        50,
        Array.from({ length: columns }, () => 12),
      ),
    ],
  });
  expect(await solver.solve(large(2000), limits)).toMatchObject({ state: 'proved', bound: 1450 });
  expect({ started, alive }).toEqual({ started: 1, alive: 1 });
  expect(await solver.solve(large(2001), limits)).toMatchObject({ state: 'proved', bound: 1450 });
  expect({ started, alive }).toEqual({ started: 1, alive: 0 });
  expect(await solver.solve(program(), limits)).toMatchObject({ state: 'proved', bound: 1280 });
  expect({ started, alive }).toEqual({ started: 2, alive: 1 });
  await solver.close();
});

it('goes on after a question that fails', async () => {
  const solver = openSolver();
  await expect(solver.solve({ columns: [], rows: null } as never, limits)).rejects.toThrow();
  expect(await solver.solve(program(), limits)).toMatchObject({ state: 'proved', bound: 1280 });
  await solver.close();
});
