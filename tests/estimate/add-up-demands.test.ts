import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { addUpDemands } from '../../src/estimate/add-up-demands.js';
import { estimateArmy } from '../../src/estimate/estimate-army.js';
import { listDemands, listDemandsAnew } from '../../src/estimate/list-demands.js';
import { demandMl } from '../../src/model/demand-ml.js';
import type { Unit } from '../../src/model/sheets.js';
import { makeSheets, makeStep, makeUnit } from '../make-sheets.js';

const steps = [makeStep({ step: 1 }), makeStep({ step: 2, paint: 'Oat', zone: 'hands' })];
const needsOf = (army: readonly Unit[]) => estimateArmy(makeSheets({ steps, army }), registry);

/** The first n figures of units in painting order, as an army of its own. */
function cutArmy(army: readonly Unit[], figures: number): Unit[] {
  let left = figures;
  return [...army]
    .sort((a, b) => a.priority - b.priority || a.row - b.row)
    .flatMap((unit) => {
      const count = Math.min(left, unit.count);
      left -= count;
      return count > 0 ? [{ ...unit, count }] : [];
    });
}

describe('needs of the first n figures', () => {
  it('ten figures in batches of four are ten times a figure and three sittings, by hand', () => {
    const [demand] = listDemands(needsOf([makeUnit({ count: 10, batch: 4 })]), registry);
    // 9.3201 cm2 x 2 coats x 50 um / 0.5 = 0.18640 ml a figure, 0.08 ml a sitting.
    expect(demand?.perFigureMl.get('Slate')).toBeCloseTo(0.1864, 4);
    expect(demand?.perSittingMl.get('Slate')).toBeCloseTo(0.08, 10);
    expect(addUpDemands(demand === undefined ? [] : [demand])(10).get('Slate')).toBeCloseTo(1.864 + 0.24, 3);
  });

  it('are those of an army of just these figures', () => {
    const units = fc.array(
      fc.record({
        count: fc.integer({ min: 1, max: 30 }),
        batch: fc.integer({ min: 1, max: 12 }),
        priority: fc.integer({ min: 1, max: 3 }),
        done: fc.integer({ min: 0, max: 2 }),
      }),
      { minLength: 1, maxLength: 5 },
    );
    fc.assert(
      fc.property(units, fc.double({ min: 0, max: 1, noNaN: true }), (drawn, share) => {
        const army = drawn.map((unit, index) => makeUnit({ ...unit, unit: `unit ${index}`, row: index + 2 }));
        const figures = Math.round(share * army.reduce((sum, { count }) => sum + count, 0));
        const needs = addUpDemands(listDemands(needsOf(army), registry))(figures);
        const cut = needsOf(cutArmy(army, figures)).needs;
        for (const paint of ['Slate', 'Oat']) {
          expect(needs.get(paint) ?? 0).toBeCloseTo(cut.get(paint)?.remainingMl ?? 0, 9);
        }
      }),
      { numRuns: 200 },
    );
  });

  it('over hundreds of units are the sums of each before, and the cut one', () => {
    const army = Array.from({ length: 200 }, (_, at) =>
      makeUnit({ unit: `unit ${at}`, row: at + 2, count: 1 + (at % 7), done: at % 2 }),
    );
    const demands = listDemands(needsOf(army), registry);
    const needsAt = addUpDemands(demands);
    let [figures, slate, oat] = [0, 0, 0];
    for (const demand of demands) {
      const cut = needsAt(figures + 1);
      expect(cut.get('Slate') ?? 0).toBeCloseTo(slate + demandMl(demand, 'Slate', 1), 9);
      expect(cut.get('Oat') ?? 0).toBeCloseTo(oat + demandMl(demand, 'Oat', 1), 9);
      figures += demand.figures;
      slate += demandMl(demand, 'Slate', demand.figures);
      oat += demandMl(demand, 'Oat', demand.figures);
    }
    expect(needsAt(figures).get('Slate') ?? 0).toBeCloseTo(slate, 9);
  });

  it('past the last figure are those of all; none for none', () => {
    const needsAt = addUpDemands(listDemands(needsOf([makeUnit(), makeUnit({ unit: 'second' })]), registry));
    expect(needsAt(500)).toEqual(needsAt(20));
    expect([...needsAt(0).values()]).toEqual([0, 0]);
    expect(addUpDemands([])(3).size).toBe(0);
  });

  it('figures started anew take the whole scheme', () => {
    const estimate = needsOf([makeUnit({ done: 1 })]);
    const [rest] = listDemands(estimate, registry);
    const [anew] = listDemandsAnew(estimate, registry);
    expect([...(rest?.perFigureMl.keys() ?? [])]).toEqual(['Oat']);
    expect([...(anew?.perFigureMl.keys() ?? [])]).toEqual(['Slate', 'Oat']);
  });
});
