// What is questioned though nothing is wrong with it by itself, and what is not: paints and the left column.
import { distance } from 'fastest-levenshtein';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { isSlip } from '../../../src/sheets/check/find-nearest.js';
import { isWanted } from '../../../src/sheets/check/likely-columns.js';
import { columns } from '../../../src/sheets/columns/columns.js';
import type { Cell } from '../../../src/sheets/table.js';
import { check, type SheetRows } from './make-tables.js';

// The real comparison, counted.
vi.mock('fastest-levenshtein', { spy: true });
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

describe('a column that says what is owned', () => {
  const owned = (header: string, ...cells: readonly Cell[]): SheetRows => ({
    pots: [
      ['paint', 'size ml', header],
      ['brick red', 17, cells[0] ?? ''],
      ['earth wash', 24, cells[1] ?? ''],
    ],
  });

  it.each<[string, ...Cell[]]>([
    ['Owned', 'yes', 'no'],
    ['Owned', true, false],
    ['In stock', 2, 0],
    ['Mam', 'x', '-'],
  ])('%s is asked about where a row says no', (header, ...cells) => {
    expect(codesOf(owned(header, ...cells))).toEqual(['rows-maybe-not-owned']);
  });

  it.each<[string, ...Cell[]]>([
    ['Owned', 'yes', 'yes'],
    ['Owned'],
    ['Favourite', 'yes', 'no'],
    ['Owned notes', 'yes', 'no'],
  ])('%s with %s and %s is not', (header, ...cells) => {
    expect(codesOf(owned(header, ...cells))).toEqual([]);
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

  it('is looked for among 50,000 pots by comparing each with the two that are used, and none with another', () => {
    const many = Array.from({ length: 50_000 }, (_, at) => `shade ${at.toString(36)}`);
    expect(codesOf({ pots: pots('brik red', ...many) })).toEqual(['paint-maybe-misspelt']);
    const compared = vi.mocked(distance).mock.calls.length;
    expect(compared).toBeGreaterThan(0);
    expect(compared).toBeLessThanOrEqual(2 * 50_001);
  });
});

describe('a pots sheet without a left column', () => {
  const codesWith = (header: string, cells: readonly Cell[], more: readonly string[] = []) =>
    codesOf({
      pots: [
        ['paint', 'size ml', header, 'price', ...more],
        ...cells.map((cell, at) => [at % 2 === 0 ? 'brick red' : 'earth wash', 24, cell, 3]),
      ],
    });

  it.each<[string, readonly Cell[]]>([
    ['remaining now', ['60%', 'full']],
    ['remaining now', [12, 9.5]],
    ['remaining now', ['', 'empty']],
    ['how full now', [80, '7.5 ml']],
    ['how full now', ['60%', 'half', '~40%', 'nearly empty', 'three quarters', '1/3']],
    ['how full now', ['half', 'a third']],
    ['how full now', [0.6, 1]],
    ['how full now', [1, 3]],
    ['state', ['60%', 'dregs', 'half']],
    ['state', [{ kind: 'measured', value: 7.5, unit: 'ml' }, 'full']],
  ])('asks about %s: %j', (header, cells) => {
    expect(codesWith(header, cells)).toEqual(['column-maybe-meant']);
  });

  it.each<[string, readonly Cell[]]>([
    ['notes', ['60% when I looked', 'empty']],
    ['my notes', ['60%', 'empty']],
    ['notes', ['', '']],
    ['state', ['full', '100%']],
    ['state', ['half a pot, thick', 'half', 'sticky']],
    ['rack', [1, 2]],
    ['rack', [2, 10]],
    ['my number', [17, 18]],
    ['year', [2019, 2021]],
    ['spent', ['13.50', '4.20']],
    ['bought', [{ kind: 'date', iso: '2026-01-31' }, '60%']],
    ['', ['60%', '40%']],
  ])('does not ask about %s: %j', (header, cells) => {
    expect(codesWith(header, cells)).not.toContain('column-maybe-meant');
  });

  it('asks where it is there and blank on every row, and not where one row says something', () => {
    expect(codesWith('remaining now', ['60%', 'full'], ['left'])).toEqual(['blank-column-maybe-meant']);
    const pots = (left: string) => [
      ['paint', 'size ml', 'left', 'remaining now'],
      ['brick red', 17, left, '60%'],
      ['earth wash', 24, '', '40%'],
    ];
    expect(codesOf({ pots: pots('full') })).toEqual([]);
  });

  it('does not ask where a near header is asked about', () => {
    expect(codesWith('leftt', ['60%', 'full'])).toEqual(['near-column']);
  });
});

describe('a column of the painter that could be meant for another', () => {
  it('is asked about with what a blank of the other means', () => {
    const asked = Object.values(columns).flatMap((list) => list.filter(isWanted));
    expect(asked.length).toBeGreaterThan(15);
    for (const column of asked) expect(column.needed || column.blank !== undefined, column.header).toBe(true);
  });

  /** What is asked about a column of a sheet that has all the others. */
  function askedOf(
    sheet: 'pots' | 'offers' | 'shops' | 'army' | 'schemes',
    header: string,
    cells: readonly Cell[],
  ) {
    const rows: Record<typeof sheet, Cell[][]> = {
      pots: [
        ['paint', 'size ml', 'left'],
        ...cells.map((_, at) => [at % 2 === 0 ? 'brick red' : 'earth wash', 24, '60%']),
      ],
      offers: [
        ['shop', 'offer', 'price', 'paint', 'size ml'],
        ...cells.map((_, at) => ['Quay', `set ${at}`, 3, 'brick red', 17]),
      ],
      shops: [['shop'], ...cells.map((_, at) => [`Quay ${at}`])],
      army: [['unit', 'figure', 'count'], ...cells.map((_, at) => [`unit ${at}`, 'spearman', 20])],
      schemes: [
        ['scheme', 'step', 'zone', 'layer', 'paint'],
        ...cells.map((_, at) => ['red line', at + 1, 'whole', 'wash', 'earth wash']),
      ],
    };
    const table = rows[sheet].map((row, at) => [...row, at === 0 ? header : (cells[at - 1] ?? '')]);
    return check({ [sheet]: table }).problems.flatMap(({ code, expected }) =>
      code === 'column-maybe-meant' ? [expected] : [],
    );
  }

  it.each<[Parameters<typeof askedOf>[0], string, readonly Cell[], string]>([
    ['pots', 'gave', ['3.50', '4.20'], 'price'],
    ['pots', 'gave', [3.5, 4], 'price'],
    ['pots', 'gave', ['€3', '4 EUR', 'a gift'], 'price'],
    ['pots', 'gave', ['$3', '$4'], 'price'],
    ['pots', 'gave', [{ kind: 'measured', value: 3, unit: '£' }], 'price'],
    ['pots', 'paid then', [3, 4], 'price'],
    ['pots', 'sort of', ['wash', 'metallic'], 'kind'],
    ['pots', 'look', ['#8a2b2b', '#102030'], 'hex'],
    ['pots', 'look', ['8a2b2b', '102030'], 'hex'],
    ['pots', 'covers', ['weak', 'fair'], 'opacity'],
    ['pots', 'covers', ['good', 'poor'], 'opacity'],
    ['pots', 'how', ['weak', 'fair'], 'opacity'],
    ['pots', 'bottle', ['dropper', 'none', 'can'], 'container'],
    ['offers', 'times', [1, 6], 'pots'],
    ['offers', 'times', [100], 'pots'],
    ['army', 'so far', [2, 0], 'done'],
    ['army', 'so far', [30], 'done'],
    ['army', 'Finished', [2, 0], 'done'],
    ['shops', 'Free over', [50, 40], 'free from'],
    ['shops', 'sends for', ['4.90', '3.50'], 'postage'],
    ['schemes', 'tool', ['brush', 'airbrush'], 'method'],
    ['schemes', 'cover', ['50%', '100%'], 'area %'],
  ])('in %s is asked about: %s with %j', (sheet, header, cells, expected) => {
    expect(askedOf(sheet, header, cells)).toEqual([expected]);
  });

  it.each<[Parameters<typeof askedOf>[0], string, readonly Cell[]]>([
    ['pots', 'rack', [3, 4]],
    ['pots', 'gave', ['3.50', 'a gift', 'a gift']],
    ['pots', 'gave', ['3.50 a pot', '4.20 a pot']],
    ['pots', 'price list notes', ['3.50', '4.20']],
    ['pots', 'number', [102030, 405060]],
    ['pots', 'seen', ['none', '-']],
    ['pots', 'seen', ['wash', 'bench', 'rack']],
    ['offers', 'times', [1, 1]],
    ['offers', 'line', [1, 2, 3]],
    ['offers', 'page', [101, 7]],
    ['pots', 'condition', ['good', 'poor']],
    ['pots', 'Bought on', ['2026-01-03', '2026-01-04']],
    ['shops', 'stars', [5, 4]],
    ['army', 'points', [31, 20]],
    ['army', 'so far', [0, 0]],
    ['army', 'rank', [1, 2]],
    ['schemes', 'cover', [0.5, 1]],
  ])('in %s is left in peace: %s with %j', (sheet, header, cells) => {
    expect(askedOf(sheet, header, cells)).toEqual([]);
  });

  it('is asked about beside a blank column of numbers only where its header speaks for that', () => {
    const pots = (header: string): Cell[][] => [
      ['paint', 'size ml', 'left', 'price', header],
      ['brick red', 17, '60%', '', '3.50'],
      ['earth wash', 24, '', '', '4.20'],
    ];
    expect(codesOf({ pots: pots('Paid then') })).toEqual(['blank-column-maybe-meant']);
    expect(codesOf({ pots: pots('stars') })).toEqual([]);
  });
});
