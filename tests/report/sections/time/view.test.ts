import { describe, expect, it } from 'vitest';
import { viewTime } from '../../../../src/report/sections/time/view.js';
import { viewInputs } from '../../../../src/report/words/view-inputs.js';
import { findSmallestBatch } from '../../../../src/time/find-smallest-batch.js';
import { timeBatch } from '../../../../src/time/time-batch.js';
import { ramTime, smallTime, wardensTime } from '../../a-small-clock.js';
import { changedPlan } from '../../a-small-plan.js';

const viewOf = (time: Partial<typeof smallTime> = {}) => {
  const view = viewTime(viewInputs(changedPlan({ time: { ...smallTime, ...time } })));
  return view && (JSON.parse(JSON.stringify(view).replaceAll('\u00a0', ' ')) as typeof view);
};
const view = viewOf();

describe('the small plan’s time, set by hand', () => {
  it.each([
    ['wardens', wardensTime],
    ['ram', ramTime],
  ])('of the %s is what the stage would say', (_, time) => {
    const [batch] = time.batches;
    expect({ batches: 1, ...timeBatch(time.passes) }).toEqual({
      ...batch,
      elapsedMin: expect.closeTo(batch?.elapsedMin ?? 0, 6),
      brushMin: expect.closeTo(batch?.brushMin ?? 0, 6),
      waitingMin: expect.closeTo(batch?.waitingMin ?? 0, 6),
      atLeastMin: expect.closeTo(batch?.atLeastMin ?? 0, 6),
    });
    expect(findSmallestBatch(time.passes)).toEqual(time.smallestBatchWithoutWaiting);
    expect(findSmallestBatch(time.passes, 30)).toEqual(time.smallestBatchBetweenLongDrying);
  });
});

describe('time', () => {
  it('is in evenings, and owns that minutes are from memory', () => {
    expect(view?.lead).toBe('About 4 evenings of 2 h 30 min, if you paint one batch while another dries.');
    expect(view?.trust.mark).toBe('from memory');
  });

  // 464.8 minutes round to 465: 368 + 19 + 78.
  it('adds up, each part rounded', () => {
    expect(view?.sums.map(({ title, figure }) => `${title}: ${figure}`)).toEqual([
      'Brush in hand: 6 h 8 min',
      'One batch after the other: 7 h 45 min',
      'setting up: 19 min',
      'waiting: 78 min',
    ]);
    expect(view?.sums[0]?.says).toContain('4 h 30 min to 8 h 24 min');
    expect(view?.reckoned).toContain('The first 2 evenings are planned');
  });

  it('tells each evening: a bar of what is painted, the same in words, and what is finished', () => {
    const [first, second] = view?.first ?? [];
    expect(first?.says.map(({ unit, what }) => ({ unit, what: what.replaceAll('\u00a0', ' ') }))).toEqual([
      { unit: 'First watch', what: 'spray all, Kettle grey, primer, on 10' },
      { unit: 'Second watch', what: 'spray all, Kettle grey, primer, on 10' },
      { unit: '', what: 'wait 21 min' },
      {
        unit: 'First watch',
        what: 'tunic, Nettle coat, base coat, on 10; tunic, Nettle coat, base coat, second coat, on 10; tunic, Nettle coat, base coat, third coat, on 10',
      },
      { unit: 'Second watch', what: 'tunic, Nettle coat, base coat, on 7' },
    ]);
    expect([first?.minutes, first?.finished, second?.finished]).toEqual(['2 h 27 min', '', 'The ram']);
    const shares = first?.bar.pieces.map(({ share }) => share) ?? [];
    expect(shares[0]).toBeCloseTo(9 / 150, 9);
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(147.4 / 150, 9);
    expect(first?.bar.pieces[2]?.key).toBe('waiting');
    expect(view?.layers.map(({ layer }) => layer)).toEqual(['primer', 'base coat', 'wash']);
    expect(view?.waits).toBe(true);
  });

  it('gives the minutes of a figure with low and high, and when a unit is done', () => {
    expect(view?.units[0]).toEqual({
      unit: 'First watch',
      figures: '10',
      perFigure: '15 min',
      perFigureRange: '11 to 21 min',
      brush: '2 h 34 min',
      setup: '9 min',
      done: 'later',
    });
    expect(view?.units[2]?.done).toBe('evening 2');
  });

  it('leads from each unit, once an evening, to the step of its card', () => {
    // Places in the army: first watch 1, second watch 2, the ram 3.
    const [first, second] = view?.first ?? [];
    expect(first?.says.map(({ card }) => card)).toEqual(['c1-1', 'c2-1', '', '', '']);
    expect(second?.says.at(-1)).toMatchObject({ unit: 'The ram', card: 'c3-2' });
  });

  it('says what a batch waits for, how large it should be, and what is proved', () => {
    expect(view?.batches[0]).toEqual({
      unit: 'First watch',
      batches: '1 batch of 10',
      elapsed: '3 h 19 min',
      waiting: '36 min',
      atLeast: '3 h 13 min',
      shortest: 'rule of thumb',
      noWaiting: '74 (step 1 primer dries 30 min)',
      betweenLong: '5 (step 4 highlight dries 5 min)',
    });
    expect(view?.batches[2]?.shortest).toBe('proved');
    expect(view?.proof).toContain('elsewhere it is a rule of thumb');
    const proved = viewOf({ units: smallTime.units.filter(({ time }) => time === ramTime) });
    expect(proved?.proof).not.toContain('rule of thumb');
  });

  it('has words where no batch is large enough, and where a unit is finished', () => {
    const [unit] = smallTime.units;
    if (unit === undefined) throw new Error('no unit');
    const never = { figures: undefined, becauseOf: undefined };
    const endless = { ...unit, time: { ...wardensTime, smallestBatchWithoutWaiting: never } };
    const done = { ...unit, time: { ...wardensTime, passes: [], batches: [], brushMin: 0 } };
    const changed = viewOf({ units: [endless, done] });
    expect(changed?.batches[0]?.noWaiting).toBe('none is large enough');
    expect(changed?.batches).toHaveLength(1);
    expect(changed?.units[1]).toMatchObject({ done: 'finished', brush: '', setup: '' });
  });

  it('folds many evenings away, and lists 60 at the most', () => {
    const [evening] = smallTime.spelledOut;
    if (evening === undefined) throw new Error('no evening');
    const many = viewOf({ spelledOut: Array.from({ length: 120 }, () => evening) });
    expect([many?.first.length, many?.folded.length]).toEqual([3, 57]);
    // Those that are folded away go by their steps.
    expect(many?.folded[0]?.says[3]?.what).toBe(
      '2 base coat on 10; 2 base coat, coat 2, on 10; 2 base coat, coat 3, on 10',
    );
    expect(many?.more).toContain('plan.json holds 120');
  });

  it('is no section where nothing is left to be painted', () => {
    expect(viewOf({ evenings: 0, spelledOut: [], units: [] })).toBeUndefined();
  });
});
