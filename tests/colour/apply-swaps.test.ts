import { describe, expect, it } from 'vitest';
import { registry } from '../../src/assumptions/registry.js';
import { applySwaps } from '../../src/colour/apply-swaps.js';
import { estimateArmy } from '../../src/estimate/estimate-army.js';
import type { Swap } from '../../src/model/sheets.js';
import { makeSheets, makeStep, makeUnit } from '../make-sheets.js';

const steps = [
  makeStep({ step: 1, paint: 'Oat' }),
  makeStep({ step: 2, paint: 'Peat' }),
  makeStep({
    step: 3,
    paints: [
      { paint: 'Oat', share: 0.7 },
      { paint: 'Foam', share: 0.3 },
    ],
  }),
];

/** The paints of each step after some rows of the swaps sheet. */
function swapped(...rows: readonly Omit<Swap, 'row'>[]) {
  const swaps = rows.map((one, index) => ({ row: index + 2, ...one }));
  const result = applySwaps(makeSheets({ steps, swaps })).schemes.get('plain');
  return result?.steps.map(({ paints }) => paints.map(({ paint, share }) => `${paint} ${share}`).join(' + '));
}

describe('swaps', () => {
  it('replace a paint wherever it stands, also in a mix', () => {
    expect(swapped({ paint: 'Oat', instead: 'Straw' })).toEqual([
      'Straw 1',
      'Peat 1',
      'Straw 0.7 + Foam 0.3',
    ]);
  });

  it('are narrowed down by scheme and step', () => {
    expect(swapped({ step: 1, paint: 'Oat', instead: 'Straw' })?.[2]).toBe('Oat 0.7 + Foam 0.3');
    expect(swapped({ scheme: 'other', paint: 'Oat', instead: 'Straw' })?.[0]).toBe('Oat 1');
    expect(swapped({ scheme: 'plain', paint: 'Oat', instead: 'Straw' })?.[0]).toBe('Straw 1');
  });

  it('without a paint replace all of a step; what becomes one paint is one', () => {
    expect(swapped({ step: 3, instead: 'Straw' })).toEqual(['Oat 1', 'Peat 1', 'Straw 1']);
  });

  it('the narrower row wins, the first of two alike', () => {
    const wide = { paint: 'Oat', instead: 'Straw' };
    expect(swapped(wide, { step: 1, paint: 'Oat', instead: 'Bone' })?.[0]).toBe('Bone 1');
    expect(swapped(wide, { paint: 'Oat', instead: 'Bone' })?.[0]).toBe('Straw 1');
  });

  it('follow a chain of any length', () => {
    const chain = Array.from({ length: 2000 }, (_, at) => ({ paint: `hue ${at}`, instead: `hue ${at + 1}` }));
    expect(swapped({ paint: 'Oat', instead: 'hue 0' }, ...chain)?.[0]).toBe('hue 2000 1');
  });

  it('follow one another, and stop where a paint comes round again', () => {
    const on = { paint: 'Straw', instead: 'Bone' };
    expect(swapped({ paint: 'Oat', instead: 'Straw' }, on)?.[0]).toBe('Bone 1');
    expect(swapped({ paint: 'Oat', instead: 'Straw' }, { paint: 'Straw', instead: 'Oat' })?.[0]).toBe(
      'Straw 1',
    );
    expect(swapped({ paint: 'Oat', instead: 'Oat' })?.[0]).toBe('Oat 1');
  });

  it('leave alone what they do not touch, to the object', () => {
    const none = makeSheets({ steps });
    expect(applySwaps(none)).toBe(none);
    const some = makeSheets({ steps, swaps: [{ row: 2, paint: 'Peat', instead: 'Soot' }] });
    const after = applySwaps(some).schemes.get('plain')?.steps;
    expect(after?.[0]).toBe(steps[0]);
    expect(after?.[1]).toEqual({ ...steps[1], paints: [{ paint: 'Soot', share: 1 }] });
    const beside = makeSheets({ steps, swaps: [{ row: 2, paint: 'Rust', instead: 'Soot' }] });
    expect(applySwaps(beside).schemes.get('plain')).toBe(beside.schemes.get('plain'));
  });

  it('let log rows of the paint before count as work on the step, and leave other rows as they are', () => {
    const row = { row: 2, date: '2026-02-01', unit: 'watch', figures: 10, usedMl: 2 };
    const log = [
      { ...row, paint: 'Oat', step: 1 },
      { ...row, paint: 'Oat', step: 3 },
      { ...row, paint: 'Peat', step: 2 },
    ];
    const swaps = [{ row: 2, step: 1, paint: 'Oat', instead: 'Straw' }];
    const swappedSheets = applySwaps(makeSheets({ steps, swaps, log, army: [makeUnit()] }));
    expect(swappedSheets.log.map(({ paint, nowPaint }) => [paint, nowPaint])).toEqual([
      ['Oat', 'Straw'],
      ['Oat', undefined],
      ['Peat', undefined],
    ]);
    const needs = estimateArmy(swappedSheets, registry).needs;
    expect([needs.get('Straw')?.remainingMl, needs.get('Peat')?.remainingMl]).toEqual([0, 0]);
    expect(needs.get('Straw')?.wholeMl).toBeGreaterThan(0);
  });
});
