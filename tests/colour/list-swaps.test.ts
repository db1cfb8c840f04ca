import { describe, expect, it } from 'vitest';
import { listSwaps } from '../../src/colour/list-swaps.js';
import { openColours } from '../../src/colour/open-colours.js';
import type { Swap } from '../../src/model/sheets.js';
import { makePaint, makeSheets, makeStep, makeUnit } from '../make-sheets.js';

const paints = [
  makePaint({ paint: 'Oat', hex: '#d8c7a0' }),
  makePaint({ paint: 'Straw', hex: '#d2c08f' }),
  makePaint({ paint: 'Rope' }),
];
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
const colours = await openColours(paints);

const listed = (...rows: readonly Omit<Swap, 'row'>[]) =>
  listSwaps(
    makeSheets({ steps, paints, army: [makeUnit()], swaps: rows.map((one) => ({ row: 2, ...one })) }),
    colours,
  );

describe('swaps that took effect', () => {
  it('name both paints, the steps and how far apart they are', () => {
    expect(listed({ paint: 'Oat', instead: 'Straw' })).toEqual([
      { scheme: 'plain', steps: [1, 3], paint: 'Oat', by: 'Straw', dE00: colours.distance('Oat', 'Straw') },
    ]);
    expect(colours.distance('Oat', 'Straw')).toBeGreaterThan(1);
  });

  it('are followed to the paint that goes on, without a distance where a colour is not known', () => {
    expect(listed({ paint: 'Oat', instead: 'Straw' }, { step: 3, paint: 'Straw', instead: 'Rope' })).toEqual([
      { scheme: 'plain', steps: [1], paint: 'Oat', by: 'Straw', dE00: colours.distance('Oat', 'Straw') },
      { scheme: 'plain', steps: [3], paint: 'Oat', by: 'Rope' },
    ]);
  });

  it('are none where no row holds, or the scheme is not in use', () => {
    expect(listed()).toEqual([]);
    expect(listed({ scheme: 'other', paint: 'Oat', instead: 'Straw' })).toEqual([]);
    const idle = makeSheets({ steps, paints, swaps: [{ row: 2, paint: 'Oat', instead: 'Straw' }] });
    expect(listSwaps({ ...idle, army: [] }, colours)).toEqual([]);
  });
});
