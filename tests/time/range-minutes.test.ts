import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { estimateArmy } from '../../src/estimate/estimate-army.js';
import type { Figure } from '../../src/model/figure.js';
import type { Line } from '../../src/model/work.js';
import { rangeMinutes } from '../../src/time/range-minutes.js';
import { makeFigure, makeSheets, makeStep } from '../make-sheets.js';

function linesOf(figure: Figure): readonly Line[] {
  const sheets = makeSheets({ figures: [figure], steps: [makeStep({ step: 1, coats: 1 })] });
  const [job] = estimateArmy(sheets, registry).jobs.keys();
  return job?.lines ?? [];
}
const once = () => 1;

describe('how far brush minutes may be off', () => {
  // 0.8 + 5 x 0.5 = 3.3, of which handling 0.8 (0.5 to 1.2) and pace 2.5 (0.35 to 0.75 a cm2); GUM 5.1.6: squares add.
  it('by hand, on a surface that the painter measured', () => {
    const { low, likely, high } = rangeMinutes(
      [{ lines: linesOf(makeFigure({ areaCm2: 5 })), times: once }],
      registry,
    );
    expect(likely).toBeCloseTo(3.3, 12);
    expect(low).toBeCloseTo(3.3 - Math.hypot(0.3, 0.75), 9);
    expect(high).toBeCloseTo(3.3 + Math.hypot(0.4, 1.25), 9);
  });

  // Body 9.3201 cm2: dress 1 / 1.2 / 1.4, build 1.15 / 1.26 / 1.38, relief 1.05 / 1.1 / 1.15, sculpt 0.82 / 1 / 1.22. Over
  // 5 cm2 minutes go with the root of the surface: half of each factor's change.
  it('by hand, where the surface is in doubt as well', () => {
    const { low, likely, high } = rangeMinutes([{ lines: linesOf(makeFigure()), times: once }], registry);
    const painting = 0.5 * Math.sqrt(5 * 9.3201);
    expect(likely).toBeCloseTo(0.8 + painting, 4);
    const down = [
      0.3,
      painting * 0.3,
      (painting / 2) * (1 - 1 / 1.2),
      (painting / 2) * (1 - 1.15 / 1.26),
      (painting / 2) * (1 - 1.05 / 1.1),
      (painting / 2) * 0.18,
    ];
    const up = [
      0.4,
      painting * 0.5,
      (painting / 2) * (1.4 / 1.2 - 1),
      (painting / 2) * (1.38 / 1.26 - 1),
      (painting / 2) * (1.15 / 1.1 - 1),
      (painting / 2) * 0.22,
    ];
    expect(low).toBeCloseTo(likely - Math.hypot(...down), 4);
    expect(high).toBeCloseTo(likely + Math.hypot(...up), 4);
  });

  it('ten figures are off by ten times as much, since one painter paints them all', () => {
    const lines = linesOf(makeFigure());
    const one = rangeMinutes([{ lines, times: once }], registry);
    const ten = rangeMinutes([{ lines, times: ({ figures }) => figures }], registry);
    expect(ten.high).toBeCloseTo(10 * one.high, 9);
    expect(ten.low).toBeCloseTo(10 * one.low, 9);
  });

  it('no lines: 0 throughout', () => {
    expect(rangeMinutes([], registry)).toEqual({ low: 0, likely: 0, high: 0 });
  });
});
