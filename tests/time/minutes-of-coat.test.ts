import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { estimateArmy } from '../../src/estimate/estimate-army.js';
import type { Step } from '../../src/model/sheets.js';
import { listPasses } from '../../src/time/list-passes.js';
import { minutesOfCoat, minutesOfLine } from '../../src/time/minutes-of-coat.js';
import { makeFigure, makeSheets, makeStep } from '../make-sheets.js';
import { roundNumbers } from './make-time.js';

const tenCm2 = makeFigure({ areaCm2: 10 });
const linesOf = (...steps: Step[]) =>
  [...estimateArmy(makeSheets({ figures: [tenCm2], steps }), registry).jobs.keys()][0]?.lines ?? [];
const mix = [
  { paint: 'Slate', share: 0.7 },
  { paint: 'Oat', share: 0.3 },
];

describe('minutes of a coat on one figure, by hand', () => {
  it.each([
    ['base coat', 'brush', 5, 1, 0.8 + 5 * 0.5],
    ['base coat', 'brush', 20, 1, 0.8 + 20 * 0.5 * 0.5],
    ['base coat', 'brush', 500, 1, 0.8 + 500 * 0.5 * 0.1],
    ['highlight', 'brush', 20, 0.15, 0.8 + 3 * 0.5 * 3 * 0.5],
    ['wash', 'flood', 5.0001, 1, 0.8 + 5.0001 * 0.2 * 0.99999],
    ['basing', 'spread', 45, 1, 0.8 + (45 * 0.3) / 3],
    ['edge highlight', 'brush', 2, 0.05, 0.8 + 0.1 * 0.5 * 10],
    ['primer', 'spray can', 20, 1, 0.2 + 20 * 0.01],
    ['primer', 'airbrush', 20, 1, 0.3 + 20 * 0.04],
    ['midtone', 'sponge', 20, 1, 0.8 + 20 * 0.25 * 1.2],
    ['drybrush', 'drybrush', 20, 0.3, 0.8 + 6 * 0.25],
    ['detail', 'brush', 0, 1, 0.8],
  ] as const)('%s by %s on a zone of %d cm2, %d of it', (layer, method, zoneCm2, areaShare, minutes) => {
    expect(minutesOfCoat({ layer, method, zoneCm2, areaShare }, registry)).toBeCloseTo(minutes, 9);
  });
});

describe('minutes of a line on one figure', () => {
  it('are those of its coats: two of 0.8 + 10 x 0.5 x sqrt(5 / 10)', () => {
    const [line] = linesOf(makeStep({ step: 1 }));
    expect(line === undefined ? 0 : minutesOfLine(line, registry)).toBeCloseTo(
      2 * (0.8 + 5 * Math.SQRT1_2),
      12,
    );
  });

  it('of a mix add up to one application, in lines and in passes', () => {
    const lines = linesOf(makeStep({ step: 1, coats: 1, paints: mix }));
    const once = 0.8 + 5 * Math.SQRT1_2;
    expect(lines).toHaveLength(2);
    expect(lines.reduce((sum, line) => sum + minutesOfLine(line, registry), 0)).toBeCloseTo(once, 12);
    expect(listPasses(lines, registry).map(({ brushMinPerFigure }) => brushMinPerFigure)).toEqual([
      expect.closeTo(once, 12),
    ]);
  });
});

describe('passes', () => {
  const briefly = (...steps: Step[]) =>
    listPasses(linesOf(...steps), roundNumbers).map(({ step, layer, coat, zones, setupMin }) => ({
      step,
      layer,
      coat,
      zones,
      setupMin,
    }));

  it('each coat is one, and paint is put out once', () => {
    expect(briefly(makeStep({ step: 4 }))).toEqual([
      { step: 4, layer: 'base coat', coat: 1, zones: ['whole'], setupMin: 1 },
      { step: 4, layer: 'base coat', coat: 2, zones: ['whole'], setupMin: 0 },
    ]);
  });

  it('zones of one step go together, each with its own coats; each palette is set up', () => {
    const steps = [
      makeStep({ step: 1, zone: 'head' }),
      makeStep({ step: 1, zone: 'hands', coats: 1 }),
      makeStep({ step: 1, zone: 'feet', coats: 1, paint: 'Oat' }),
    ];
    expect(briefly(...steps)).toEqual([
      { step: 1, layer: 'base coat', coat: 1, zones: ['head', 'hands', 'feet'], setupMin: 2 },
      { step: 1, layer: 'base coat', coat: 2, zones: ['head'], setupMin: 0 },
    ]);
  });

  it('layers of one step, and what is sprayed, go apart', () => {
    const steps = [
      makeStep({ step: 1, coats: 1 }),
      makeStep({ step: 1, zone: 'hands', coats: 1, method: 'spray can' }),
      makeStep({ step: 1, layer: 'highlight' }),
    ];
    expect(briefly(...steps)).toEqual([
      { step: 1, layer: 'base coat', coat: 1, zones: ['whole'], setupMin: 1 },
      { step: 1, layer: 'base coat', coat: 1, zones: ['hands'], setupMin: 5 },
      // The same paint by the same brush: it is out already.
      { step: 1, layer: 'highlight', coat: 1, zones: ['whole'], setupMin: 0 },
    ]);
  });

  it('part of a coat, and more coats than anyone lays, keep their minutes', () => {
    const minutesAt = (coats: number): number[] =>
      listPasses(
        linesOf(makeStep({ step: 1 })).map((line) => ({ ...line, coats })),
        roundNumbers,
      ).map(({ brushMinPerFigure }) => brushMinPerFigure);
    expect(minutesAt(1.5)).toEqual([2, 1]);
    expect(minutesAt(1000)).toHaveLength(20);
    expect(minutesAt(1000).reduce((sum, minutes) => sum + minutes, 0)).toBeCloseTo(2000, 6);
  });

  it('no lines, none', () => {
    expect(listPasses([], registry)).toEqual([]);
  });
});
