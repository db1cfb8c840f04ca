// How long the pots last: groups, amounts that fit one another, bars as shares of the need.
import { describe, expect, it } from 'vitest';
import { viewPlan } from '../../../../src/report/page/view.js';
import { potWords } from '../../../../src/report/sections/pots/words.js';
import { numberWords } from '../../../../src/report/words/word-numbers.js';
import { changedPlan, smallPlan } from '../../a-small-plan.js';

const { pots } = viewPlan(smallPlan, []);
const rowOf = (paint: string) => {
  const row = pots.groups.flatMap(({ paints }) => paints).find((one) => one.paint === paint);
  if (row === undefined) throw new Error(`no row for ${paint}`);
  return row;
};
const fullOf = (paint: string) => {
  const row = pots.rows.find((one) => one.paint === paint);
  if (row === undefined) throw new Error(`no full row for ${paint}`);
  return row;
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

  it('are introduced by how many are in each', () => {
    expect(pots.lead).toBe('1 paint is missing, 1 is likely to run out, 1 may, 3 should last.');
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
    ['Rust hush', 'none for 4.1 ml'],
    ['Nettle coat', 'to figure 6, in First watch, 4 for 12 ml, runs out in 97 of 100'],
    [
      'Pond wash',
      'one time in ten only to figure 16, in Second watch, 17 for 12 ml, 12 ml of it on the way, runs out in 21 of 100',
    ],
    ['Chalk light', '16 for 1 ml, runs out in under 1 of 100'],
    ['Lamp white', '0.8 ml, to keep 2.6 ml'],
  ])('%s: %s', (paint, text) => expect(rowOf(paint).says.join(', ').replaceAll('\u00a0', ' ')).toBe(text));

  it.each([
    ['Rust hush', ['none', '', '4.1', '2.4 to 7.6', '', '4.1', '', '', '']],
    [
      'Nettle coat',
      [
        '4.1',
        '2.0 to 6.2',
        '12.1',
        '7.3 to 22.4',
        '97%',
        '8.0',
        '',
        '2.6',
        'to figure 6, in First watch (one time in ten only to figure 3, in First watch)',
      ],
    ],
    [
      'Pond wash',
      [
        '17.3',
        '15.8 to 18.8',
        '12.2',
        '7.1 to 21.5',
        '21%',
        '',
        '5.1',
        '1.8',
        'for all (one time in ten only to figure 16, in Second watch)',
      ],
    ],
    ['Chalk light', ['16.3', '', '0.9', '0.5 to 1.8', 'under 1%', '', '15.4', '2.6', '']],
    ['Lamp white', ['0.82', '', '', '', '', '', '', '2.55', '']],
  ])('in full: %s', (paint, amounts) => {
    const { have, haveRange, need, needRange, chance, toBuy, left, keep, lasts } = fullOf(paint);
    expect([have, haveRange, need, needRange, chance, toBuy, left, keep, lasts]).toEqual(amounts);
  });
});

describe('how far it lasts', () => {
  const at = (figures: number, ofUnit: number) => ({ figures, unit: 'Second watch', ofUnit });
  const lasts = (likely: ReturnType<typeof at> | undefined, low = likely) =>
    potWords(numberWords(smallPlan.settings)).lasts({ likely, low });
  it.each([
    [at(0, 0), at(0, 0), 'for no figure'],
    [at(10, 0), at(0, 0), 'to figure 10, before Second watch (one time in ten for no figure)'],
    [at(11, 1), at(11, 1), 'to figure 11, in Second watch'],
    [undefined, at(11, 1), 'for all (one time in ten only to figure 11, in Second watch)'],
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
  expect(fullOf('Nettle coat').trust).toMatchObject({ mark: 'from memory', doubt: 'brush wet film' });
  expect(fullOf('Kettle grey').trust.doubt).toBe('spray can transfer');
});
