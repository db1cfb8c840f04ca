// What is questioned though nothing is wrong with it by itself, and what is not: paints and the left column.
import { distance } from 'fastest-levenshtein';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { isSlip } from '../../../src/sheets/check/find-nearest.js';
import type { Cell } from '../../../src/sheets/table.js';
import { check, type SheetRows } from './make-tables.js';

vi.mock('fastest-levenshtein', async (importReal) => {
  const real = await importReal<typeof import('fastest-levenshtein')>();
  return { ...real, distance: vi.fn(real.distance) };
});
beforeEach(() => {
  vi.mocked(distance).mockClear();
});

const codesOf = (sheets: SheetRows): readonly string[] => check(sheets).problems.map(({ code }) => code);

describe('two words', () => {
  it.each([
    ['sluce green', 'sluice green', true],
    ['sluise graen', 'sluice green', true],
    ['slise graen', 'sluice green', false],
    ['bone', 'bune', true],
    ['bone', 'buna', false],
    ['oat', 'cat', false],
    ['', '', true],
  ])('%s and %s: a slip is %s', (one, other, slip) => {
    expect(isSlip(one, other)).toBe(slip);
    expect(isSlip(other, one)).toBe(slip);
  });
});

describe('a paint that no scheme uses', () => {
  const pots = (...paints: readonly string[]): Cell[][] => [
    ['paint', 'size ml'],
    ...['brick red', 'earth wash', ...paints].map((paint) => [paint, 17]),
  ];
  const offer = (paint: string) => ['Quay', `${paint} 17 ml`, 3, paint, 17];
  const offers = (...paints: readonly string[]): Cell[][] => [
    ['shop', 'offer', 'price', 'paint', 'size ml'],
    ...paints.map(offer),
  ];

  it('is questioned once where its name is a slip away from one that is used', () => {
    expect(codesOf({ pots: pots('brik red', 'Brik  Red') })).toEqual(['paint-maybe-misspelt']);
    expect(codesOf({ offers: offers('brik red') })).toEqual(['paint-maybe-misspelt']);
  });

  it.each<[string, SheetRows]>([
    ['farther off', { pots: pots('brick rust', 'earthen wall') }],
    ['one of a numbered series', { pots: pots('brick red 2', 'earth wash 01') }],
    ['named by a second sheet too', { pots: pots('brick rod'), paints: [['paint'], ['brick rod']] }],
    ['offered beside the other', { offers: offers('brick red', 'brick rod') }],
    ['described beside the other', { paints: [['paint'], ['brick red'], ['brick rod']] }],
    [
      'another name of the one that is used',
      {
        pots: pots('brick rod'),
        paints: [
          ['paint', 'also called'],
          ['brick red', 'brick rod'],
        ],
      },
    ],
  ])('is left in peace: %s', (_, sheets) => {
    expect(codesOf(sheets)).toEqual([]);
  });

  it('is compared letter by letter with no more than the two that are used, among 50,000 pots', () => {
    const many = Array.from({ length: 50_000 }, (_, at) => `shade ${at.toString(36)}`);
    expect(codesOf({ pots: pots('brik red', ...many) })).toEqual(['paint-maybe-misspelt']);
    expect(distance).toHaveBeenCalled();
    expect(vi.mocked(distance).mock.calls.length).toBeLessThanOrEqual(2 * 50_001);
  });
});

describe('a pots sheet without a left column', () => {
  const codesWith = (header: string, cells: readonly Cell[], more: readonly string[] = []) =>
    codesOf({
      pots: [
        ['paint', 'size ml', header, ...more],
        ...cells.map((cell, at) => [at === 0 ? 'brick red' : 'earth wash', 24, cell]),
      ],
    });

  it.each<[string, readonly Cell[]]>([
    ['remaining', ['60%', 'full']],
    ['remaining', [12, 9.5]],
    ['remaining', ['', 'empty']],
    ['how full', [80, '7.5 ml']],
  ])('asks about %s: %j', (header, cells) => {
    expect(codesWith(header, cells)).toEqual(['left-maybe-meant']);
  });

  it.each<[string, readonly Cell[]]>([
    ['notes', ['60% when I looked', 'empty']],
    ['notes', ['', '']],
    ['state', ['full', '100%']],
    ['rack', [1, 2]],
    ['my number', [17, 18]],
    ['year', [2019, 2021]],
    ['paid', ['3.50', '4.20']],
    ['bought', [{ kind: 'date', iso: '2026-01-31' }, '60%']],
    ['', ['60%', '40%']],
  ])('does not ask about %s: %j', (header, cells) => {
    expect(codesWith(header, cells)).not.toContain('left-maybe-meant');
  });

  it('does not ask where there is one after all, be it blank, or where a near header is asked about', () => {
    expect(codesWith('remaining', ['60%', 'full'], ['left'])).toEqual([]);
    expect(codesWith('leftt', ['60%', 'full'])).toEqual(['near-column']);
  });
});
