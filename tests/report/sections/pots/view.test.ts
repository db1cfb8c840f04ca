// Pots that run low: groups, amounts that fit one another, bars as shares of the need.
import { describe, expect, it } from 'vitest';
import { viewPlan } from '../../../../src/report/page/view.js';
import { potWords } from '../../../../src/report/sections/pots/words.js';
import { numberWords } from '../../../../src/report/words/word-numbers.js';
import { changedPlan, smallPlan } from '../../a-small-plan.js';

const { pots } = viewPlan(smallPlan, []);
const rowOf = (paint: string) => {
  const row = pots.groups.flatMap(({ paints }) => paints).find((one) => one.paint === paint);
  if (row === undefined) throw new Error(`no row for ${paint}`);
  const amounts = row.amounts
    .map(({ label, text }) => `${label} ${text.replaceAll('\u00a0', ' ')}`)
    .join(', ');
  return { ...row, amounts };
};

describe('groups', () => {
  it('stand in the order of alarm, the paint that is most likely to run short first', () => {
    // Chances: Kettle grey 0.08, Bell brass 0.003, Chalk light 0.
    expect(pots.groups.map(({ state, paints }) => [state, ...paints.map(({ paint }) => paint)])).toEqual([
      ['none owned', 'Rust hush'],
      ['short', 'Nettle coat'],
      ['tight', 'Pond wash'],
      ['enough', 'Kettle grey', 'Bell brass', 'Chalk light'],
      ['low', 'Lamp white'],
    ]);
  });

  it('are introduced by what runs low', () => {
    expect(pots.lead).toBe(
      '2 owned paints will be running low after this army: less than its keep level will be left. ' +
        '1 paint that it does not need is low already.',
    );
  });

  it('say by which chance they are told apart', () => {
    const meaning = (state: string) => pots.groups.find((group) => group.state === state)?.meaning;
    expect(meaning('short')).toContain('over 50%');
    expect(meaning('tight')).toContain('over 10%, up to 50%');
    expect(meaning('enough')).toContain('is 10% or less');
  });

  it('leave out a paint that is neither needed nor low', () => {
    const full = smallPlan.stock.map((one) =>
      one.paint === 'Lamp white' ? { ...one, runningLow: false } : one,
    );
    const view = viewPlan(changedPlan({ stock: full }), []);
    expect(JSON.stringify(view.pots)).not.toContain('Lamp white');
  });
});

describe('amounts', () => {
  it.each([
    ['Rust hush', 'have none, need 4.1 ml (2.4 to 7.6 ml), to buy 4.1 ml'],
    [
      'Nettle coat',
      'have 4.1 ml (2.0 to 6.2 ml), need 12.1 ml (7.3 to 22.4 ml), chance of running short 97%, lasts to figure 6, in First watch (one time in ten to figure 3, in First watch), to buy 8.0 ml, keep level 2.6 ml',
    ],
    [
      'Pond wash',
      'have 17.3 ml (15.8 to 18.8 ml), 11.5 ml of it on the way, need 12.2 ml (7.1 to 21.5 ml), chance of running short 21%, lasts for all (one time in ten to figure 16, in Second watch), likely left 5.1 ml, keep level 1.8 ml',
    ],
    [
      'Chalk light',
      'have 16.3 ml, need 0.9 ml (0.5 to 1.8 ml), chance of running short under 1%, likely left 15.4 ml, keep level 2.6 ml',
    ],
    ['Lamp white', 'have 0.82 ml, keep level 2.55 ml'],
  ])('%s: %s', (paint, text) => expect(rowOf(paint).amounts).toBe(text));
});

describe('how far it lasts', () => {
  const at = (figures: number, ofUnit: number) => ({ figures, unit: 'Second watch', ofUnit });
  const lasts = (likely: ReturnType<typeof at> | undefined, low = likely) =>
    potWords(numberWords(smallPlan.settings)).lasts({ likely, low });
  it.each([
    [at(0, 0), at(0, 0), 'for no figure'],
    [at(10, 0), at(0, 0), 'to figure 10, before Second watch (one time in ten for no figure)'],
    [at(11, 1), at(11, 1), 'to figure 11, in Second watch'],
    [undefined, at(11, 1), 'for all (one time in ten to figure 11, in Second watch)'],
  ])('%j, %j: %s', (likely, low, says) => expect(lasts(likely, low)).toBe(says));
});

describe('bars', () => {
  it('measure by the need', () => {
    // 4.08 / 12.1; its tick at (12.1 + 2.55) / 12.1.
    const { bar } = rowOf('Nettle coat');
    expect([bar.hereShare, bar.keepShare ?? 0]).toEqual([expect.closeTo(0.337, 3), expect.closeTo(1.211, 3)]);
  });

  it('reach from low to high of the need and of the shelf, and on to what is to be bought', () => {
    // 7.3, 22.4, 2, 6.2 and 8.02 of 12.1
    const { need, have, buyShare } = rowOf('Nettle coat').bar;
    expect([need?.low, need?.high, have?.low, have?.high, buyShare]).toEqual(
      [0.603, 1.851, 0.165, 0.512, 0.663].map((share) => expect.closeTo(share, 3)),
    );
    expect(rowOf('Chalk light').bar.have).toBeUndefined();
    expect(rowOf('Lamp white').bar.need).toBeUndefined();
  });

  it('part what is on the way from what is here', () => {
    // (17.28 - 11.52) / 12.2 and 11.52 / 12.2
    const { bar } = rowOf('Pond wash');
    expect([bar.hereShare, bar.orderedShare]).toEqual([expect.closeTo(0.472, 3), expect.closeTo(0.944, 3)]);
  });

  it('measure by the keep level where the army needs none', () => {
    const { bar } = rowOf('Lamp white');
    expect([bar.line, bar.hereShare, bar.keepShare]).toEqual(['keep', expect.closeTo(0.32, 3), undefined]);
  });

  it('carry the colour of the sheets, or none', () => {
    expect([rowOf('Nettle coat').bar.hex, rowOf('Bell brass').bar.hex]).toEqual(['#5d7a3a', '']);
  });
});

it('names what the draws found to decide a paint, else what most of its paint hangs on', () => {
  expect(rowOf('Nettle coat').trust).toMatchObject({ mark: 'from memory', doubt: 'brush wet film' });
  expect(rowOf('Kettle grey').trust.doubt).toBe('spray can transfer');
});
