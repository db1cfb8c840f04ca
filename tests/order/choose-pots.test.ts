import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { choosePots, type Pack } from '../../src/order/choose-pots.js';

const pack = (ml: number, priceMinor: number, limit = Number.POSITIVE_INFINITY, pots = 1): Pack => ({
  ml,
  priceMinor,
  limit,
  pots,
});
const costOf = (packs: readonly Pack[], counts: readonly number[]): number =>
  counts.reduce((sum, count, index) => sum + count * (packs[index]?.priceMinor ?? 0), 0);

describe('pots of 12 ml at 2.75, 17 ml at 3.50, 60 ml at 10.90 (every count tried by hand)', () => {
  const shelf = [pack(12, 275), pack(17, 350), pack(60, 1090)];
  it.each([
    [1, 275, [1, 0, 0]],
    [20, 550, [2, 0, 0]],
    [38, 900, [2, 1, 0]],
    [77, 1440, [0, 1, 1]],
    [120, 2180, [0, 0, 2]],
    [0, 0, [0, 0, 0]],
  ])('%i ml cost %i', (needMl, cost, counts) => {
    expect(choosePots(needMl, shelf)).toEqual(counts);
    expect(costOf(shelf, choosePots(needMl, shelf) ?? [])).toBe(cost);
  });
});

describe('limits and ties', () => {
  it('takes no more of an offer than there is', () => {
    expect(choosePots(30, [pack(10, 100, 2), pack(10, 150)])).toEqual([2, 1]);
    expect(choosePots(31, [pack(10, 100, 2), pack(10, 150, 1)])).toBeUndefined();
    expect(choosePots(1, [])).toBeUndefined();
  });

  it('of equal costs prefers fewer pots, then the earlier offer', () => {
    expect(choosePots(24, [pack(12, 200), pack(24, 400)])).toEqual([0, 1]);
    expect(choosePots(24, [pack(12, 200), pack(12, 200)])).toEqual([2, 0]);
  });

  it('stays quick where five shops ask the same', () => {
    const alike = [1, 2, 3, 4, 5].map(() => pack(16.32, 290));
    expect(choosePots(50_000, alike)).toEqual([Math.ceil(50_000 / 16.32), 0, 0, 0, 0]);
  });
});

describe('among very many packs', () => {
  it('covers the need by the cheapest, each of which there is but one', () => {
    const packs = Array.from({ length: 30_000 }, (_, at) => pack(10, 1000 + at, 1));
    const counts = choosePots(250_000, packs);
    expect(counts?.indexOf(0)).toBe(25_000);
    expect(counts?.lastIndexOf(1)).toBe(24_999);
  });

  it('finds the one that is cheapest, however many are dearer', () => {
    const packs = Array.from({ length: 30_000 }, (_, at) =>
      pack(10 + (at % 7), 1000 + ((at * 7919) % 30_011)),
    );
    packs[20_123] = pack(12, 999);
    expect(choosePots(11, packs)?.flatMap((count, place) => (count > 0 ? [place] : []))).toEqual([20_123]);
  });
});

describe('against trying every count', () => {
  const packs = fc.array(
    fc.record({
      ml: fc.integer({ min: 3, max: 30 }),
      priceMinor: fc.integer({ min: 1, max: 40 }),
      limit: fc.constantFrom(1, 2, 3, Number.POSITIVE_INFINITY),
      pots: fc.integer({ min: 1, max: 3 }),
    }),
    { minLength: 1, maxLength: 4 },
  );

  /** Least cost, then least pots, by plain enumeration. */
  const tryAll = (needMl: number, from: readonly Pack[]): readonly [number, number] => {
    const [first, ...rest] = from;
    if (needMl <= 0) return [0, 0];
    if (first === undefined) return [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
    let best: readonly [number, number] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (let count = 0; count <= Math.min(first.limit, Math.ceil(needMl / first.ml)); count++) {
      const [cost, pots] = tryAll(needMl - count * first.ml, rest);
      const all = [cost + count * first.priceMinor, pots + count * first.pots] as const;
      if (all[0] < best[0] || (all[0] === best[0] && all[1] < best[1])) best = all;
    }
    return best;
  };

  it('costs the same and uses as few pots', () => {
    fc.assert(
      fc.property(packs, fc.integer({ min: 1, max: 90 }), (from, needMl) => {
        const [cost, pots] = tryAll(needMl, from);
        const counts = choosePots(needMl, from);
        if (counts === undefined) {
          expect(cost).toBe(Number.POSITIVE_INFINITY);
          return;
        }
        expect(costOf(from, counts)).toBe(cost);
        expect(counts.reduce((sum, count, index) => sum + count * (from[index]?.pots ?? 0), 0)).toBe(pots);
      }),
      { numRuns: 2000 },
    );
  });

  it('one more pack never costs more, and every need is covered', () => {
    fc.assert(
      fc.property(packs, fc.integer({ min: 1, max: 90 }), (from, needMl) => {
        const fewer = from.slice(1);
        const [all, some] = [choosePots(needMl, from), choosePots(needMl, fewer)];
        if (all === undefined) return;
        const got = all.reduce((sum, count, index) => sum + count * (from[index]?.ml ?? 0), 0);
        expect(got).toBeGreaterThanOrEqual(needMl);
        if (some !== undefined) expect(costOf(from, all)).toBeLessThanOrEqual(costOf(fewer, some));
      }),
    );
  });
});
