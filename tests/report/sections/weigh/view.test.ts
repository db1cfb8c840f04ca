// What to weigh first: things to do, causes of doubt, paints in doubt, and what weighings have shown.
import { describe, expect, it } from 'vitest';
import type { Plan } from '../../../../src/model/plan.js';
import type { Ranges, Remedy } from '../../../../src/model/ranges.js';
import { methods } from '../../../../src/model/words.js';
import { viewPlan } from '../../../../src/report/page/view.js';
import { smallLearned, smallRanges } from '../../a-small-doubt.js';
import { changedPlan } from '../../a-small-plan.js';

const weighOf = (changes: Partial<Ranges>, plan: Partial<Plan> = {}) =>
  viewPlan(changedPlan({ ...plan, ranges: { ...smallRanges, ...changes } }), []).weigh;

describe('what to do', () => {
  it('is said in plain words, the greatest help first', () => {
    expect(weighOf({}).remedies.map(({ says }) => says)).toEqual([
      'Weigh your Nettle coat dropper before and after the next batch that you paint with it by brush: that settles about 78% of the doubt about the cash.',
      'Weigh your Kettle grey can before and after the next batch that you spray: that settles about 9% of it.',
      'Find out the surface of a Reed warden, and write it into the figures sheet as area cm2: that settles about 5% of it.',
      'Weigh your Nettle coat dropper and an empty one like it, and write both into the pots sheet: that settles about 2% of it.',
    ]);
  });

  it.each(methods)('has words for %s', (what) => {
    const remedy: Remedy = { how: 'weigh', what, paint: 'Kettle grey', share: 0.5 };
    expect(weighOf({ remedies: [remedy] }).remedies[0]?.says).toMatch(
      /^Weigh your Kettle grey can before and after the next batch .+: that settles about 50%/,
    );
  });

  it('speaks of a pot to come where there is none', () => {
    const remedy: Remedy = { how: 'weigh', what: 'brush', paint: 'Rust hush', share: 0.5 };
    expect(weighOf({ remedies: [remedy] }).remedies[0]?.says).toContain(
      'Weigh the Rust hush that you buy before',
    );
  });

  it('is nothing where nothing is in doubt', () => {
    const view = weighOf({ doubts: [], remedies: [] });
    expect(view.remedies).toEqual([]);
    expect(view.lead).toContain('today’s pots lack nothing');
  });
});

describe('doubts', () => {
  it('lead to their assumption; a reading has none', () => {
    const { doubts } = weighOf({});
    expect(doubts.map(({ name, causes }) => `${name} ${causes}`)).toEqual([
      'brush wet film 41%',
      'brush transfer 37%',
      'reading of Nettle coat 2%',
    ]);
    expect(doubts.map(({ id }) => id !== '')).toEqual([true, true, false]);
  });

  it('fence a name off that turns the text', () => {
    expect(weighOf({ doubts: [{ name: 'reading of \u05d0\u05d1', share: 0.1 }] }).doubts[0]?.name).toBe(
      'reading of \u2068\u05d0\u05d1\u2069',
    );
  });

  it('stand beside each paint that may last or not, three at most', () => {
    expect(
      weighOf({}).paints.map(({ paint, chance, doubts }) => [
        paint,
        chance,
        ...doubts.map(({ name }) => name),
      ]),
    ).toEqual([
      ['Nettle coat', '97%', 'brush wet film', 'brush transfer', 'painter'],
      ['Pond wash', '21%', 'flood wet film', 'reading of Pond wash'],
    ]);
  });

  it('of many paints are cut short, and that is said', () => {
    const one = smallRanges.paints.get('Pond wash');
    if (one === undefined) throw new Error('no Pond wash');
    const paints = new Map(Array.from({ length: 31 }, (_, at) => [`paint ${at}`, one]));
    const view = weighOf({ paints });
    expect(view.paints).toHaveLength(30);
    expect(view.morePaints).toBe('1 more paint is in doubt; plan.json lists each.');
  });
});

describe('weighings', () => {
  const { learned } = weighOf({});

  it('say how much is used against the estimate', () => {
    expect(learned.says).toMatch(
      /^You use 1\.2 times what is expected \(± 0\.1\), by 2 weighings, all methods together\./,
    );
    expect(learned.says).not.toContain('contradict');
    const apart = weighOf({}, { learned: { ...smallLearned, widened: 3.64 } }).learned.says;
    expect(apart).toContain(
      'They contradict one another: each counts as 3.6 times less exact than it is written.',
    );
  });

  it('are listed one by one', () => {
    // 4.5 / 3.8 = 1.18; 2.2 / 1.9 = 1.16
    const rows = learned.rows.map((row) => Object.values(row).join(', ').replaceAll('\u00a0', ' '));
    expect(rows).toEqual([
      '12 September 2026, Nettle coat, First watch, 6, 4.5 ml ± 0.50 ml, 3.8 ml, 1.2 times',
      '19 September 2026, Nettle coat, Second watch, 3, 2.2 ml ± 0.40 ml, 1.9 ml, 1.2 times',
    ]);
    expect(learned.more).toBe('');
  });

  it('show the latest twenty', () => {
    const [first] = smallLearned.weighings;
    if (first === undefined) throw new Error('no weighing');
    const weighings = Array.from({ length: 23 }, (_, at) => ({ ...first, figures: at }));
    const view = weighOf({}, { learned: { ...smallLearned, weighings } }).learned;
    expect(view.rows.map(({ figures }) => figures).slice(0, 2)).toEqual(['3', '4']);
    expect(view.more).toBe('The latest 20 of 23; plan.json lists each.');
  });

  it('are asked for where there are none', () => {
    const none = weighOf({}, { learned: { weighings: [], slope: 1, slopeError: 0, widened: 1 } }).learned;
    expect(none.says).toMatch(/^Nothing yet\. Weigh a pot before and after a batch/);
    expect(none.rows).toEqual([]);
  });
});
