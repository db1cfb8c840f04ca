// What comes first, from the small plan's evenings and from plans bent one way each.
import { describe, expect, it } from 'vitest';
import { lookAhead } from '../../src/summary/look-ahead.js';
import { smallPlan } from '../report/a-small-plan.js';

const ahead = (changes: Partial<Parameters<typeof lookAhead>[0]>) => lookAhead({ ...smallPlan, ...changes });
const weighing = { how: 'weigh', what: 'brush', paint: 'Nettle coat' } as const;
const ranges = (share: number) => ({ remedies: [{ ...weighing, share }] });
const { time, order, stock } = smallPlan;
const idle = { minutes: 0, pieces: [] };
const after = (evenings: number) => ({
  ...time,
  spelledOut: [...Array.from({ length: evenings }, () => idle), ...time.spelledOut],
});

describe('the paint that is empty first', () => {
  it('is found coat by coat', () => {
    expect(ahead({}).firstOut).toEqual({ paint: 'Nettle coat', evening: 1, unit: 'First watch' });
    // Three coats of 6.05 / 3 ml on ten figures, then one on seven: 6.05 + 1.41 = 7.46 on the first evening.
    const having = (haveMl: number) => stock.map((one) => ({ ...one, haveMl }));
    expect(ahead({ stock: having(6.04) }).firstOut).toMatchObject({ unit: 'First watch' });
    expect(ahead({ stock: having(6.06) }).firstOut).toMatchObject({ unit: 'Second watch', evening: 1 });
    expect(ahead({ stock: having(7.47) }).firstOut).toMatchObject({ unit: 'Second watch', evening: 2 });
  });

  it('is none where none is likely to run out', () => {
    const enough = stock.map((one) => ({ ...one, state: 'tight' as const }));
    expect(ahead({ stock: enough }).firstOut).toBeUndefined();
  });
});

it('the unit that is finished first is that with the lowest evening', () => {
  expect(ahead({}).firstFinished).toEqual({ unit: 'The ram', evening: 2 });
});

describe('next', () => {
  it.each([
    [0.25, 0, 'weigh'],
    [0.2499, 0, 'order'],
    [0.25, 9, 'weigh'],
    [0.25, 10, 'paint'],
    [0.1, 2, 'order'],
    [0.1, 3, 'paint'],
  ])('with %d of the doubt settled and %d evenings before: %s', (share, evenings, what) => {
    expect(ahead({ ranges: ranges(share), time: after(evenings) }).next?.what).toBe(what);
  });

  it('names the pot, the order and the first thing to paint', () => {
    expect(ahead({ ranges: ranges(0.78) }).next).toMatchObject({
      paint: 'Nettle coat',
      evening: 1,
      share: 0.78,
    });
    expect(ahead({ ranges: ranges(0) }).next).toEqual({ what: 'order', pots: 1 });
    const nothing = { ...order, lines: [] };
    expect(ahead({ ranges: ranges(0), order: nothing }).next).toEqual({
      ...{ what: 'paint', unit: 'First watch', zone: 'all', paint: 'Kettle grey' },
    });
    expect(ahead({ time: { ...time, spelledOut: [] } }).next).toBeUndefined();
  });

  it('is neither to weigh an empty pot nor to paint with what is not there', () => {
    const empty = stock.map((one) => ({
      ...{ ...one, haveMl: 0 },
      pots: one.pots.map((pot) => ({ ...pot, usableMl: 0 })),
    }));
    expect(ahead({ ranges: ranges(0.78), stock: empty }).next).toEqual({ what: 'order', pots: 1 });
    const nothing = { ...order, lines: [] };
    expect(ahead({ ranges: ranges(0.78), stock: empty, order: nothing }).next).toBeUndefined();
  });
});
