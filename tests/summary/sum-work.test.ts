// The lines of the small army summed by hand: two units of wardens, one ram with its primer on.
import { describe, expect, it } from 'vitest';
import { sumWork } from '../../src/summary/sum-work.js';
import { ram, wardens } from '../report/a-small-army.js';

const work = sumWork({
  jobs: new Map([
    [wardens, 2],
    [ram, 1],
  ]),
});

describe('the small army', () => {
  it('puts out 98.39 ml, of which the ram’s primer of 9 is done', () => {
    // Wardens 30 + 6.05 + 6.1 + 0.45 + 0.07 = 42.67, twice; ram 9 + 4.05 = 13.05.
    expect(work.wholeMl).toBeCloseTo(98.39, 9);
    expect(work.remainingMl).toBeCloseTo(89.39, 9);
  });

  it('tells where the paint ends: 60 of grey are 4.48 on figures, 4 left over, 51.52 lost', () => {
    const grey = work.paints.get('Kettle grey');
    expect([grey?.wholeMl, grey?.remainingMl]).toEqual([69, 60]);
    expect([grey?.onFigureMl, grey?.leftoverMl, grey?.lostMl]).toEqual([
      expect.closeTo(4.48, 9),
      4,
      expect.closeTo(51.52, 9),
    ]);
    expect(grey?.trust).toEqual({ mark: 'from memory', biggestDoubt: 'spray can transfer' });
  });

  it('has zones by what is left, most first, each layer by itself', () => {
    // Whole: wash 2 x 6.1, base coat 4.05. Tunic: base coat 2 x 6.05, highlight 2 x 0.45. Belt: 2 x 0.07.
    expect(work.zones.map(({ zone }) => zone)).toEqual(['all', 'whole', 'tunic', 'belt']);
    expect(work.zones.map(({ remainingMl }) => remainingMl)).toEqual(
      [60, 16.25, 13, 0.14].map((ml) => expect.closeTo(ml, 9)),
    );
    expect([...(work.zones[1]?.layersMl ?? [])]).toEqual([
      ['wash', 12.2],
      ['base coat', 4.05],
    ]);
  });

  it('lists paints as they first go on, and doubts most what the grey hangs on', () => {
    expect([...work.paints.keys()]).toEqual([
      'Kettle grey',
      'Nettle coat',
      'Pond wash',
      'Chalk light',
      'Bell brass',
      'Rust hush',
    ]);
    expect(work.trust.biggestDoubt).toBe('spray can transfer');
    expect(work.paintDoubts.get('Rust hush')?.weights).toEqual(new Map([['brush wet film', 4.05]]));
  });
});

it('cuts parts that rounding left above the whole', () => {
  const [line] = ram.remaining;
  if (line === undefined) throw new Error('no line');
  const job = { ...ram, remaining: [{ ...line, onFigureMl: 3, leftoverMl: 2, putOutMl: 4.05 }] };
  const rust = sumWork({ jobs: new Map([[job, 1]]) }).paints.get('Rust hush');
  expect(rust).toMatchObject({ onFigureMl: 3, leftoverMl: expect.closeTo(1.05, 9), lostMl: 0 });
});

it('is nothing of an army of nobody', () => {
  const none = sumWork({ jobs: new Map() });
  expect([none.wholeMl, none.remainingMl, none.zones.length, none.paints.size]).toEqual([0, 0, 0, 0]);
  expect(none.trust).toEqual({ mark: 'weighed', biggestDoubt: '' });
});
