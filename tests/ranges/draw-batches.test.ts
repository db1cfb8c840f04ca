// What the next batch takes: what is likely against an army of just that batch, what is enough against quantiles by hand.
import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { estimateArmy } from '../../src/estimate/estimate-army.js';
import type { Assumptions } from '../../src/model/assumption.js';
import type { LogRow, Sheets } from '../../src/model/sheets.js';
import { drawArmy } from '../../src/ranges/draw-army.js';
import { drawBatches } from '../../src/ranges/draw-batches.js';
import { takeStock } from '../../src/stock/take-stock.js';
import { makeSheets, makeStep, makeUnit } from '../make-sheets.js';
import { holdExact } from './simulate-painter.js';

const everyLikely = Object.fromEntries([...registry.values()].map(({ name, likely }) => [name, likely]));

function drawnOf(sheets: Sheets, assumptions: Assumptions) {
  const estimate = estimateArmy(sheets, assumptions);
  const stock = takeStock(sheets, estimate.needs, assumptions);
  const beliefs = { assumptions, joint: undefined };
  const drawn = drawArmy({ estimate, stock, beliefs }, { draws: 10_000, seed: 1 });
  return { estimate, batches: drawBatches(estimate, { drawn, assumptions }) };
}

const steps = [
  makeStep({ step: 1, layer: 'primer', paint: 'Chalk' }),
  makeStep({ step: 2 }),
  makeStep({ step: 3, paint: 'Shade', layer: 'wash' }),
];
const armyOf = (count: number, log: readonly LogRow[] = []): Sheets =>
  makeSheets({ steps, army: [makeUnit({ count })], log });

describe('the next batch', () => {
  it('takes what an army of that batch alone is likely to take', () => {
    const [[, whole = []] = []] = drawnOf(armyOf(25), registry).batches;
    const [alone] = estimateArmy(armyOf(10), registry).jobs.keys();
    expect(whole.map(({ figures }) => figures)).toEqual([10, 10, 10]);
    whole.forEach(({ likelyMl }, line) => {
      expect(likelyMl).toBeCloseTo(alone?.remaining[line]?.putOutMl ?? 0, 9);
    });
  });

  // The 90 % quantile of a normal with deviation 0.1 about 1 is 1 + 0.1 x 1.2816; of two thousand draws it is off by 0.0038.
  it('is enough by the difference between batches alone, where nothing else is in doubt', () => {
    const [[, lines = []] = []] = drawnOf(armyOf(25), holdExact(registry, everyLikely)).batches;
    expect(lines).toHaveLength(3);
    for (const { likelyMl, highMl } of lines) expect(Math.abs(highMl / likelyMl - 1.128)).toBeLessThan(0.012);
  });

  // The painter's high over its likely, since its two-piece lognormal has just that P90.
  it('is enough by the painter where only the painter is in doubt', () => {
    const { painter: _, ...others } = everyLikely;
    const assumptions = holdExact(registry, { ...others, 'difference between batches': 0 });
    const painter = assumptions.get('painter');
    const [[, lines = []] = []] = drawnOf(armyOf(25), assumptions).batches;
    for (const { likelyMl, highMl } of lines)
      expect(highMl / likelyMl).toBeCloseTo((painter?.high ?? 0) / (painter?.likely ?? 1), 1);
  });

  it('is of the figures that still lack it', () => {
    const row = { row: 2, date: '2026-10-01', unit: 'watch', paint: 'Slate' } as const;
    const done = { ...row, step: 2, figures: 21 };
    const [[, lines = []] = []] = drawnOf(armyOf(25, [done]), registry).batches;
    expect(lines.map(({ figures }) => figures)).toEqual([10, 4, 10]);
  });

  it('is none of a finished unit', () => {
    const army = [makeUnit({ count: 25, done: 3 })];
    expect(drawnOf(makeSheets({ steps, army }), registry).batches.size).toBe(0);
  });
});
