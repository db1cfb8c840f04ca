// Pots that run low: groups, amounts that fit one another, bars as shares of the need.
import { describe, expect, it } from 'vitest';
import { viewPlan } from '../../../src/report/view/view-plan.js';
import { smallPlan } from '../a-small-plan.js';

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
  it('stand in the order of alarm, the least covered paint first', () => {
    // Have / need: Kettle grey 90 / 60, Chalk light 16.32 / 0.9, Bell brass 3.264 / 0.14.
    expect(pots.groups.map(({ state, paints }) => [state, ...paints.map(({ paint }) => paint)])).toEqual([
      ['none owned', 'Rust hush'],
      ['short', 'Nettle coat'],
      ['tight', 'Pond wash'],
      ['enough', 'Kettle grey', 'Chalk light', 'Bell brass'],
      ['low', 'Lamp white'],
    ]);
  });

  it('are introduced by what runs low', () => {
    expect(pots.lead).toBe(
      '2 owned paints will be running low after this army: less than its keep level will be left. ' +
        '1 paint that it does not use is low already.',
    );
  });

  it('leave out a paint that is neither needed nor low', () => {
    const full = smallPlan.stock.map((one) =>
      one.paint === 'Lamp white' ? { ...one, runningLow: false } : one,
    );
    const view = viewPlan({ ...smallPlan, stock: full }, []);
    expect(JSON.stringify(view.pots)).not.toContain('Lamp white');
  });
});

describe('amounts', () => {
  it.each([
    ['Rust hush', 'have none, needed 4.1 ml, missing 4.1 ml'],
    // 12.1 - 4.08 = 8.02
    ['Nettle coat', 'have 4.1 ml, needed 12.1 ml, missing 8.0 ml, keep level 2.6 ml'],
    ['Pond wash', 'have 17.3 ml (11.5 ml on the way), needed 12.2 ml, left after 5.1 ml, keep level 1.8 ml'],
    ['Lamp white', 'have 0.82 ml, keep level 2.55 ml'],
  ])('%s: %s', (paint, text) => expect(rowOf(paint).amounts).toBe(text));
});

describe('bars', () => {
  it('measure by the need', () => {
    // 4.08 / 12.1; its tick at (12.1 + 2.55) / 12.1.
    const { bar } = rowOf('Nettle coat');
    expect([bar.hereShare, bar.keepShare ?? 0]).toEqual([expect.closeTo(0.337, 3), expect.closeTo(1.211, 3)]);
  });

  it('part what is on the way from what is here', () => {
    // (17.28 - 11.52) / 12.2 and 11.52 / 12.2
    const { bar } = rowOf('Pond wash');
    expect([bar.hereShare, bar.orderedShare]).toEqual([expect.closeTo(0.472, 3), expect.closeTo(0.944, 3)]);
  });

  it('measure by the keep level where the army needs none', () => {
    const { bar } = rowOf('Lamp white');
    expect([bar.line, bar.hereShare, bar.keepShare]).toEqual([
      'keep level',
      expect.closeTo(0.32, 3),
      undefined,
    ]);
  });

  it('carry the colour of the sheets, or none', () => {
    expect([rowOf('Nettle coat').bar.hex, rowOf('Bell brass').bar.hex]).toEqual(['#5d7a3a', '']);
  });
});
