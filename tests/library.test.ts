// The built library as another program uses it: plan after plan in one process.
import { mkdtempSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { buildOnce } from './cli/build-once.js';
import { drawMarket } from './order/draw-market.mjs';
import { armySheets, marketSheets } from './order/market-sheets.mjs';
import { writeSheets } from './problems/problem-case.js';

buildOnce();
const { openSolver, planArmy, readSheets } = createRequire(import.meta.url)(
  '../dist/program/library.js',
) as typeof import('../src/library.js');
const today = '2026-03-14';

/** Sheets of a market too large for our own search. */
async function readMarket() {
  const folder = mkdtempSync(join(tmpdir(), 'halfpot-library-'));
  const market = drawMarket(3, { paints: 240, offers: 280, shops: 2 });
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
    expect({ started, alive }).toEqual({ started: plans, alive: 0 });
  }
  // A plan that fails, too.
  const broken = { ...sheets, shops: undefined as never };
  await expect(planArmy(broken, today, { draws: 100 })).rejects.toThrow();
  expect(alive).toBe(0);
  const solver = openSolver();
  await planArmy(sheets, today, { draws: 100, seconds: 1, solve: solver.solve });
  expect(alive).toBe(1);
  await solver.close();
  expect(alive).toBe(0);
});
