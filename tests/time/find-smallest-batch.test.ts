import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Pass } from '../../src/model/time.js';
import { findSmallestBatch } from '../../src/time/find-smallest-batch.js';
import { timeBatch } from '../../src/time/time-batch.js';
import { makePass } from './make-time.js';

const waiting = (passes: readonly Pass[], figures: number): number =>
  timeBatch(passes.map((pass) => ({ ...pass, figures }))).waitingMin;

describe('the smallest batch at which nothing waits', () => {
  // Munier & Sourd 2003: nothing waits once n >= 1 + d / p.
  it.each([
    [2, 15, 9],
    [2.5, 15, 7],
    [0.1, 0.3, 4],
    [5, 30, 7],
    [3, 0, 1],
  ])('p %d, d %d: %i figures', (p, d, figures) => {
    const passes = Array.from({ length: 4 }, () => makePass({ brushMinPerFigure: p, driesMin: d }));
    expect(findSmallestBatch(passes).figures).toBe(figures);
    expect(waiting(passes, figures)).toBe(0);
    if (figures > 1) expect(waiting(passes, figures - 1)).toBeGreaterThan(0);
  });

  it('is the least one for any passes, and every larger one does as well', () => {
    const pass = fc.record({
      brushMinPerFigure: fc.integer({ min: 1, max: 8 }),
      driesMin: fc.integer({ min: 0, max: 60 }),
      setupMin: fc.integer({ min: 0, max: 6 }),
    });
    fc.assert(
      fc.property(
        fc.array(pass, { minLength: 1, maxLength: 8 }),
        fc.integer({ min: 1, max: 9 }),
        (drawn, more) => {
          const passes = drawn.map(makePass);
          const { figures, becauseOf } = findSmallestBatch(passes);
          if (figures === undefined) throw new Error('every pass takes time');
          expect(waiting(passes, figures)).toBe(0);
          expect(waiting(passes, figures + more)).toBe(0);
          expect(becauseOf === undefined).toBe(figures === 1);
          if (figures > 1) expect(waiting(passes, figures - 1)).toBeGreaterThan(0);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('names the pass that dries so long, and leaves long drying to the evening where told', () => {
    const wash = makePass({ step: 2, layer: 'wash', driesMin: 30 });
    const passes = [makePass(), wash, makePass({ step: 3 })];
    expect(findSmallestBatch(passes)).toEqual({ figures: 16, becauseOf: wash });
    expect(findSmallestBatch(passes, 30)).toEqual({ figures: 4, becauseOf: passes[0] });
  });

  it('there is none where a step takes no time, and one is enough where nothing follows', () => {
    expect(findSmallestBatch([makePass(), makePass({ brushMinPerFigure: 0 })]).figures).toBeUndefined();
    expect(findSmallestBatch([makePass({ driesMin: 600 })])).toEqual({ figures: 1, becauseOf: undefined });
    expect(findSmallestBatch([]).figures).toBe(1);
  });
});
