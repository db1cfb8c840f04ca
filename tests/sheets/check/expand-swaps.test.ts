// Swaps for one unit give the plan of a scheme of its own, written out.
import { describe, expect, it } from 'vitest';
import { planArmy } from '../../../src/plan-army.js';
import { check, checkRight, type SheetRows, shortRows } from './make-tables.js';

const pots = [
  ['paint', 'size ml', 'left', 'kind'],
  ['brick red', '17', '10%', ''],
  ['earth wash', '24', '', 'wash'],
  ['bone', '17', '20%', ''],
  ['rust', '17', '', ''],
];
const army = [
  ['unit', 'figure', 'scheme', 'count'],
  ['first', 'spearman', 'red line', '20'],
  ['second', 'spearman', 'red line', '10'],
];
const swapHeads = ['scheme', 'step', 'paint', 'instead', 'unit'];
const withSwaps = (...rows: readonly (readonly string[])[]): SheetRows => ({
  pots,
  army,
  swaps: [swapHeads, ...rows],
});

describe('a swap for one unit', () => {
  it('holds for that unit alone, with what holds for its scheme', () => {
    const sheets = checkRight(
      withSwaps(
        ['', '', 'brick red', 'bone', 'Second'],
        ['red line', '', 'brick red', 'rust', ''],
        ['red line', '2', '', 'rust', ''],
      ),
    );
    expect(sheets.army.map(({ unit, scheme }) => [unit, scheme])).toEqual([
      ['first', 'red line'],
      ['second', 'red line (second)'],
    ]);
    expect(sheets.schemes.get('red line (second)')?.steps).toEqual(sheets.schemes.get('red line')?.steps);
    expect(sheets.swaps.map(({ row: _, ...swap }) => swap)).toEqual([
      { scheme: 'red line (second)', paint: 'brick red', instead: 'bone' },
      { scheme: 'red line', paint: 'brick red', instead: 'rust' },
      { scheme: 'red line', step: 2, instead: 'rust' },
      { scheme: 'red line (second)', step: 2, instead: 'rust' },
    ]);
  });

  it('gives the plan of a scheme of its own', async () => {
    const log = [
      ['date', 'paint', 'unit', 'step', 'figures', 'used ml'],
      ['2026-10-20', 'bone', 'second', '1', '5', '0.4'],
    ];
    const planOf = async (sheets: SheetRows) => {
      const { defaults, ...right } = checkRight({ ...sheets, log });
      const schemes = new Map(
        [...right.schemes].map(([name, one]) => [
          name,
          { ...one, steps: one.steps.map((step) => ({ ...step, row: 2 })) },
        ]),
      );
      const swaps = right.swaps.map((swap) => ({ ...swap, row: 2 }));
      return planArmy({ ...right, schemes, swaps, defaults: [] }, '2026-11-02');
    };
    const own = 'red line (second)';
    const out = await planOf({
      pots,
      army: army.map((row) => (row[0] === 'second' ? row.with(2, own) : row)),
      schemes: [
        ...shortRows.schemes,
        ...shortRows.schemes.slice(1).map((row) => [own, ...row.slice(1)]),
      ] as SheetRows['schemes'] & object,
      swaps: [swapHeads, [own, '', 'brick red', 'bone', '']],
    });
    expect(await planOf(withSwaps(['', '', 'brick red', 'bone', 'second']))).toEqual(out);
  });

  it('may name its scheme, as the report of an earlier plan does', () => {
    const rows = [
      ['', '', 'brick red', 'bone', 'second'],
      ['red line (second)', '2', 'earth wash', 'rust', ''],
    ];
    const { sheets, problems } = check(withSwaps(...rows));
    expect(problems.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(sheets?.swaps.map(({ scheme }) => scheme)).toEqual(['red line (second)', 'red line (second)']);
  });

  it.each([
    ['a unit that nobody knows', [['', '', 'brick red', 'bone', 'secnd']], ['unknown-unit 2 E2 second']],
    [
      'another scheme than its own',
      [['blue line', '', 'brick red', 'bone', 'second']],
      ['unknown-scheme 2 A2 '],
    ],
    ['nothing', [['', '', '', 'bone', 'second']], ['swap-of-nothing 2 C2 ']],
    [
      'the same twice',
      [
        ['', '', 'brick red', 'bone', 'second'],
        ['red line', '', 'brick red', 'rust', 'second'],
      ],
      ['swap-repeated 3 D3 row 2'],
    ],
    ['a paint that its scheme has not', [['', '', 'bone', 'rust', 'second']], ['swap-without-use 2 C2 ']],
  ])('is told where it swaps %s', (_, rows, told) => {
    const { problems } = check(withSwaps(...rows));
    expect(problems.map(({ code, row, cell, expected }) => `${code} ${row} ${cell} ${expected}`)).toEqual(
      told,
    );
  });
});
