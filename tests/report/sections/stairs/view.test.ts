// Cash against figures: rows, the cost of one more figure, what is said where steps were missed or not proved.
import { describe, expect, it } from 'vitest';
import type { Stair, Stairs } from '../../../../src/model/order.js';
import type { Plan } from '../../../../src/model/plan.js';
import { viewPlan } from '../../../../src/report/page/view.js';
import { smallStairs } from '../../a-small-climb.js';
import { changedPlan, smallPlan } from '../../a-small-plan.js';
import { examplePlan } from '../../plan-json/plan-example.js';

const stairsOf = (changes: Partial<Plan>) => viewPlan(changedPlan({ ...changes }), []).stairs;
const step = (figures: number, cashMinor: number, because: readonly string[], proved = true): Stair => ({
  figures,
  cashMinor,
  because,
  proved,
});
const withSteps = (steps: readonly Stair[], more: Partial<Stairs> = {}) =>
  stairsOf({ stairs: { ...smallStairs, steps, ...more } });
const start = step(0, 0, []);

it('names a dozen paints of a step, and how many more there are', () => {
  const paints = Array.from({ length: 15 }, (_, at) => `paint ${at}`);
  const [row] = withSteps([start, step(3, 740, paints)])?.rows ?? [];
  expect(row?.paints.map(({ paint }) => paint)).toEqual(paints.slice(0, 12));
  expect(row?.others).toBe('and 3 more');
  const [dozen] = withSteps([start, step(3, 740, paints.slice(0, 12))])?.rows ?? [];
  expect([dozen?.paints.length, dozen?.others]).toEqual([12, '']);
});

describe('the small staircase', () => {
  const view = stairsOf({});

  it('lists each step with its cash and its paints', () => {
    expect(view?.rows).toEqual([
      {
        no: '1',
        figures: '7',
        cash: '€7.40',
        rise: '€7.40',
        paints: [{ paint: 'Nettle coat', hex: '#5d7a3a' }],
        others: '',
        proved: 'proved',
      },
      {
        no: '2',
        figures: '30',
        cash: '€12.90',
        rise: '€5.50',
        paints: [{ paint: 'Pond wash', hex: '#3f4a3c' }],
        others: '',
        proved: 'proved',
      },
      {
        no: '3',
        figures: '35',
        cash: '€16.40',
        rise: '€3.50',
        paints: [{ paint: 'Nettle coat', hex: '#5d7a3a' }],
        others: '',
        proved: 'proved',
      },
    ]);
    expect(view?.caption).toBe(
      'Where the cash rises, 3 steps, each proved: no order for so many figures costs less',
    );
    expect(view?.showProved).toBe(false);
    expect(view?.notes).toEqual([]);
  });

  it('says that one more figure costs nothing, and how far the order reaches', () => {
    expect(view?.next).toEqual({
      figure: 'nothing',
      says: 'Your pots and this order still reach, but for paint that no offer covers, up to figure 29. The next step is figure 30 (Pond wash): €5.50.',
    });
  });

  it('says in which order figures are painted', () => {
    expect(view?.lead).toContain('by priority, First watch first; after the last one a second army follows');
  });

  it('says by which way to buy', () => {
    expect(view?.lead).toContain(
      'What 80% sure takes over the likely needs is kept in proportion at every number of figures; by the likely needs alone pots may last longer.',
    );
  });

  it('draws shares of twice the army and of the most cash', () => {
    // 7, 30 and 35 of 42 figures; 7.40, 12.90 and 16.40 of 16.40; the army is 21 of 42.
    const { risers = [], army } = view?.chart ?? {};
    expect(risers.map(({ across }) => across * 42)).toEqual([7, 30, 35].map((at) => expect.closeTo(at, 9)));
    expect(risers.map(({ fromUp, up }) => [fromUp * 1640, up * 1640].map(Math.round))).toEqual([
      [0, 740],
      [740, 1290],
      [1290, 1640],
    ]);
    expect(army).toMatchObject({
      across: 0.5,
      label: 'your army: 21 figures, €7.40',
      short: 'your army: 21',
    });
  });

  it('has round ticks, at most six, the first at nothing', () => {
    // Steps of 5 euros and of 10 figures.
    expect(view?.chart?.cashTicks.map(({ text }) => text)).toEqual(['0', '5', '10', '15']);
    expect(view?.chart?.figureTicks.map(({ text }) => text)).toEqual(['0', '10', '20', '30', '40']);
    expect(view?.chart?.cashTicks[1]?.share).toBeCloseTo(500 / 1640, 9);
  });
});

