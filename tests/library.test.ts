// The built library as another program uses it: plan after plan in one process.
import { mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { solveWhole } from '../src/order/solver/solve-whole.js';
import { buildOnce } from './cli/build-once.js';
import { drawMarket } from './order/draw-market.mjs';
import { armySheets, marketSheets } from './order/market-sheets.mjs';
import { writeSheets } from './problems/problem-case.js';

buildOnce();
const { openSolver, planArmy, readSheets, writePlanJson } = createRequire(import.meta.url)(
  '../dist/program/library.js',
) as typeof import('../src/library.js');
const today = '2026-03-14';

/** Sheets of a market too large for our own search. */
async function readMarket(sizes = { paints: 240, offers: 280, shops: 2 }) {
  const folder = mkdtempSync(join(tmpdir(), 'halfpot-library-'));
  const market = drawMarket(3, sizes);
  writeSheets(folder, { ...armySheets(market), ...marketSheets(market) });
  const { sheets } = await readSheets(folder, today);
  rmSync(folder, { recursive: true });
  if (sheets === undefined) throw new Error('the sheets of the market have errors');
  return sheets;
}

it('gives the solver back after each plan, and leaves alone one that was handed to it', async () => {
  let [started, alive] = [0, 0];
  process.on('worker', (worker) => {
    started++;
    alive++;
    worker.once('exit', () => alive--);
  });
  const sheets = await readMarket();
  for (const plans of [1, 2, 3]) {
    await planArmy(sheets, today, { draws: 100, seconds: 1 });
    expect(started).toBeGreaterThanOrEqual(plans);
    expect(alive).toBe(0);
  }
  // A plan that fails, too.
  const broken = { ...sheets, shops: undefined as never };
  await expect(planArmy(broken, today, { draws: 100 })).rejects.toThrow();
  expect(alive).toBe(0);
  const solver = openSolver();
  await planArmy(sheets, today, { draws: 100, seconds: 1, solve: solver.solve });
  expect(alive).toBeGreaterThan(0);
  await solver.close();
  expect(alive).toBe(0);
});

it('plans the same to the last digit with one thread, with four and with none, proved or not', async () => {
  const sheets = await readMarket({ paints: 40, offers: 120, shops: 4 });
  const plans: string[] = [];
  for (const threads of [1, 4, undefined]) {
    const solver =
      threads === undefined ? { solve: solveWhole, close: () => undefined } : openSolver(threads);
    const plan = await planArmy(sheets, today, { draws: 1000, seconds: 2, solve: solver.solve });
    await solver.close();
    expect(plan.choices.some(({ aboveBestMinor }) => aboveBestMinor > 0)).toBe(true);
    plans.push(writePlanJson(plan));
  }
  expect(plans[1] === plans[0]).toBe(true);
  expect(plans[2] === plans[0]).toBe(true);
});
