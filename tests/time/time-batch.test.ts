import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { timeBatch } from '../../src/time/time-batch.js';
import { asRound, type PlainRound, tryEveryOrder, walkStepByStep } from './make-time.js';

const alike = (n: number, p: number, d: number, k: number): PlainRound[] =>
  Array.from({ length: k }, () => ({ n, p, d, s: 0 }));
const batchOf = (rounds: readonly PlainRound[]) => timeBatch(rounds.map(asRound));

describe('steps all alike', () => {
  // Munier & Sourd 2003, one machine and minimum delays: n p + (k - 1) max(n p, p + d). p 2, d 15, k 3.
  it.each([
    [5, 44],
    [8, 50],
    [9, 54],
    [12, 72],
  ])('%i figures of three steps take %i minutes', (n, minutes) => {
    const batch = batchOf(alike(n, 2, 15, 3));
    expect(batch.elapsedMin).toBe(minutes);
    expect(batch.shortest).toBe('proved');
    expect(batch.brushMin).toBe(n * 2 * 3);
    expect(batch.waitingMin).toBe(minutes - n * 2 * 3);
  });

  it('follow the formula for any figures, minutes and steps, and are proved', () => {
    const whole = (max: number) => fc.integer({ min: 1, max });
    fc.assert(
      fc.property(whole(40), whole(9), fc.integer({ min: 0, max: 60 }), whole(12), (n, p, d, k) => {
        const batch = batchOf(alike(n, p, d, k));
        expect(batch.elapsedMin).toBe(n * p + (k - 1) * Math.max(n * p, p + d));
        expect(batch.shortest).toBe('proved');
      }),
    );
  });
});

describe('two steps', () => {
  // The bound max(n (p1 + p2), p1 + d + n p2, n p1 + d + p2) is reached: Munier & Sourd 2003; (2, 3) and 30.
  it.each([
    [10, 62],
    [20, 100],
  ])('%i figures take %i minutes', (n, minutes) => {
    const batch = batchOf([
      { n, p: 2, d: 30, s: 0 },
      { n, p: 3, d: 99, s: 0 },
    ]);
    expect(batch).toMatchObject({ elapsedMin: minutes, atLeastMin: minutes, shortest: 'proved' });
  });

  it('reach the bound whatever their minutes', () => {
    const whole = fc.integer({ min: 0, max: 30 });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 30 }), whole, whole, whole, (n, p1, p2, d) => {
        const batch = batchOf([
          { n, p: p1, d, s: 0 },
          { n, p: p2, d: 7, s: 0 },
        ]);
        expect(batch.elapsedMin).toBe(Math.max(n * (p1 + p2), p1 + d + n * p2, n * p1 + d + p2));
        expect(batch.shortest).toBe('proved');
      }),
    );
  });
});

describe('three or more unequal steps', () => {
  // By hand, and by trying every order: figure 1 through both first steps, figure 2 after it, beats step by step.
  it('can be beaten: two figures, p (1, 1, 2), d (0, 3): 10 against 9', () => {
    const rounds = [
      { n: 2, p: 1, d: 0, s: 0 },
      { n: 2, p: 1, d: 3, s: 0 },
      { n: 2, p: 2, d: 0, s: 0 },
    ];
    expect(tryEveryOrder(rounds)).toBe(9);
    expect(batchOf(rounds)).toMatchObject({ elapsedMin: 10, shortest: 'rule of thumb' });
    expect(batchOf(rounds).atLeastMin).toBeLessThanOrEqual(9);
  });

  it('no order of work is shorter than the bound, nor than what is called proved', () => {
    const minutes = fc.integer({ min: 0, max: 6 });
    const round = fc.record({
      n: fc.integer({ min: 1, max: 3 }),
      p: minutes,
      d: minutes,
      s: fc.constant(0),
    });
    const rounds = fc.oneof(
      fc.array(round, { minLength: 1, maxLength: 3 }),
      fc
        .tuple(fc.integer({ min: 1, max: 3 }), fc.array(round, { minLength: 1, maxLength: 3 }))
        .map(([n, of]) => of.map((one) => ({ ...one, n }))),
      fc.array(round, { minLength: 4, maxLength: 5 }).map((of) => of.map((one) => ({ ...one, n: 2 }))),
    );
    let proved = 0;
    let beaten = 0;
    fc.assert(
      fc.property(rounds, (drawn) => {
        const batch = batchOf(drawn);
        const shortest = tryEveryOrder(drawn);
        expect(batch.atLeastMin).toBeLessThanOrEqual(shortest);
        expect(batch.elapsedMin).toBeGreaterThanOrEqual(shortest);
        if (batch.shortest === 'proved') expect(batch.elapsedMin).toBe(shortest);
        if (batch.shortest === 'proved') proved++;
        if (batch.elapsedMin > shortest) beaten++;
      }),
      { numRuns: 400, seed: 11 },
    );
    expect(proved).toBeGreaterThan(100);
    expect(beaten).toBeGreaterThan(10);
  });
});

describe('a batch', () => {
  it('takes as long as walking it figure by figure, also where the log has figures ahead, and with setups', () => {
    const minutes = fc.integer({ min: 0, max: 40 });
    const round = fc.record({ n: fc.integer({ min: 1, max: 30 }), p: minutes, d: minutes, s: minutes });
    fc.assert(
      fc.property(fc.array(round, { minLength: 1, maxLength: 9 }), (rounds) => {
        const batch = batchOf(rounds);
        expect(batch.elapsedMin).toBe(walkStepByStep(rounds));
        expect(batch.brushMin + batch.setupMin + batch.waitingMin).toBe(batch.elapsedMin);
        expect(batch.figures).toBe(Math.max(...rounds.map(({ n }) => n)));
      }),
      { numRuns: 500 },
    );
  });

  it('paint dries while the next is put out: 1 + 2, then 5 - 3 minutes of waiting, 3 + 2', () => {
    const rounds = [
      { n: 1, p: 2, d: 5, s: 1 },
      { n: 1, p: 2, d: 5, s: 3 },
    ];
    expect(batchOf(rounds)).toMatchObject({ brushMin: 4, setupMin: 4, waitingMin: 2, elapsedMin: 10 });
  });

  it('without rounds takes no time', () => {
    expect(timeBatch([])).toMatchObject({ figures: 0, elapsedMin: 0, waitingMin: 0, shortest: 'proved' });
  });
});
