// To which figure today's pots last: by hand, and against sums of the whole army cut short.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { addUpDemands } from '../../src/estimate/add-up-demands.js';
import { estimateArmy } from '../../src/estimate/estimate-army.js';
import { listDemands } from '../../src/estimate/list-demands.js';
import type { UnitDemand } from '../../src/model/work.js';
import { tellReach } from '../../src/summary/tell-reach.js';
import { makeSheets, makeStep, makeUnit } from '../make-sheets.js';

const demandOf = (unit: string, figures: number, mls: Record<string, [number, number]>): UnitDemand => ({
  ...{ unit, figures, priority: 1, batch: 10 },
  perFigureMl: new Map(Object.entries(mls).map(([paint, [ml]]) => [paint, ml])),
  perSittingMl: new Map(Object.entries(mls).map(([paint, [, ml]]) => [paint, ml])),
});

// Twenty figures at 0.1 ml and 0.2 ml a sitting of ten: 2.4 ml. Then five that are done, then twenty at 0.05 and 0.1: 1.2 ml.
const demands = [
  demandOf('Weir Guard', 20, { Slate: [0.1, 0.2] }),
  demandOf('Sluice Wardens', 5, {}),
  demandOf('Lamp Archers', 20, { Slate: [0.05, 0.1], Oat: [0.05, 0.1] }),
];
const reachOf = (haveMl: number, lowMl = haveMl, paint = 'Slate') =>
  tellReach({ paint, haveMl }, demands, lowMl);

describe('by hand', () => {
  it.each([
    // The very first: 0.1 + 0.2.
    [0, { figures: 0, unit: 'Weir Guard', ofUnit: 0 }],
    [0.29, { figures: 0, unit: 'Weir Guard', ofUnit: 0 }],
    [0.3, { figures: 1, unit: 'Weir Guard', ofUnit: 1 }],
    // Ten take 1.2, the eleventh asks for a sitting of its own: 1.5.
    [1.49, { figures: 10, unit: 'Weir Guard', ofUnit: 10 }],
    [1.5, { figures: 11, unit: 'Weir Guard', ofUnit: 11 }],
    // All of the first unit, and the next is done already.
    [2.4, { figures: 25, unit: 'Lamp Archers', ofUnit: 0 }],
    // 0.6 ml are ten archers; the eleventh would take 0.75.
    [3, { figures: 35, unit: 'Lamp Archers', ofUnit: 10 }],
    [3.59, { figures: 44, unit: 'Lamp Archers', ofUnit: 19 }],
    [3.6, undefined],
    [99, undefined],
  ])('%d ml last to %j', (haveMl, likely) => {
    expect(reachOf(haveMl)).toEqual({ likely, low: likely });
  });

  it('one time in ten no farther than likely', () => {
    expect(reachOf(3, 1.5).low).toMatchObject({ figures: 11 });
    expect(reachOf(1.5, 3)).toEqual({ likely: reachOf(1.5).likely, low: reachOf(1.5).likely });
    expect(reachOf(9, 3)).toMatchObject({ likely: undefined, low: { figures: 35 } });
  });

  it('of a paint never owned to the figures that come before it is used', () => {
    expect(reachOf(0, 0, 'Oat').likely).toEqual({ figures: 25, unit: 'Lamp Archers', ofUnit: 0 });
  });
});

it('is the number of figures whose needs the shelf still covers, also of units that are partly done', () => {
  const unit = fc.record({
    count: fc.integer({ min: 1, max: 25 }),
    batch: fc.integer({ min: 1, max: 12 }),
    priority: fc.integer({ min: 1, max: 3 }),
    done: fc.integer({ min: 0, max: 2 }),
  });
  const steps = [makeStep({ step: 1 }), makeStep({ step: 2, zone: 'hands' })];
  fc.assert(
    fc.property(
      fc.array(unit, { minLength: 1, maxLength: 6 }),
      fc.double({ min: 0, max: 9, noNaN: true }),
      (drawn, haveMl) => {
        const army = drawn.map((one, at) => makeUnit({ ...one, unit: `unit ${at}`, row: at + 2 }));
        const own = listDemands(estimateArmy(makeSheets({ steps, army }), registry), registry);
        const needAt = (figures: number) => addUpDemands(own)(figures).get('Slate') ?? 0;
        const all = army.reduce((sum, { count }) => sum + count, 0);
        const { likely } = tellReach({ paint: 'Slate', haveMl }, own, haveMl);
        expect(needAt(likely?.figures ?? all)).toBeLessThan(haveMl + 1e-5);
        if (likely !== undefined) expect(needAt(likely.figures + 1)).toBeGreaterThan(haveMl);
      },
    ),
    { numRuns: 200 },
  );
});