describe('one more figure', () => {
  it('costs what the next step takes where that comes with it', () => {
    const view = withSteps([
      start,
      step(7, 740, ['Nettle coat']),
      step(22, 1235, ['Pond wash', 'Bell brass']),
    ]);
    expect(view?.next).toEqual({
      figure: '€4.95',
      says: 'More of Pond wash and Bell brass would be needed.',
    });
  });

  it('costs nothing for twice the army', () => {
    expect(withSteps([start, step(7, 740, ['Nettle coat'])])?.next).toEqual({
      figure: 'nothing',
      says: 'Your pots and this order still reach, but for paint that no offer covers, even for twice the army.',
    });
  });

  it('speaks of pots alone where nothing is ordered', () => {
    const order = { ...smallPlan.order, lines: [], bills: [], totalMinor: 0, postageMinor: 0 };
    const stairs = { ...smallStairs, steps: [start] };
    const view = stairsOf({ order, stairs });
    expect(view?.next.says).toBe(
      'Your pots still reach, but for paint that no offer covers, even for twice the army.',
    );
    expect(view?.chart).toBeUndefined();
  });

  it('costs what the step right after the army takes also where others were not looked for', () => {
    const steps = [start, step(20, 700, ['Nettle coat']), step(22, 1290, ['Pond wash'])];
    // The order itself costs 7.40, though the last step found before it says 7.00.
    expect(withSteps(steps, { everyStep: false })?.next.figure).toBe('€5.50');
    expect(withSteps(steps.with(2, step(22, 1290, ['Pond wash'], false)))?.next.figure).toBe('at most €5.50');
  });

  it('is had for nothing up to the next step; a rise behind it may come earlier than shown', () => {
    const view = withSteps(
      [
        start,
        step(21, 740, ['Nettle coat']),
        step(24, 740, ['Pond wash']),
        step(30, 1290, ['Pond wash'], false),
      ],
      { everyStep: false },
    );
    expect(view?.next).toEqual({
      figure: 'nothing',
      says: 'Your pots and this order still reach, but for paint that no offer covers, up to figure 23. The next step shown is figure 30 (Pond wash): at most €5.50; not every step was looked for, so it may come earlier.',
    });
    expect(view?.notes[0]).toMatch(/^There are too many steps to look for each/);
  });
});

describe('other staircases', () => {
  it('leave out steps that change the order and not the cash', () => {
    const view = withSteps([
      start,
      step(7, 740, ['Nettle coat']),
      step(9, 740, ['Pond wash']),
      step(30, 900, ['Bell brass']),
    ]);
    expect(view?.rows.map(({ no, figures }) => [no, figures])).toEqual([
      ['1', '7'],
      ['2', '30'],
    ]);
  });

  it('say which steps are not proved', () => {
    const view = withSteps([start, step(7, 740, ['Nettle coat']), step(30, 900, ['Bell brass'], false)]);
    expect(view?.rows.map(({ proved }) => proved)).toEqual(['proved', 'not proved']);
    expect(view).toMatchObject({ showProved: true, caption: 'Where the cash rises, 2 steps' });
    expect(view?.notes).toEqual([
      '1 step is not proved: a cheaper order may exist there. Plan again with more time to search, such as --seconds 60.',
    ]);
  });

  it('are none for an army of nobody', () => {
    expect(
      stairsOf({ figureCount: 0, stairs: { steps: [], mostFigures: 0, everyStep: true } }),
    ).toBeUndefined();
  });

  it('name several paints by the first', () => {
    const view = withSteps([start, step(7, 740, ['Nettle coat', 'Pond wash', 'Bell brass'])]);
    expect(view?.chart?.risers[0]).toMatchObject({
      name: 'Nettle coat + 2',
      title: 'Figure 7: €7.40 more for Nettle coat, Pond wash and Bell brass',
      hexes: ['#5d7a3a', '#3f4a3c', ''],
    });
  });

  // ISO 4217: the yen has no minor unit, the Iraqi dinar three digits.
  it.each([
    ['JPY', ['0', '500', '1,000', '1,500']],
    ['IQD', ['0', '0.5', '1', '1.5']],
  ])('have ticks in %s', (currency, texts) => {
    const view = stairsOf({ settings: { ...smallPlan.settings, currency } });
    expect(view?.chart?.cashTicks.map(({ text }) => text)).toEqual(texts);
  });

  it('end a plan by the real stages at the order that it has', () => {
    const view = viewPlan(examplePlan, []).stairs;
    expect(view?.chart?.army.label).toBe('your army: 33 figures, €7.40');
    // Slate: 10.2447 x 2 x 50 x 0.0001 / 0.5 x 2 / 3 = 0.1366 ml a figure and 0.08 a sitting, of 17 x 0.05 x 0.94 = 0.799 ml
    // on the shelf: likely short from figure 6 on, and what the promise takes beyond the likely brings that forward.
    expect(view?.rows.map(({ figures, cash }) => [figures, cash])).toEqual([['3', '€7.40']]);
  });
});
