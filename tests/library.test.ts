// The built library as another program uses it: plan after plan in one process.
import { mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { solveWhole } from '../src/order/solver/solve-whole.js';
import { buildOnce } from './cli/build-once.js';
import { runHalfpot } from './cli/run-halfpot.js';
import { drawMarket } from './order/draw-market.mjs';
import { armySheets, marketSheets } from './order/market-sheets.mjs';
import { fourShortSheets, writeSheets } from './problems/problem-case.js';

buildOnce();
const library = createRequire(import.meta.url)(
  '../dist/program/library.js',
) as typeof import('../src/library.js');
const { openSolver, planArmy, readSheets, writePlanJson } = library;
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

describe('what the library writes', () => {
  const folder = mkdtempSync(join(tmpdir(), 'halfpot-library-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const read = (...names: string[]) => readFileSync(join(folder, ...names), 'utf8');
  const date = ['--date', today];

  /** An army planned by the command, and the same by the library. */
  async function planBoth(name: string, price: string) {
    const path = join(folder, name);
    mkdirSync(path);
    const offers = `shop,offer,price,paint,size ml\nWeir,red,${price},brick red,17\nWeir,wash,3.10,earth wash,24\n`;
    writeSheets(path, { ...fourShortSheets, 'offers.csv': offers });
    const run = runHalfpot(['plan', name, '--out', `${name}-plan`, ...date], { cwd: folder });
    expect(run).toMatchObject({ code: 0, err: '' });
    const { sheets, problems } = await readSheets(path, today);
    if (sheets === undefined) throw new Error('the four short sheets have errors');
    const plan = await planArmy(sheets, today);
    return { plan, problems, named: { name, planJson: library.writePlanJson(plan, problems), sheets } };
  }

  it('is what the command writes, to the byte: every page, and two plans compared', async () => {
    const [one, other] = [await planBoth('one', '2.95'), await planBoth('other', '2.50')];
    expect(await library.renderReport(one.plan, one.problems)).toBe(read('one-plan', 'report.html'));
    expect(await library.renderShop(one.plan)).toBe(read('one-plan', 'shop.html'));
    expect(await library.renderBench(one.plan)).toBe(read('one-plan', 'bench.html'));
    expect(runHalfpot(['compare', 'one', 'other', ...date], { cwd: folder })).toMatchObject({
      code: 0,
      err: '',
    });
    const page = await library.renderCompare(one.named, other.named);
    expect(page).toContain('offers, Weir, red: price');
    expect(page).toBe(read('halfpot-compare', 'compare.html'));
    expect(library.writeCompareJson(one.named, other.named)).toBe(read('halfpot-compare', 'compare.json'));
  });

  it.each([
    ['{"version":2}', 'old was written by an older Halfpot. Plan its sheets again.'],
    ['{"version":99}', 'old was written by a newer Halfpot. Plan its sheets again.'],
    ['{"version":', 'old is not a plan, or is damaged. Plan its sheets again.'],
  ])('is no page of %s', async (planJson, says) => {
    const old = { name: 'old', planJson };
    await expect(library.renderCompare(old, old)).rejects.toThrow(says);
    expect(() => library.writeCompareJson(old, old)).toThrow(says);
  });
});
