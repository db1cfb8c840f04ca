// Ways to buy side by side: what each costs now and in all, what follows, which paints hold a promise back.
import { describe, expect, it } from 'vitest';
import type { Aim } from '../../../../src/model/choices.js';
import type { PlanResults } from '../../../../src/model/plan.js';
import type { Promised } from '../../../../src/model/ranges.js';
import { viewPlan } from '../../../../src/report/page/view.js';
import { smallChoices } from '../../a-small-choices.js';
import { smallPromised } from '../../a-small-doubt.js';
import { changedPlan, smallPlan } from '../../a-small-plan.js';

const plainSpaces = (text: string): string => text.replaceAll('\u00a0', ' ');
const buyingOf = (promised: Partial<Promised>, plan: Partial<PlanResults> = {}) =>
  viewPlan(changedPlan({ ...plan, promised: { ...smallPromised, ...promised } }), []).buying;
const boughtBy = (aim: Aim) => buyingOf({ surePercent: undefined }, { aim });

describe('the small plan’s ways to buy', () => {
  const view = buyingOf({});

  it('stand side by side, with what follows', () => {
    expect(
      view?.ways.map(({ label, isOwn, cash, orders, mean }) => [label, isOwn, cash, orders, mean]),
    ).toEqual([
      ['the likely needs alone', false, '€7.40', '0.2', 'at least €8.71'],
      ['in goes', false, '€7.40', '0.2', 'at least €8.71'],
      ['nothing until a pot is dry', false, '€0.00', '1.1', 'at least €8.46'],
      ['50% sure', false, '€7.40', '0.2', 'at least €8.71'],
      ['80% sure', true, '€7.40', '0.2', 'at least €8.71'],
      ['90% sure', false, '€12.90', '0', 'at least €13'],
      ['95% sure', false, '€16.40', '0', 'at least €16'],
    ]);
    expect(view?.ways.map(({ share }) => share)).toEqual(
      [740, 740, 0, 740, 740, 1290, 1640].map((minor) => expect.closeTo(minor / 1640)),
    );
  });

  it('say which are not proved, where one is not', () => {
    expect(view?.lists.map(({ follows }) => follows.includes('at most €0.50 above the best'))).toEqual([
      false,
      false,
      true,
    ]);
  });

  it('have a list each, with how likely each line is needed and what waits', () => {
    expect(view?.lists.map(({ id, title }) => [id, title])).toEqual([
      ['buy-likely', 'the likely needs alone, in goes, 50% sure and 80% sure: €7.40'],
      ['buy-sure90', '90% sure: €12.90'],
      ['buy-sure95', '95% sure: €16.40'],
    ]);
    expect(view?.lists[1]).toEqual({
      id: 'buy-sure90',
      title: '90% sure: €12.90',
      shops: [
        {
          shop: 'The Ferry Steps',
          lines: ['2 × Nettle coat, dropper, €7.00, needed in 18 of 100'],
        },
      ],
      sums: 'Postage €3.90, in all €12.90.',
      waits: 'What can wait: Pond wash (21 of 100).',
      follows: expect.stringMatching(
        /^By itself it lasts in 9\d\.\d% ± 0\.\d% of armies\. 0 ± 0 more orders, at least €12\.90 ± €0\.00 in all on average, /,
      ),
    });
  });

  it('name a dozen of what waits', () => {
    const waiting = Array.from({ length: 14 }, (_, at) => ({
      paint: `Paint ${at}`,
      // The last one is hardly ever needed: 0.49 %.
      chanceNeeded: { chance: at === 13 ? 0.0049 : 0.005, error: 0.001 },
      threshold: 0.3,
    }));
    const choices = smallChoices.map((choice) => ({ ...choice, waiting }));
    const list = buyingOf({}, { choices })?.lists[0];
    expect(list?.waits).toMatch(/^What can wait: Paint 0 \(1 of 100\), .*Paint 11 \(1 of 100\).* 1 more\.$/);
  });
});

describe('buying in goes', () => {
  const view = boughtBy({ policy: 'goes' });

  it('says what it is in all, and the next order', () => {
    expect(view?.lists[0]?.follows).toBe(
      'By itself it lasts in 77.2% ± 0.4% of armies. 0.2 ± 0 more orders, at least €8.71 ± €0.14 in all on average, ' +
        'one time in ten over €14.80 ± €0.00; €1.71 ± €0.06 left over in the pots. ' +
        'The next most likely comes before Second watch is done (in 12 of 100 armies), for about €7.40.',
    );
    expect(view?.note).toContain('made in goes');
    expect(view?.note).toContain('400 of them were painted on paper');
    expect(view?.warnings).toEqual([]);
    expect(view?.ways.filter(({ isOwn }) => isOwn).map(({ label }) => label)).toEqual(['in goes']);
  });

  it('is told apart from buying what is likely', () => {
    expect(boughtBy({ policy: 'likely' })?.note).toContain('The order buys what is likely');
  });
});

describe('a promise', () => {
  const view = buyingOf({});

  it('says what was reached on fresh draws, and what was asked for', () => {
    expect(view?.note).toContain(
      'With your pots and this order 82.1% ± 0.4% of the fresh ones are finished, as far as the paints on offer go. Asked for: 80%.',
    );
    expect(view?.note).toContain('10,000 more were drawn');
    expect(view?.note).toContain('in 80 of 100 armies like this nothing at all runs out');
    expect(view?.note).toContain('with 6 paints');
  });

  it('does not hide that a paint can not be had', () => {
    expect(view?.warnings.map(plainSpaces)).toEqual([
      'With every paint only 23.8% ± 0.4% are finished: the army also hangs on Rust hush (4.1 ml), which the offers do not cover.',
    ]);
  });

  it('that every paint keeps has no warning', () => {
    const kept = buyingOf({ metOnFreshDraws: smallPromised.metOfOffered });
    expect(kept?.warnings).toEqual([]);
    expect(kept?.note).toContain('of the fresh ones are finished. Asked for: 80%.');
  });

  it('that the offers do not reach says so', () => {
    const low = { chance: 0.61, error: 0.005 };
    const missed = buyingOf({ metOfOffered: low, metOnFreshDraws: low });
    expect(missed?.warnings).toEqual([
      'No order from these offers is 80% sure. The surest found reaches 95.7% ± 0.2%, for €16.40.',
    ]);
    expect(missed?.note).toContain('The order was to be made so that in 80 of 100');
    // Every level got no farther than this order.
    const levels = smallPromised.levels.map((level) => ({ ...level, met: low }));
    const stuck = buyingOf({ metOfOffered: low, metOnFreshDraws: low, levels });
    expect(stuck?.warnings).toEqual(['No order from these offers is 80% sure.']);
    // Within the error of the draws it was reached.
    const near = { chance: 0.795, error: 0.004 };
    expect(buyingOf({ metOfOffered: near, metOnFreshDraws: near })?.warnings).toEqual([]);
  });
});

describe('ways to buy', () => {
  it('that all cost nothing are left out', () => {
    const free = smallChoices.map((choice) => ({ ...choice, cashNowMinor: 0 }));
    expect(buyingOf({}, { choices: free })).toBeUndefined();
  });

  it('of nothing are left out', () => {
    expect(buyingOf({}, { ranges: { ...smallPlan.ranges, paints: new Map() } })).toBeUndefined();
  });
});
