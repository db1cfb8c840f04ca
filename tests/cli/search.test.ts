// `plan --budget` and `--seconds`, and a long search that is broken off.
import { mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { drawMarket } from '../order/draw-market.mjs';
import { armySheets, marketSheets } from '../order/market-sheets.mjs';
import { writeSheets } from '../problems/problem-case.js';
import { makeFolder, runHalfpot, startHalfpot } from './run-halfpot.js';

const root = makeFolder();
const sample = 'sample-data/low-sluice';
const date = ['--date', '2026-11-01'];
const planOf = (...args: string[]) =>
  JSON.parse(runHalfpot(['plan', sample, '--json', ...date, ...args]).out);

describe('--budget', () => {
  it('tells what the cash finishes, within it, and what the next step takes', () => {
    const { budget } = planOf('--budget', '30');
    expect(Number(budget.order.total)).toBeLessThanOrEqual(30);
    expect(budget.units[0]).toMatchObject({ unit: 'Upper Gate Watch', figures: 24, finished: 24 });
    expect(budget.nextSteps.length).toBeGreaterThan(0);
    expect(planOf().budget).toBeNull();
  });

  it('finishes everything with what the whole order costs', () => {
    const { order } = planOf();
    const { budget } = planOf('--budget', order.total);
    expect(budget.order.total).toBe(order.total);
    expect(budget.nextSteps).toEqual([]);
  });

  it.each(['sixty', '-5', '1.234', 'USD 60'])('%s is no sum: exit 2 and how to write one', (sum) => {
    const run = runHalfpot(['plan', sample, `--budget=${sum}`, '--out', join(root, 'none')]);
    expect(run).toMatchObject({ code: 2, out: '' });
    expect(run.err).toContain(`"${sum}" is not a sum in EUR. Write --budget as 60 or 59.50.`);
  });
});

describe('--sure', () => {
  it.each(['49', '100', 'very', '-80'])('refuses %s', (percent) => {
    const run = runHalfpot(['plan', sample, `--sure=${percent}`]);
    expect(run.code).toBe(2);
    expect(run.err).toContain(
      `"${percent}" is not how sure an order can be. Write --sure as 80; 50 to 99 per cent.`,
    );
  });

  it('buys more for more: the promise of plan.json is the one asked for', () => {
    const cashAt = (sure: string): number => {
      const run = runHalfpot(['plan', sample, '--json', '--sure', sure, '--date', '2026-11-02']);
      const plan = JSON.parse(run.out);
      expect(plan.promise.sure).toBe(Number(sure) / 100);
      return Number(plan.order.total);
    };
    expect(cashAt('95')).toBeGreaterThan(cashAt('50'));
  });
});

describe('--buy', () => {
  it('refuses another word, and --sure beside it', () => {
    const run = runHalfpot(['plan', sample, '--buy=all']);
    expect(run.code).toBe(2);
    expect(run.err).toContain('"all" is not a way to buy. Write --buy as likely or goes.');
    const both = runHalfpot(['plan', sample, '--buy', 'likely', '--sure', '90']);
    expect(both.code).toBe(2);
    expect(both.err).toContain('--buy and --sure are two ways to buy. Write one of them.');
  });

  it('buys in goes unless told; plan.json then has no promise', () => {
    const planOf = (...flags: readonly string[]) =>
      JSON.parse(runHalfpot(['plan', sample, '--json', '--date', '2026-11-02', ...flags]).out);
    const plain = planOf();
    expect(plain.promise.sure).toBeNull();
    expect(plain.settings.surePercent).toBeNull();
    expect(planOf('--buy', 'goes').order).toEqual(plain.order);
    expect(planOf('--buy', 'likely').order.total).toBe(plain.promise.likely.cash);
  });
});

describe('--seconds', () => {
  it.each(['0', 'ten', '-1', '4000'])('%s is no time to search: exit 2', (time) => {
    const run = runHalfpot(['plan', sample, `--seconds=${time}`]);
    expect(run.code).toBe(2);
    expect(run.err).toContain(`"${time}" is not a time to search. Write --seconds as 10; at most 3600.`);
  });
});

describe('a long search', () => {
  /** 300 paints, 440 offers, a quarter of them sets: some seconds from proof. */
  function hardSheets(): string {
    const market = drawMarket(1, { paints: 300, offers: 440, shops: 5, sets: 0.28 });
    const path = join(root, 'hard');
    mkdirSync(path, { recursive: true });
    writeSheets(path, { ...armySheets(market), ...marketSheets(market) });
    return path;
  }

  it('ends at its limit with an order that says how far above the best it may lie', () => {
    const run = runHalfpot(['plan', hardSheets(), '--json', '--seconds', '1', ...date]);
    const { order } = JSON.parse(run.out);
    expect(run.code).toBe(0);
    expect(order.status).toBe('not proved');
    expect(Number(order.aboveBest)).toBeGreaterThan(0);
    expect(Number(order.aboveBest)).toBeLessThan(Number(order.total));
  });

  it('is broken off at once by Ctrl-C, and leaves nothing behind', async () => {
    const out = join(root, 'broken-off');
    mkdirSync(out);
    const run = startHalfpot(['plan', hardSheets(), '--out', out, '--seconds', '100', ...date]);
    await new Promise((later) => setTimeout(later, 2500));
    expect(run.exitCode).toBeNull();
    // Long before the hundred seconds that it may take: else this test is not done in its time.
    run.kill('SIGINT');
    const signal = await new Promise((ended) => run.once('exit', (_, by) => ended(by)));
    expect(signal).toBe('SIGINT');
    expect(readdirSync(out)).toEqual([]);
  }, 30_000);
});
