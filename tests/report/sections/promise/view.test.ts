// What being sure costs: what was reached, what each level costs, which paints hold the army back.
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../../src/model/plan.js';
import type { Promised } from '../../../../src/model/ranges.js';
import { viewPlan } from '../../../../src/report/page/view.js';
import { smallPromised } from '../../a-small-doubt.js';
import { changedPlan, smallPlan } from '../../a-small-plan.js';

const plainSpaces = (text: string): string => text.replaceAll('\u00a0', ' ');
const promiseOf = (changes: Partial<Promised>, plan: Partial<Plan> = {}) =>
  viewPlan(changedPlan({ ...plan, promised: { ...smallPromised, ...changes } }), []).promise;

describe('the small promise', () => {
  const view = promiseOf({});

  it('says what was reached on fresh draws, and what was asked for', () => {
    expect([view?.reached, view?.says]).toEqual([
      '82.1% ± 0.4%',
      'of 10,000 fresh armies like this are finished with your pots and this order, as far as the paints on offer go. Asked for: 80%.',
    ]);
    expect(view?.lead).toContain('in 80 of 100 armies like this nothing at all runs out');
    expect(view?.lead).toContain('with 6 paints');
  });

  it('does not hide that a paint can not be had', () => {
    expect(view?.warnings.map(plainSpaces)).toEqual([
      'With every paint only 23.8% ± 0.4% are finished: the army also hangs on Rust hush (4.1 ml), which the offers do not cover.',
    ]);
  });

  it('lists the likely needs, then each level, against them', () => {
    // 12.90 - 7.40 and 16.40 - 7.40; bars by cash, of 16.40.
    expect(view?.levels.map(({ label, isOwn, cash, more, met }) => [label, isOwn, cash, more, met])).toEqual([
      ['the likely needs alone', false, '€7.40', '', '77.2% ± 0.4%'],
      ['50% sure', false, '€7.40', 'the same', '82.1% ± 0.4%'],
      ['80% sure', true, '€7.40', 'the same', '82.1% ± 0.4%'],
      ['90% sure', false, '€12.90', '€5.50 more', '91.4% ± 0.3%'],
      ['95% sure', false, '€16.40', '€9.00 more', '95.7% ± 0.2%'],
    ]);
    expect(view?.levels.map(({ share }) => share)).toEqual(
      [740, 740, 740, 1290, 1640].map((minor) => expect.closeTo(minor / 1640)),
    );
  });

  it('says which are not proved, where one is not', () => {
    expect(view?.showProved).toBe(true);
    expect(view?.levels.map(({ proved }) => proved)).toEqual([
      '',
      'proved',
      'proved',
      'proved',
      'not proved',
    ]);
    const proved = smallPromised.levels.map((level) => ({ ...level, proved: true }));
    expect(promiseOf({ levels: proved })?.showProved).toBe(false);
    expect(view?.caption).toContain(
      'It is not proved that no other order keeps a promise for less. Paints that no shop offers are left out.',
    );
  });
});

describe('said plainly', () => {
  it('that it costs no more than what is likely', () => {
    expect(promiseOf({})?.plainly).toBe(
      'Just the likely needs would cost €7.40, which alone would do in 77 of 100 armies like this. To be 80% sure costs no more than that.',
    );
  });

  it('that it costs more, and how rarely the likely needs do', () => {
    const likely = { cashMinor: 350, met: { chance: 0.264, error: 0.004 } };
    expect(promiseOf({ likely })?.plainly).toBe(
      'Just the likely needs would cost €3.50, which alone would do only in 26 of 100 armies like this. To be 80% sure costs €3.90 more.',
    );
  });

  it.each([
    [0.5, 'alone would do in 50 of 100'],
    [0.4999, 'alone would do only in 50 of 100'],
  ])('whether the likely needs do more often than not: %d', (chance, says) => {
    expect(promiseOf({ likely: { cashMinor: 350, met: { chance, error: 0.005 } } })?.plainly).toContain(says);
  });

  it('that nothing need be bought for what is likely', () => {
    const likely = { cashMinor: 0, met: { chance: 0.004, error: 0.001 } };
    expect(promiseOf({ likely })?.plainly).toBe(
      'Nothing need be bought for the likely needs, which alone would do only in under 1 of 100 armies like this. To be 80% sure costs €7.40 more.',
    );
  });
});

describe('other promises', () => {
  it('that every paint keeps have no warning', () => {
    const view = promiseOf({ metOnFreshDraws: smallPromised.metOfOffered });
    expect(view?.warnings).toEqual([]);
    expect(view?.says).toContain('with your pots and this order. Asked for: 80%.');
  });

  it('that the offers do not reach say so', () => {
    const low = { chance: 0.61, error: 0.005 };
    const missed = promiseOf({ metOfOffered: low, metOnFreshDraws: low });
    expect(missed?.warnings).toEqual([
      'No order from these offers is 80% sure. The surest found reaches 95.7% ± 0.2%, for €16.40.',
    ]);
    expect(missed?.lead).toContain('The order was to be made so that in 80 of 100');
    expect(missed?.plainly).toContain('This order costs no more than that.');
    // Every level got no farther than this order.
    const levels = smallPromised.levels.map((level) => ({ ...level, met: low }));
    const stuck = promiseOf({ metOfOffered: low, metOnFreshDraws: low, levels });
    expect(stuck?.warnings).toEqual(['No order from these offers is 80% sure.']);
    expect(stuck?.levels.map(({ label }) => label)).toEqual([
      ...['the likely needs alone', '50% sure', '80% sure, not reached', '90% sure, not reached'],
      '95% sure, not reached',
    ]);
    // Within the error of the draws it was reached.
    const near = { chance: 0.795, error: 0.004 };
    expect(promiseOf({ metOfOffered: near, metOnFreshDraws: near })?.warnings).toEqual([]);
  });

  it('that cost nothing at any level, or that no offer helps to, are left out', () => {
    const free = smallPromised.levels.map((level) => ({ ...level, cashMinor: 0 }));
    expect(promiseOf({ levels: free })).toBeUndefined();
    const order = { ...smallPlan.order, lines: [], bills: [], totalMinor: 0 };
    expect(order.unmet.length).toBeGreaterThan(0);
    expect(promiseOf({}, { order })).toBeUndefined();
  });

  it('of nothing are left out', () => {
    expect(promiseOf({}, { ranges: { ...smallPlan.ranges, paints: new Map() } })).toBeUndefined();
  });
});
