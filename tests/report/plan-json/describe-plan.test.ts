import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../src/model/plan.js';
import { describePlan } from '../../../src/report/plan-json/describe-plan.js';
import { changedPlan, smallPlan } from '../a-small-plan.js';
import { examplePlan, warning } from './plan-example.js';

describe('describePlan', () => {
  const small = describePlan(smallPlan, []);
  const [first, second, third] = [...small.units];
  const [watch, ram] = small.jobs;

  it('gives money as decimals of major units: cash in cents, use in six digits', () => {
    expect(small.costs).toMatchObject({
      use: '9.103000',
      useLow: '6.400000',
      useHigh: '13.400000',
      useAtLeast: true,
      useRemaining: '8.743000',
      useRemainingLow: '6.100000',
      useRemainingHigh: '12.900000',
      remainingAtLeast: true,
      extras: '0.693000',
      cash: '7.40',
      restockCash: '6.40',
      figuresPrice: '30.00',
      figuresPriceAtLeast: true,
      unpriced: ['Bell brass', 'Rust hush'],
    });
    const cents = (parts: readonly { readonly useCost: string }[]): number =>
      Math.round(parts.reduce((sum, { useCost }) => sum + Number(useCost), 0) * 100);
    // 8.743 still to be used, of which 0.693 are extras.
    expect([cents(small.costs.zones), cents(small.costs.layers)]).toEqual([805, 805]);
    expect(small.order).toMatchObject({ status: "can't be met", total: '7.40', postage: '3.90' });
    expect(small.order.bills).toEqual([
      { shop: 'The Ferry Steps', goods: '3.50', postage: '3.90', belowLeastOrder: '1.50' },
    ]);
    expect(small.restock?.total).toBe('6.40');
  });

  it('has the money so far beside what its work should have used', () => {
    expect(small.money).toMatchObject({
      spent: [{ month: '2026-03', shop: 'Lock Stores', cash: '5.90' }],
      ...{
        begunWith: '12.000000',
        bought: '5.90',
        standing: '9.000000',
        onTheWay: '2.950000',
        used: '5.950000',
      },
      unpricedPots: 1,
    });
    // The whole less what remains.
    expect(Number(small.money.usedByEstimate)).toBeCloseTo(
      Number(small.costs.use) - Number(small.costs.useRemaining),
      5,
    );
  });

  it('says why the order is as it is', () => {
    const [line] = small.order.lines;
    expect(line?.pots[0]).toMatchObject({ coversMl: 8.02, overMl: 8.3 });
    expect(small.order).toMatchObject({
      aboveBest: '0.00',
      passedOver: [],
      fromOneShop: [{ shop: 'The Ferry Steps', total: '7.40' }],
    });
    const passedOver = [{ shop: 'The Mill Gate', offer: 'Box of greens', extraMinor: 60 }];
    const order = { ...smallPlan.order, status: 'not proved' as const, aboveBestMinor: 140, passedOver };
    expect(describePlan(changedPlan({ order }), []).order).toMatchObject({
      status: 'not proved',
      aboveBest: '1.40',
      passedOver: [{ shop: 'The Mill Gate', offer: 'Box of greens', extra: '0.60' }],
    });
  });

  it('sets ways to buy side by side, with what follows and how sure that is', () => {
    expect(small.order).toMatchObject({ policy: 'sure', sure: 0.8 });
    expect(small.choices.map(({ policy, sure }) => [policy, sure])).toEqual([
      ...['likely', 'goes', 'wait'].map((policy) => [policy, null]),
      ...[0.5, 0.8, 0.9, 0.95].map((sure) => ['sure', sure]),
    ]);
    const [, goes, wait, , , , surest] = small.choices;
    expect(goes).toMatchObject({
      ...{ cashNow: '7.40', aboveBest: '0.00', ordersAfter: 0.1775, meanInAll: '8.71', highInAll: '14.80' },
      ...{ leftOver: '1.71', atLeast: true, met: 0.8213, metError: 0.0038 },
      errors: { ordersAfter: 0.0191, meanInAll: '0.14', highInAll: '0.00', leftOver: '0.06' },
      next: { chance: 0.1775, unit: 'Second watch', chanceThere: 0.1225, cash: '7.40', cashError: '0.00' },
      lines: [
        { offer: 'Nettle coat, dropper', count: 1, cost: '3.50', chanceNeeded: 0.974, threshold: 0.3097 },
      ],
      waiting: [{ paint: 'Pond wash', chanceNeeded: 0.213, chanceNeededError: 0.004, threshold: 0.2779 }],
    });
    expect([wait?.cashNow, wait?.lines]).toEqual(['0.00', []]);
    expect(surest).toMatchObject({ aboveBest: '0.50', next: null });
  });

  it('orders what the chosen way to buy orders', () => {
    const plan = describePlan(examplePlan, [warning]);
    const { policy, sure, lines, total } = plan.order;
    const chosen = plan.choices.find((one) => one.policy === policy && one.sure === sure);
    expect(chosen).toMatchObject({ cashNow: total, lines });
  });

  it('gives the promise with what was reached, and what other levels cost', () => {
    expect(small.promise).toMatchObject({
      sure: 0.8,
      met: 0.236,
      metOnFreshDraws: 0.2381,
      metOnFreshDrawsError: 0.0043,
      metOfOffered: 0.8213,
      likely: { cash: '7.40', met: 0.7719, metError: 0.0042 },
    });
    expect(small.promise.levels.map(({ sure, cash, met, proved }) => [sure, cash, met, proved])).toEqual([
      [0.5, '7.40', 0.8213, true],
      [0.8, '7.40', 0.8213, true],
      [0.9, '12.90', 0.9144, true],
      [0.95, '16.40', 0.9571, false],
    ]);
  });

  it('gives doubts, remedies and weighings', () => {
    expect(small.army).toMatchObject({ chanceAllLast: 0, chanceAllLastError: 0.0001 });
    expect(small.draws).toEqual({ count: 10_000, seed: 1 });
    expect(small.doubts[0]).toEqual({ name: 'brush wet film', shareOfCashSpread: 0.41 });
    expect(small.remedies[2]).toEqual({
      how: 'measure',
      what: 'Reed warden',
      paint: '',
      shareOfCashSpread: 0.05,
    });
    expect(small.learned).toMatchObject({
      slope: 1.179,
      slopeError: 0.11,
      widened: 1,
      weighings: [
        { unit: 'First watch', usedMl: 4.5, expectedMl: 3.8, errorMl: 0.5 },
        { unit: 'Second watch' },
      ],
    });
  });

  it('puts the likely values of a plan by the real stages between low and high', () => {
    const plan = describePlan(examplePlan, [warning]);
    for (const { needMl } of plan.paints) {
      expect(needMl.low).toBeLessThanOrEqual(needMl.likely);
      expect(needMl.likely).toBeLessThanOrEqual(needMl.high);
    }
    for (const job of plan.jobs) {
      const { useCostPerFigureLow: low, useCostPerFigure: likely, useCostPerFigureHigh: high } = job;
      expect(Number(low)).toBeLessThan(Number(likely));
      expect(Number(likely)).toBeLessThan(Number(high));
    }
    const { promise } = plan;
    expect(promise.met).toBeGreaterThanOrEqual(0);
    expect(promise.levels.map(({ sure }) => sure)).toEqual([0.5, 0.8, 0.9, 0.95]);
    expect(plan.order.total).toBe(promise.levels[1]?.cash);
  });

  it('gives the staircase and the budget', () => {
    expect(small.stairs).toEqual({
      everyStep: true,
      mostFigures: 42,
      steps: [
        { figures: 0, cash: '0.00', because: [], proved: true },
        { figures: 7, cash: '7.40', because: ['Nettle coat'], proved: true },
        { figures: 30, cash: '12.90', because: ['Pond wash'], proved: true },
        { figures: 35, cash: '16.40', because: ['Nettle coat'], proved: true },
      ],
    });
    expect(small.budget).toMatchObject({
      budget: '8.00',
      order: { total: '7.40' },
      units: [{ finished: 10 }, { finished: 6 }, { finished: 1 }],
      nextSteps: [{ unit: 'Second watch', figures: 4, extra: '5.50' }],
      proved: true,
      notTried: 0,
    });
    expect(describePlan(changedPlan({ budget: undefined }), []).budget).toBeNull();
  });

  // 370 cents over 10 figures; 435.5 over 10 is given as 43.55 cents a figure.
  it('gives a unit its cash and its job, the job its cost of use, in all and per figure', () => {
    expect(first).toEqual({
      ...{ unit: 'First watch', job: 0, cash: '3.70', cashPerFigure: '0.370000', doneOnEvening: null },
    });
    expect([second?.job, third?.job, third?.doneOnEvening]).toEqual([0, 1, 2]);
    expect(watch).toMatchObject({
      ...{ figure: 'Reed warden', count: 10, units: 2, steps: 5, stepsFinished: 0, begun: [] },
      useCostPerFigure: '0.435500',
      useCostPerFigureLow: '0.304000',
      useCostPerFigureHigh: '0.642000',
      useCostLow: '3.040000',
      useCostHigh: '6.420000',
      extrasPerFigure: '0.033000',
      useCost: '4.355000',
      useCostRemaining: '4.355000',
      atLeast: true,
      figuresPrice: '15.00',
      notPainted: ['feet'],
    });
    expect(ram).toMatchObject({ units: 1, figuresPrice: null, useCostRemaining: '0.033000' });
  });

  it('splits the cost of one figure by layer and by zone, each adding up to it with the extras', () => {
    const micros = (cost: string): number => Math.round(Number(cost) * 1e6);
    for (const { layers, zones, extrasPerFigure, useCostPerFigure } of small.jobs) {
      for (const parts of [layers, zones]) {
        const sum = parts.reduce((total, { useCost }) => total + micros(useCost), micros(extrasPerFigure));
        expect(Math.abs(sum - micros(useCostPerFigure))).toBeLessThanOrEqual(parts.length);
      }
    }
  });

  it('lists remaining work only, each line with its own cost', () => {
    expect(ram?.lines.map(({ step, useCost, atLeast }) => ({ step, useCost, atLeast }))).toEqual([
      { step: 2, useCost: '0.000000', atLeast: true },
    ]);
    expect(watch?.lines.map(({ useCost }) => useCost)).toEqual([
      '1.200000',
      '1.210000',
      '1.525000',
      '0.090000',
      '0.000000',
    ]);
  });

  it('tells of each paint what is needed, there and missing', () => {
    expect(small.paints.map(({ paint }) => paint)).toEqual(smallPlan.stock.map(({ paint }) => paint));
    expect(small.paints[1]).toMatchObject({
      needMl: { low: 7.3, likely: 12.1, high: 22.4 },
      haveMl: 4.08,
      haveLowMl: 2,
      haveHighMl: 6.2,
      chanceShort: 0.974,
      chanceShortError: 0.004,
      lasts: {
        likely: { figures: 6, unit: 'First watch', ofUnit: 6 },
        low: { figures: 3, unit: 'First watch', ofUnit: 3 },
      },
      toBuyMl: 8.02,
      state: 'short',
      pricePerMl: null,
      pots: [{ row: 3, sizeMl: 17, usableMl: 4.08, price: null, ordered: false }],
    });
    // Pond wash lasts for all in likely draws.
    expect(small.paints[2]?.lasts.likely).toBeNull();
  });

  it('says of a pot without a shop that what is likely of it counts, where it was bought in goes', () => {
    const taken = (aim: Plan['aim']) => describePlan(changedPlan({ aim }), []).withoutShop[0]?.isAsLikely;
    expect([taken({ policy: 'goes' }), taken({ policy: 'likely' })]).toEqual([true, false]);
  });

  it('adds up: lines to paints and costs, units to the order', () => {
    const plan = describePlan(examplePlan, [warning]);
    const work = plan.jobs.flatMap(({ lines, units }) => Array.from({ length: units }, () => lines).flat());
    for (const { paint, needMl, useCost } of plan.paints) {
      const mine = work.filter((line) => line.paint === paint);
      expect(mine.reduce((sum, line) => sum + line.putOutMl, 0)).toBeCloseTo(needMl.likely, 4);
      expect(mine.reduce((sum, line) => sum + Number(line.useCost), 0)).toBeCloseTo(Number(useCost), 4);
    }
    const cents = [...plan.units].reduce((sum, { cash }) => sum + Math.round(Number(cash) * 100), 0);
    expect(plan.work.putOutRemainingMl).toBeCloseTo(
      work.reduce((sum, { putOutMl }) => sum + putOutMl, 0),
      4,
    );
    for (const { putOutRemainingMl, onFigureMl, lostMl, leftoverMl } of plan.work.paints)
      expect(onFigureMl + lostMl + leftoverMl).toBeCloseTo(putOutRemainingMl, 5);
    expect(cents).toBe(Math.round(Number(plan.order.total) * 100));
    expect(cents).toBeGreaterThan(0);
    expect(plan.problems).toEqual([warning]);
    expect(plan.order.unmet.map(({ paint }) => paint)).toEqual(['Oat', 'Peat "wash"']);
  });

  // ISO 4217: the yen has no minor unit, the Iraqi dinar three digits.
  it.each([
    ['JPY', '740', '910.300000'],
    ['IQD', '0.740', '0.910300'],
  ])('writes %s with its digits', (currency, cash, use) => {
    const plan = describePlan(changedPlan({ settings: { ...smallPlan.settings, currency } }), []);
    expect(plan.costs).toMatchObject({ cash, use });
  });

  it('takes an army of nobody', () => {
    const empty = describePlan(
      changedPlan({
        figureCount: 0,
        restock: undefined,
        estimate: { ...smallPlan.estimate, units: [], jobs: new Map() },
        costs: { ...smallPlan.costs, units: [] },
      }),
      [],
    );
    expect(empty).toMatchObject({ army: { figures: 0, units: 0 }, restock: null });
    expect([[...empty.units], empty.jobs]).toEqual([[], []]);
  });
});
