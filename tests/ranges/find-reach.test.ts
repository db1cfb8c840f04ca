// How far today's pots reach, draw by draw: by hand.
import { expect, it } from 'vitest';
import type { StagedPaint, StagedWork } from '../../src/model/draws.js';
import { findReach } from '../../src/ranges/find-reach.js';

const reachOf = (paint: Omit<StagedPaint, 'paint'>): number | undefined => {
  const draws = paint.haveMl.length;
  const work: StagedWork = {
    drawing: { draws, seed: 1 },
    units: paint.needMl.map((_, at) => `unit ${at}`),
    paints: [{ paint: 'Slate', ...paint }],
    gainOf: () => undefined,
  };
  return findReach(work).get('Slate');
};
const column = (...ml: readonly number[]) => Float64Array.from(ml);

// Likely 4, 0 and 6 ml for the three units. In the first draw 3 ml are three quarters of the 4 that the first unit takes: 3 likely
// ml are done. In the second 5 leave 1 of the third unit's 3: a third of its 6, so 4 + 2. In the third all 10 are done, and 0 in
// the fourth.
it('is the likely need of what is done, a share of the unit in which a pot runs dry', () => {
  const draws = [
    { need: [4, 0, 6], have: 3, reach: 3 },
    { need: [4, 0, 3], have: 5, reach: 6 },
    { need: [2, 0, 3], have: 5, reach: 10 },
    { need: [4, 0, 6], have: 0, reach: 0 },
  ];
  for (const { need, have, reach } of draws)
    expect(
      reachOf({ needMl: need.map((ml) => column(ml)), likelyMl: [4, 0, 6], haveMl: column(have) }),
    ).toBeCloseTo(reach, 12);
});

// Of twenty draws the one nearest to 0.1 x 20 + 1/2 in rising order is the third (JCGM 101, 7.7.2).
it('is what one draw in ten stays under', () => {
  const haveMl = Float64Array.from({ length: 20 }, (_, draw) => 20 - draw);
  const needMl = [haveMl.map(() => 30)];
  expect(reachOf({ needMl, likelyMl: [30], haveMl })).toBe(3);
});

it('takes what differs by less than a drop’s rounding as the same', () => {
  expect(reachOf({ needMl: [column(0.1 + 0.2)], likelyMl: [0.3], haveMl: column(0.3) })).toBe(0.3);
});
