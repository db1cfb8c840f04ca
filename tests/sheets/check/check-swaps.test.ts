// The swaps sheet: rows as the plan takes them, and what is no slip.
import { describe, expect, it } from 'vitest';
import { check, checkRight, type SheetRows, shortRows } from './make-tables.js';

const header = ['scheme', 'step', 'paint', 'instead'];
const pots = [...shortRows.pots, ['bone', '17'], ['rust', '17']];
const withSwaps = (swaps: readonly (readonly string[])[], more: SheetRows = {}): SheetRows => ({
  pots,
  swaps: [header, ...swaps],
  ...more,
});

describe('swaps', () => {
  it('are none without the sheet, and without rows', () => {
    expect(checkRight().swaps).toEqual([]);
    expect(checkRight(withSwaps([])).swaps).toEqual([]);
  });

  it('have names as the other sheets spell them, and only what is given', () => {
    const swaps = [
      ['RED line', '1', 'Brick  Red', 'BONE'],
      ['', '', 'earth wash', 'Rust'],
      ['red line', '2', '', 'bone'],
    ];
    expect(checkRight(withSwaps(swaps)).swaps).toEqual([
      { row: 2, scheme: 'red line', step: 1, paint: 'brick red', instead: 'bone' },
      { row: 3, paint: 'earth wash', instead: 'rust' },
      { row: 4, scheme: 'red line', step: 2, instead: 'bone' },
    ]);
  });

  it.each([
    [
      'follow one another',
      [
        ['', '', 'brick red', 'bone'],
        ['', '', 'bone', 'rust'],
      ],
    ],
    [
      'change places in different steps',
      [
        ['', '1', 'brick red', 'earth wash'],
        ['', '2', 'earth wash', 'brick red'],
      ],
    ],
  ])('may %s', (_, swaps) => {
    expect(check(withSwaps(swaps)).problems).toEqual([]);
  });

  it('by another name of a paint are known, and a paint is not its own by such a name', () => {
    const paints = [
      ['paint', 'also called'],
      ['bone', 'old bone'],
    ];
    const right = checkRight(withSwaps([['', '', 'brick red', 'old bone']], { paints }));
    expect(right.swaps[0]?.instead).toBe('bone');
    const { problems } = check(withSwaps([['', '', 'bone', 'old bone']], { paints }));
    expect(problems.map(({ code }) => code)).toEqual(['swap-for-itself']);
  });

  it('make a paint used: its name is no slip for one of the schemes', () => {
    const alike = { pots: [...shortRows.pots, ['brick rad', '17']] };
    expect(check(alike).problems.map(({ code }) => code)).toEqual(['paint-maybe-misspelt']);
    expect(check({ ...alike, swaps: [header, ['', '', 'brick red', 'brick rad']] }).problems).toEqual([]);
  });

  it('make a paint one that the log may speak of in that step', () => {
    const log = [
      ['date', 'paint', 'unit', 'step', 'figures', 'used ml'],
      ['2026-03-01', 'bone', 'first spears', '1', '10', '1'],
    ];
    expect(check({ pots, log }).problems.map(({ code }) => code)).toEqual(['log-other-paint']);
    expect(check(withSwaps([['', '1', 'brick red', 'bone']], { log })).problems).toEqual([]);
    expect(check(withSwaps([['', '2', 'earth wash', 'bone']], { log })).problems).toHaveLength(1);
  });

  it('of sheets that have other errors give no further ones', () => {
    const schemes = [
      shortRows.schemes[0],
      ['red line', '1', 'whole', 'base coat', 'brik red'],
      shortRows.schemes[2],
    ];
    const { problems } = check(withSwaps([['', '1', 'brick red', 'bone']], { schemes }));
    expect(problems.map(({ code, sheet }) => [code, sheet])).toEqual([['unknown-paint', 'schemes']]);
  });
});
