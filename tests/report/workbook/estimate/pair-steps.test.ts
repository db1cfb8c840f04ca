import { describe, expect, it } from 'vitest';
import { estimateArmy } from '../../../../src/estimate/estimate-army.js';
import type { Step } from '../../../../src/model/sheets.js';
import { registry } from '../../../../src/plan-army.js';
import { pairSteps } from '../../../../src/report/workbook/estimate/pair-steps.js';
import { makeSheets, makeStep } from '../../../make-sheets.js';

const linesOf = (steps: readonly Step[]) =>
  [...estimateArmy(makeSheets({ steps }), registry).jobs.keys()][0]?.lines ?? [];

const third = { paint: 'A', share: 1 / 3 };

describe('pairSteps', () => {
  const steps = [
    makeStep({ step: 1, zone: 'hull' }),
    makeStep({ step: 2, zone: 'torso', paint: 'A' }),
    makeStep({ step: 2, zone: 'torso', paint: 'B' }),
    { ...makeStep({ step: 3 }), paints: [third, { ...third, paint: 'B' }, { ...third, paint: 'C' }] },
    makeStep({ step: 4, zone: 'feet' }),
  ];

  it('gives each line its step: mixes, steps alike but for the paint, steps that the figure has no part of', () => {
    expect(pairSteps(linesOf(steps), steps)).toEqual([1, 2, 3, 3, 3, 4].map((at) => steps[at]));
  });

  it('minds no swap of paints', () => {
    const swapped = steps.map((step) => ({ ...step, paints: [{ paint: 'D', share: 1 }] }));
    expect(pairSteps(linesOf(swapped), steps)).toEqual([1, 2, 3, 4].map((at) => steps[at]));
  });

  it('throws where a line has no step', () => {
    expect(() => pairSteps(linesOf(steps), steps.slice(0, 3))).toThrow('no step');
  });
});
