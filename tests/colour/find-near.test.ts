import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { openNear } from '../../src/colour/find-near.js';
import { openColours } from '../../src/colour/open-colours.js';
import type { Lab } from '../../src/model/colour.js';
import { makePaint } from '../make-sheets.js';
import { sharmaPairs } from './sharma-pairs.js';

const { between } = await openColours([makePaint({ paint: 'any', hex: '#123456' })]);
const coordinate = (bound: number) => fc.double({ min: -bound, max: bound, noNaN: true });
const labOf = fc.record({
  mode: fc.constant('lab65' as const),
  l: fc.double({ min: 0, max: 100, noNaN: true }),
  a: coordinate(100),
  b: coordinate(110),
});
/** Colours near each other, where a bound that is too high would throw out what it must keep. */
const pairOf = fc.tuple(labOf, coordinate(15), coordinate(40), coordinate(40)).map(([one, l, a, b]) => {
  const other: Lab = { mode: 'lab65', l: Math.min(100, Math.max(0, one.l + l)), a: one.a + a, b: one.b + b };
  return [one, other] as const;
});

describe('near colours', () => {
  it('are all those within the distance, nearest first, as measuring each one gives', () => {
    const limits = fc.double({ min: 0.1, max: 40, noNaN: true });
    fc.assert(
      fc.property(fc.array(labOf, { maxLength: 60 }), labOf, limits, (labs, lab, limit) => {
        const points = labs.map((one, index) => ({ paint: String(index).padStart(2, '0'), lab: one }));
        const plain = points
          .map((one) => ({ paint: one.paint, dE00: between(lab, one.lab) }))
          .filter(({ dE00 }) => dE00 <= limit)
          .sort((a, b) => a.dE00 - b.dE00 || (a.paint < b.paint ? -1 : 1));
        expect(openNear(points, between)(lab, limit)).toEqual(plain);
      }),
      { numRuns: 300 },
    );
  });

  it('are found at the very distance that they have', () => {
    fc.assert(
      fc.property(pairOf, ([one, other]) => {
        const dE00 = between(one, other);
        expect(openNear([{ paint: 'other', lab: other }], between)(one, dE00)).toHaveLength(1);
      }),
      { numRuns: 20_000 },
    );
  });

  // Sharma, Wu, Dalal 2005: pairs chosen where the formula turns.
  it('are found so for the published pairs, both ways round', () => {
    for (const [l1, a1, b1, l2, a2, b2] of sharmaPairs) {
      const one: Lab = { mode: 'lab65', l: l1, a: a1, b: b1 };
      const other: Lab = { mode: 'lab65', l: l2, a: a2, b: b2 };
      expect(openNear([{ paint: 'x', lab: other }], between)(one, between(one, other))).toHaveLength(1);
      expect(openNear([{ paint: 'x', lab: one }], between)(other, between(other, one))).toHaveLength(1);
    }
  });

  it('of nothing there are none', () => {
    expect(openNear([], between)({ mode: 'lab65', l: 50, a: 0, b: 0 }, 100)).toEqual([]);
  });
});
